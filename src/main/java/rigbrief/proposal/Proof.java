package rigbrief.proposal;

/**
 * How far a proposal can be from the best that the catalogue allows.
 *
 * @param figure what was made best: "total" (least, in minor units), "score" (most, in points) or
 *     "balance" (most, in points less weighted money, relative to the lean and the full build)
 * @param reached the proposal's figure
 * @param bestPossible the best figure that no build can pass; equal to the reached one when proven
 * @param gapPercent the distance between both, in percent of the larger; of a balance, in percent
 *     of the square that lean and full span in money and utility
 * @param steps steps the certifier took
 */
public record Proof(
        String figure, double reached, double bestPossible, double gapPercent, long steps) {
    /** Whether nothing better exists in the catalogue. */
    public boolean proven() {
        return gapPercent == 0;
    }
}
