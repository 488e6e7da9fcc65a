package rigbrief.proposal;

import java.util.List;
import rigbrief.proposal.clash.WayOut;
import rigbrief.wording.Phrase;

/**
 * Why no build meets the musts.
 *
 * @param needs musts that can't be met together: without any one of them a build exists, unless
 *     told otherwise; the first of the sets below
 * @param minimal whether each of them was proven necessary for the clash
 * @param explanation sentences that say what was found
 * @param sets all sets of musts found that can't be met together, each minimal
 * @param allSets whether these are all there are
 * @param waysOut what can give way, each with a real build; fewest changes first
 */
public record Clash(
        List<Phrase> needs,
        boolean minimal,
        List<Phrase> explanation,
        List<List<Phrase>> sets,
        boolean allSets,
        List<WayOut> waysOut) {
    public Clash {
        needs = List.copyOf(needs);
        explanation = List.copyOf(explanation);
        sets = sets.stream().map(List::copyOf).toList();
        waysOut = List.copyOf(waysOut);
    }

    /** A clash of which nothing but one set of musts is known. */
    public Clash(List<Phrase> needs, boolean minimal, List<Phrase> explanation) {
        this(
                needs,
                minimal,
                explanation,
                needs.isEmpty() ? List.of() : List.of(needs),
                false,
                List.of());
    }
}
