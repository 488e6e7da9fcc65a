package rigbrief.model.air;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How much warmer the air in a case is than the room.
 *
 * <p>Formula: rise = heat x 3600 / (density x heat capacity x flow), the air well mixed; the flow
 * never counts as less than {@link #NATURAL_FLOW_M3H}.
 *
 * <p>Source: the heat balance of {@link Airflow}. Common practice: 10 m³/h, what warm air moves
 * through an open-fronted case by itself; it keeps a case without fans finite.
 */
public final class AirRise {
    /** Heat in one case for which a well-mixed case has been thought of. */
    public static final Range HEAT_W = new Range("heat in the case", 0, 1_200, "W");

    /** The flow that warmth alone drives, m³/h. Common practice. */
    public static final double NATURAL_FLOW_M3H = 10;

    private static final double SECONDS_PER_HOUR = 3_600;

    private AirRise() {}

    /**
     * Gives the rise over the room.
     *
     * @param heatW heat set free in the case, W
     * @param flowM3h air through the case, m³/h, 0 or more
     * @param densityKgM3 density of the air, kg/m³
     * @return K
     * @throws IllegalArgumentException for a negative heat or flow, or a density not above 0
     */
    public static double kelvin(double heatW, double flowM3h, double densityKgM3) {
        Expect.notNegative(heatW, "heatW");
        Expect.notNegative(flowM3h, "flowM3h");
        Expect.positive(densityKgM3, "densityKgM3");
        double movedM3h = Math.max(flowM3h, NATURAL_FLOW_M3H);
        return heatW * SECONDS_PER_HOUR / (densityKgM3 * AirDensity.HEAT_CAPACITY_J_KGK * movedM3h);
    }
}
