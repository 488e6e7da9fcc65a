package rigbrief.proposal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.proposal.clash.NeedClash;
import rigbrief.search.SearchSpace;

/** Finds which musts clash when no build meets them all, and what can give way. */
public final class ClashFinder {
    private final Catalogue catalogue;
    private final long steps;
    private final BooleanSupplier stop;

    /**
     * A finder.
     *
     * @param steps most steps of the certifier for three questions
     * @param stop asked now and then; true ends the search early
     */
    public ClashFinder(Catalogue catalogue, long steps, BooleanSupplier stop) {
        this.catalogue = catalogue;
        this.steps = steps;
        this.stop = stop;
    }

    /** The clash of a brief that no build meets. */
    public Clash find(Brief brief) {
        return find(brief, SearchSpace.of(brief, catalogue));
    }

    /** The clash of a brief that no build meets. */
    Clash find(Brief brief, SearchSpace space) {
        NeedClash found = NeedClash.find(brief, catalogue, steps, stop);
        List<List<String>> sets = new ArrayList<>();
        for (BitSet set : found.sets().conflicts()) {
            sets.add(found.names(set));
        }
        List<String> first = sets.isEmpty() ? List.of() : sets.get(0);
        return new Clash(
                first,
                found.minimal() && !first.isEmpty(),
                explanation(space, found, first),
                first.isEmpty() ? List.of() : sets,
                found.sets().complete(),
                found.waysOut());
    }

    private static List<String> explanation(
            SearchSpace space, NeedClash found, List<String> first) {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<Slot, Map<String, Integer>> slot : space.candidates().refused().entrySet()) {
            StringBuilder line =
                    new StringBuilder("No part is left for slot ").append(slot.getKey().word());
            slot.getValue()
                    .forEach(
                            (rule, count) ->
                                    line.append(", %d refused by rule %s".formatted(count, rule)));
            lines.add(line.append('.').toString());
        }
        lines.add(meaning(found, first));
        lines.addAll(found.fitReasons());
        return lines;
    }

    private static String meaning(NeedClash found, List<String> first) {
        if (first.isEmpty()) {
            return "Even without any of the musts no build fits together; look at the parts and offers of the catalogue.";
        }
        if (first.size() == 1) {
            return "This must can't be met by any build that the catalogue allows.";
        }
        return found.minimal()
                ? "Of each set, all but any one can be met together."
                : "The step limit left open whether each must is needed for its clash.";
    }
}
