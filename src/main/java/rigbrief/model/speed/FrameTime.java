package rigbrief.model.speed;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * The time one picture takes, from what it asks of card and processor.
 *
 * <p>Formula: graphics = max(operations / rate, bytes / rate) + rays / rate + fixed; processor =
 * serial / rate of one core + parallel / rate of all; together (graphics^p + processor^p)^(1/p). At
 * p = 1 the two wait for each other, at infinite p they overlap wholly; fitted values lie near 4.
 *
 * <p>Source: {@link Roofline} and {@link Amdahl} for the parts. Common practice: the p-norm between
 * sum and maximum, and rays on units of their own.
 */
public final class FrameTime {
    /** Overlap exponents that fits give. */
    public static final Range OVERLAP = new Range("overlap exponent", 1, 40, "");

    /** The exponent where no fit says otherwise. Common practice. */
    public static final double USUAL_OVERLAP = 4;

    private static final double MILLISECONDS = 1_000;

    private FrameTime() {}

    /**
     * Gives the pixels that are really computed.
     *
     * @param widthPx pixels shown per line
     * @param heightPx lines shown
     * @param ratioPerAxis computed over shown pixels along one axis; 1 without upscaling
     * @return pixels
     * @throws IllegalArgumentException for a size below 1 or a ratio not above 0
     */
    public static double internalPixels(int widthPx, int heightPx, double ratioPerAxis) {
        Expect.positive(ratioPerAxis, "ratioPerAxis");
        return (double) Expect.atLeastOne(widthPx, "widthPx")
                * Expect.atLeastOne(heightPx, "heightPx")
                * ratioPerAxis
                * ratioPerAxis;
    }

    /**
     * Gives the card's time for a picture.
     *
     * @param rooflineS time by arithmetic or memory, as from {@link Roofline#seconds}, s
     * @param rays rays cast, in the unit of the rate
     * @param raysPerS rays per second; 0 for a card without ray units
     * @param fixedS time that no card shortens, s
     * @return s; infinite when rays are asked of a card without ray units
     * @throws IllegalArgumentException for a negative value
     */
    public static double graphicsS(double rooflineS, double rays, double raysPerS, double fixedS) {
        if (!(rooflineS >= 0)) {
            Expect.notNegative(rooflineS, "rooflineS");
        }
        return rooflineS
                + Roofline.workSeconds(rays, raysPerS)
                + Expect.notNegative(fixedS, "fixedS");
    }

    /**
     * Gives the processor's time for a picture.
     *
     * @param serial work of one core
     * @param singlePerS work a second of one core
     * @param parallel work that all cores share
     * @param allPerS work a second of all cores
     * @return s; infinite for work without a rate
     * @throws IllegalArgumentException for a negative value
     */
    public static double processorS(
            double serial, double singlePerS, double parallel, double allPerS) {
        return Roofline.workSeconds(serial, singlePerS) + Roofline.workSeconds(parallel, allPerS);
    }

    /**
     * Gives the time of card and processor together.
     *
     * @param graphicsS the card's time, any unit of time
     * @param processorS the processor's time, same unit
     * @param overlap p, 1 or more; from 40 on the larger time alone counts
     * @return time in that unit, never below the larger of the two
     * @throws IllegalArgumentException for a negative time or an exponent below 1
     */
    public static double together(double graphicsS, double processorS, double overlap) {
        double larger = Math.max(notBelowZero(graphicsS), notBelowZero(processorS));
        double smaller = Math.min(graphicsS, processorS);
        if (!(overlap >= 1)) {
            throw new IllegalArgumentException(
                    "overlap: found %s, expected 1 or more; 4 is usual".formatted(overlap));
        }
        if (smaller == 0 || overlap >= OVERLAP.high() || Double.isInfinite(larger)) {
            return larger;
        }
        double ratio = smaller / larger;
        if (overlap == USUAL_OVERLAP) {
            double square = ratio * ratio;
            return larger * Math.sqrt(Math.sqrt(1 + square * square));
        }
        return larger * Math.pow(1 + Math.pow(ratio, overlap), 1 / overlap);
    }

    private static double notBelowZero(double timeS) {
        if (!(timeS >= 0)) {
            Expect.notNegative(timeS, "timeS");
        }
        return timeS;
    }

    /**
     * Gives the pictures per second of a frame time under an engine's cap.
     *
     * @param frameS time of a picture, s
     * @param capPerS the engine's greatest rate, 1/s; infinite for none
     * @return 1/s
     * @throws IllegalArgumentException for a negative time or a cap not above 0
     */
    public static double framesPerS(double frameS, double capPerS) {
        if (!(capPerS > 0)) {
            Expect.positive(capPerS, "capPerS");
        }
        return Math.min(1 / notBelowZero(frameS), capPerS);
    }

    /**
     * Gives the rate that a frame time in milliseconds stands for, and the other way round.
     *
     * @param frameMs frame time, ms, above 0; or a rate, 1/s
     * @return 1000 / it
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double perSecond(double frameMs) {
        return MILLISECONDS / Expect.positive(frameMs, "frameMs");
    }
}
