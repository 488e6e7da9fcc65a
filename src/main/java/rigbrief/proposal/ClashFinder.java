package rigbrief.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;

/**
 * Finds which musts clash when no build meets them all.
 *
 * <p>Deletion filter: each must in turn is left out; when still no build exists it has nothing to
 * do with the clash and stays out, otherwise it is put back. What remains can't be met together,
 * and each of it is necessary for that. Source: J. W. Chinneck and E. W. Dravnieks, "Locating
 * Minimal Infeasible Constraint Sets in Linear Programs", ORSA Journal on Computing 3(2), 1991
 * (from memory).
 */
final class ClashFinder {
    private final Catalogue catalogue;
    private final long steps;
    private final BooleanSupplier stop;

    ClashFinder(Catalogue catalogue, long steps, BooleanSupplier stop) {
        this.catalogue = catalogue;
        this.steps = steps;
        this.stop = stop;
    }

    /** The clash of a brief that no build meets. */
    Clash find(Brief brief, SearchSpace space) {
        List<Must> kept = new ArrayList<>();
        Brief left = brief;
        boolean minimal = true;
        for (Must must : Must.of(brief)) {
            Brief without = must.dropped().apply(left);
            Answer answer = exists(without);
            if (answer == Answer.NO) {
                left = without;
            } else {
                kept.add(must);
                minimal &= answer == Answer.YES;
            }
        }
        List<String> names = new ArrayList<>();
        for (Must must : kept) {
            names.add(must.name());
        }
        return new Clash(names, minimal && !names.isEmpty(), explanation(space, names, minimal));
    }

    private enum Answer {
        YES,
        NO,
        NOT_KNOWN
    }

    private Answer exists(Brief brief) {
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return Answer.NO;
        }
        Problem problem = space.within(brief.ceiling().minorUnits());
        Certificate certificate =
                new Certifier(problem, Objective.leastMoney(), steps, stop, List.of())
                        .untilFirst()
                        .run(Optional.empty());
        if (certificate.best().isPresent()) {
            return Answer.YES;
        }
        return certificate.complete() ? Answer.NO : Answer.NOT_KNOWN;
    }

    private static List<String> explanation(
            SearchSpace space, List<String> names, boolean minimal) {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<Slot, Map<String, Integer>> slot : space.candidates().refused().entrySet()) {
            StringBuilder line =
                    new StringBuilder("No part is left for slot ").append(slot.getKey().word());
            slot.getValue()
                    .forEach(
                            (rule, count) ->
                                    line.append(", %d refused by rule %s".formatted(count, rule)));
            lines.add(line.toString());
        }
        if (names.isEmpty()) {
            lines.add(
                    "Even without any of the musts no build fits together; look at the parts and offers of the catalogue.");
        } else if (names.size() == 1) {
            lines.add("This must can't be met by any build that the catalogue allows.");
        } else {
            lines.add(
                    minimal
                            ? "These musts can't be met together; without any one of them a build exists."
                            : "These musts can't be met together; the step limit left open whether each of them is needed for the clash.");
        }
        return lines;
    }
}
