package rigbrief.model.air;

import rigbrief.model.Expect;

/**
 * The air that carries a heat away at a given temperature rise.
 *
 * <p>Formula: flow = heat / (density x heat capacity x rise). At density x capacity = 1206 J/(m³ K)
 * that is 2.985 m³/h per watt and kelvin, or 3.16 cfm per watt and degree Fahrenheit.
 *
 * <p>Source: a knowledge-base article on forced-air cooling of enclosures with a worked example,
 * and a fan maker's application note on cooling requirements. Watts go in as watts: the short cut
 * with 1.08 belongs to BTU/h and is not used.
 */
public final class Airflow {
    /** One cubic foot a minute, in m³/h: 0.3048³ x 60, exact by the foot's definition. */
    public static final double M3H_PER_CFM = 0.3048 * 0.3048 * 0.3048 * 60;

    private static final double SECONDS_PER_HOUR = 3_600;

    private Airflow() {}

    /**
     * Gives the mass of air a second.
     *
     * @param heatW heat to carry, W
     * @param riseK temperature rise, K
     * @return kg/s
     * @throws IllegalArgumentException for a negative heat or a rise not above 0
     */
    public static double forHeatKgS(double heatW, double riseK) {
        Expect.notNegative(heatW, "heatW");
        return heatW / (AirDensity.HEAT_CAPACITY_J_KGK * Expect.positive(riseK, "riseK"));
    }

    /**
     * Gives the volume of air an hour.
     *
     * @param heatW heat to carry, W
     * @param riseK temperature rise, K
     * @param densityKgM3 density of the air, kg/m³
     * @return m³/h
     * @throws IllegalArgumentException for a negative heat, a rise or a density not above 0
     */
    public static double forHeatM3h(double heatW, double riseK, double densityKgM3) {
        Expect.positive(densityKgM3, "densityKgM3");
        return forHeatKgS(heatW, riseK) / densityKgM3 * SECONDS_PER_HOUR;
    }

    /**
     * Gives a flow in cubic feet a minute.
     *
     * @param flowM3h flow, m³/h
     * @return cfm
     */
    public static double cfm(double flowM3h) {
        return flowM3h / M3H_PER_CFM;
    }

    /**
     * Gives a flow in cubic metres an hour.
     *
     * @param flowCfm flow, cfm
     * @return m³/h
     */
    public static double m3h(double flowCfm) {
        return flowCfm * M3H_PER_CFM;
    }
}
