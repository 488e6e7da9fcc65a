package rigbrief.model.link;

import java.util.Optional;

/**
 * Whether, and how, an output and an input carry a mode.
 *
 * @param carried the answer
 * @param timing the rule whose timing was compared last: the one that fits, or the leanest tried
 * @param requiredBitsPerSecond what the mode needs under that rule, compressed when {@code carried}
 *     says so
 * @param availableBitsPerSecond what the link carries; 0 without a common standard
 * @param standard the standard at which the pair runs, or nothing when the plugs differ
 */
public record LinkResult(
        Carried carried,
        TimingRule timing,
        long requiredBitsPerSecond,
        long availableBitsPerSecond,
        Optional<LinkStandard> standard) {

    private static final long HUNDREDTHS = 100;

    /** The three answers. */
    public enum Carried {
        /** The picture fits as it is. */
        UNCOMPRESSED,
        /** The picture fits with display stream compression, which both ends have. */
        COMPRESSED,
        /** The picture does not fit. */
        NO
    }

    /**
     * Tells whether the picture arrives, compressed or not.
     *
     * @return true unless the answer is no
     */
    public boolean fits() {
        return carried != Carried.NO;
    }

    /**
     * Tells whether the answer is within 1 % on a link that packs its blanking, so that only a mode
     * which the makers declare settles it.
     *
     * @return true for a close call
     */
    public boolean needsDeclaredMode() {
        long apart = Math.abs(requiredBitsPerSecond - availableBitsPerSecond);
        return standard.isPresent()
                && standard.get().packsBlanking()
                && apart * HUNDREDTHS <= availableBitsPerSecond;
    }
}
