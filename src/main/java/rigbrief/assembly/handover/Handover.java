package rigbrief.assembly.handover;

import java.util.List;
import rigbrief.assembly.Bench;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;

/**
 * What the owner of a machine is told when it changes hands.
 *
 * @param bench the machine with all that was promised of it
 * @param parts its parts, in slot order, with guarantee and room for serial numbers
 * @param settings how it is set
 * @param care what to do so that it lasts
 * @param path what fits next
 */
public record Handover(
        Bench bench,
        List<PartPassport> parts,
        List<Setting> settings,
        List<Care> care,
        UpgradePath path) {
    public Handover {
        parts = List.copyOf(parts);
        settings = List.copyOf(settings);
        care = List.copyOf(care);
    }

    /**
     * The handover of a filed build.
     *
     * @throws IllegalArgumentException when a required slot is empty
     */
    public static Handover of(BuildRecord filed, Brief brief, Catalogue catalogue) {
        return of(filed, Bench.of(brief, catalogue, filed.build()));
    }

    /** The handover of a filed build that is judged already. */
    public static Handover of(BuildRecord filed, Bench bench) {
        return new Handover(
                bench,
                filed.lines().stream().map(line -> PartPassport.of(line, filed)).toList(),
                Settings.of(bench),
                Care.of(bench),
                UpgradePath.of(bench));
    }
}
