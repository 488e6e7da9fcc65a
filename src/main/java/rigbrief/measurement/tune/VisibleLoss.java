package rigbrief.measurement.tune;

/**
 * How much of a picture is lost by turning something down.
 *
 * <p>Formula: (visibility + 0.1) x (steps down / steps there are to go down)^2, in thousandths. The
 * square because the first step down from the top shows least; the tenth so that nothing is turned
 * down for no gain, however well it hides.
 *
 * <p>Common practice: visibility from 0, hidden, to 3, seen at once, as the catalogue states it; a
 * preset, rays and the number of pixels count 3.
 */
final class VisibleLoss {
    /** Visibility of what is seen at once. */
    static final int SEEN_AT_ONCE = 3;

    /** Computed over shown pixels, along one axis, at which the whole loss of pixels is counted. */
    static final double HALF = 0.5;

    private static final long POINT = 1_000;
    private static final long LEAST = 100;

    private VisibleLoss() {}

    /**
     * The loss of going down some steps.
     *
     * @param visible 0 to 3
     * @param down steps below the top
     * @param steps how many steps there are, the top among them
     * @return thousandths
     */
    static long ofSteps(int visible, int down, int steps) {
        if (down == 0) {
            return 0;
        }
        long most = steps - 1L;
        return Math.round((double) (visible * POINT + LEAST) * down * down / (most * most));
    }

    /**
     * The loss of drawing fewer pixels than are shown.
     *
     * @param ratio computed over shown pixels along one axis, 0 to 1
     * @return thousandths
     */
    static long ofPixels(double ratio) {
        double share = (1 - ratio) / HALF;
        return Math.round((SEEN_AT_ONCE * POINT + LEAST) * share * share);
    }
}
