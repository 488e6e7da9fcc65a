package rigbrief.proposal.need;

import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;

/**
 * Briefs that let a build cost more than the ceiling without moving the ceiling itself, so that
 * utility, which goes by the share of the ceiling spent, is measured alike on both sides of it.
 */
public final class Stretch {
    private static final int WHOLE_BASIS_POINTS = 10_000;

    /** Stands in for "no ceiling": so many ceilings. */
    private static final int BOUNDLESS = 1_000;

    private Stretch() {}

    /** The brief with a hard ceiling. */
    public static Brief none(Brief brief) {
        return new BriefDraft(brief).overrunBasisPoints(0).toBrief();
    }

    /** The brief with as good as no ceiling. */
    public static Brief boundless(Brief brief) {
        return new BriefDraft(brief).overrunBasisPoints(BOUNDLESS * WHOLE_BASIS_POINTS).toBrief();
    }

    /** The brief that lets a build cost at least so much, in minor units. */
    public static Brief to(Brief brief, long limitMinor) {
        long ceiling = brief.ceiling().minorUnits();
        if (limitMinor <= ceiling) {
            return none(brief);
        }
        long over = Math.multiplyExact(limitMinor - ceiling, (long) WHOLE_BASIS_POINTS);
        long basisPoints = Math.min(Integer.MAX_VALUE, over / ceiling + 1);
        return new BriefDraft(brief).overrunBasisPoints((int) basisPoints).toBrief();
    }
}
