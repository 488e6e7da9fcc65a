package rigbrief.proposal;

import java.util.List;

/**
 * Why no build meets the musts.
 *
 * @param needs musts that can't be met together: without any one of them a build exists, unless
 *     told otherwise
 * @param minimal whether each of them was proven necessary for the clash
 * @param explanation sentences that say what was found
 */
public record Clash(List<String> needs, boolean minimal, List<String> explanation) {
    public Clash {
        needs = List.copyOf(needs);
        explanation = List.copyOf(explanation);
    }
}
