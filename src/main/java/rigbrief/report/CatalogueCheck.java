package rigbrief.report;

import java.util.List;
import java.util.Optional;
import rigbrief.diagnostic.Fault;

/**
 * What was found in a catalogue folder.
 *
 * @param folder the folder
 * @param stats the catalogue counted through; empty when it has faults
 * @param faults what is wrong, as far as it was kept
 * @param faultCount number of faults, those not kept included
 * @param notes what is worth knowing
 */
public record CatalogueCheck(
        String folder,
        Optional<CatalogueStats> stats,
        List<Fault> faults,
        int faultCount,
        List<Fault> notes) {
    public CatalogueCheck {
        faults = List.copyOf(faults);
        notes = List.copyOf(notes);
    }
}
