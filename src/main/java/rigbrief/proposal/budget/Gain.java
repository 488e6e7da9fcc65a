package rigbrief.proposal.budget;

/**
 * What another value of a must does to the utility of the best build under the ceiling, by the
 * goals of the brief as it stands.
 *
 * @param points points that the best build found has over the best one found with the must as asked
 * @param gapPoints by how many points at most another build could be better than the one found; 0
 *     where it is proven that none is
 */
public record Gain(long points, long gapPoints) {
    /** Whether no build is better than the one found. */
    public boolean proven() {
        return gapPoints == 0;
    }
}
