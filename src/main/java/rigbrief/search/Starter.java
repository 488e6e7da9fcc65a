package rigbrief.search;

import java.util.ArrayList;
import java.util.List;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Makes a first build: slot by slot the cheapest candidate that breaks no rule with those before
 * it.
 *
 * <p>It need not be sound; it only has to be a better place to start than chance.
 */
public final class Starter {
    private Starter() {}

    /** One candidate per slot, in slot order. */
    public static List<Candidate> start(Problem problem) {
        Compatibility compatibility = new Compatibility(problem);
        Candidate[] drawn = new Candidate[Slot.values().length];
        for (Slot slot : Slot.values()) {
            List<Candidate> byPrice = compatibility.byPrice(slot);
            drawn[slot.ordinal()] = byPrice.get(0);
            for (Candidate candidate : byPrice) {
                drawn[slot.ordinal()] = candidate;
                if (compatibility.fits(drawn, slot)) {
                    break;
                }
                drawn[slot.ordinal()] = byPrice.get(0);
            }
        }
        return new ArrayList<>(List.of(drawn));
    }
}
