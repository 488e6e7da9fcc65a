package rigbrief.model.power;

import rigbrief.model.Expect;

/**
 * What a part draws when it is busy for a share of the time.
 *
 * <p>Formula: idle + (sustained - idle) x utilisation. In a frame-rate workload the slower of card
 * and processor is busy throughout, the other for its share of the frame time.
 *
 * <p>Common practice: a straight line between idle and sustained power.
 */
public final class UtilisationDraw {
    private UtilisationDraw() {}

    /**
     * Gives the draw at a utilisation.
     *
     * @param idleW power while waiting, W
     * @param sustainedW power while busy, W
     * @param utilisation share of the time busy, 0 to 1
     * @return W
     * @throws IllegalArgumentException for a negative power or a share outside 0 to 1
     */
    public static double watts(double idleW, double sustainedW, double utilisation) {
        Expect.notNegative(idleW, "idleW");
        Expect.notNegative(sustainedW, "sustainedW");
        return idleW + (sustainedW - idleW) * Expect.share(utilisation, "utilisation");
    }

    /**
     * Gives the share of a frame during which a part works.
     *
     * @param ownS the part's own time for one frame, s
     * @param frameS the time between frames, s, above 0
     * @return 0 to 1; 1 when its own time fills the frame
     * @throws IllegalArgumentException for a negative time or an empty frame
     */
    public static double utilisation(double ownS, double frameS) {
        Expect.notNegative(ownS, "ownS");
        return Math.min(1, ownS / Expect.positive(frameS, "frameS"));
    }
}
