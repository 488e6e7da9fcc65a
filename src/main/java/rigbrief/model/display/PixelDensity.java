package rigbrief.model.display;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How fine a panel is, and how fine it looks from a distance.
 *
 * <p>Formula: pixels per inch = diagonal in pixels / diagonal in inches; pixels per degree = 2 d
 * tan(0.5°) x pixels per inch; a pixel subtends one minute of arc at 1 / (tan(1/60°) x pixels per
 * inch).
 *
 * <p>Source: plane geometry; an article on the mathematics of visual acuity (one minute of arc for
 * 20/20 sight, so 60 pixels per degree).
 */
public final class PixelDensity {
    /** Viewing distances at a desk. */
    public static final Range DISTANCE_MM = new Range("viewing distance", 400, 1_200, "mm");

    /** Millimetres in an inch, exact. */
    public static final double MM_PER_INCH = 25.4;

    private static final double ONE_MINUTE_RAD = Math.toRadians(1.0 / 60);
    private static final double HALF_A_DEGREE_RAD = Math.toRadians(0.5);

    private PixelDensity() {}

    /**
     * Gives the pixels per inch of a panel.
     *
     * @param widthPx pixels per line
     * @param heightPx lines
     * @param diagonalInch diagonal of the picture, inch
     * @return pixels per inch
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double perInch(int widthPx, int heightPx, double diagonalInch) {
        Expect.atLeastOne(widthPx, "widthPx");
        Expect.atLeastOne(heightPx, "heightPx");
        return Math.hypot(widthPx, heightPx) / Expect.positive(diagonalInch, "diagonalInch");
    }

    /**
     * Gives the pixel pitch.
     *
     * @param perInch pixels per inch
     * @return mm from one pixel to the next
     * @throws IllegalArgumentException for a density not above 0
     */
    public static double pitchMm(double perInch) {
        return MM_PER_INCH / Expect.positive(perInch, "perInch");
    }

    /**
     * Gives the pixels per degree of sight.
     *
     * @param perInch pixels per inch
     * @param distanceMm from the eye to the panel, mm
     * @return pixels per degree, centred on the line of sight
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double perDegree(double perInch, double distanceMm) {
        double degreeMm =
                2 * Expect.positive(distanceMm, "distanceMm") * Math.tan(HALF_A_DEGREE_RAD);
        return degreeMm / pitchMm(perInch);
    }

    /**
     * Gives the distance at which a pixel subtends one minute of arc.
     *
     * @param perInch pixels per inch
     * @return mm; nearer than this, sharp eyes see pixels
     * @throws IllegalArgumentException for a density not above 0
     */
    public static double acuityDistanceMm(double perInch) {
        return pitchMm(perInch) / Math.tan(ONE_MINUTE_RAD);
    }

    /**
     * Gives the density at which a pixel subtends one minute of arc.
     *
     * @param distanceMm from the eye to the panel, mm
     * @return pixels per inch
     * @throws IllegalArgumentException for a distance not above 0
     */
    public static double acuityPerInch(double distanceMm) {
        return MM_PER_INCH / (Expect.positive(distanceMm, "distanceMm") * Math.tan(ONE_MINUTE_RAD));
    }

    /**
     * Gives one side of a panel's picture.
     *
     * @param sidePx pixels along that side
     * @param perInch pixels per inch
     * @return mm
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double sideMm(int sidePx, double perInch) {
        return Expect.atLeastOne(sidePx, "sidePx") * pitchMm(perInch);
    }
}
