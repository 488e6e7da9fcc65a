package rigbrief.model.air;

import rigbrief.model.Expect;

/**
 * A fan's pressure against its flow, as a straight line.
 *
 * <p>Formula: p = shut-off pressure x (1 - Q / free flow).
 *
 * <p>Common practice: the line between the two figures of a data sheet; a real curve sags in its
 * middle, most of all for axial fans at high pressure.
 *
 * @param freeFlowM3h flow without any resistance, m³/h, above 0
 * @param shutoffPressurePa pressure without any flow, Pa, above 0
 */
public record FanCurve(double freeFlowM3h, double shutoffPressurePa) {

    /** Refuses a fan without flow or pressure. */
    public FanCurve {
        Expect.positive(freeFlowM3h, "freeFlowM3h");
        Expect.positive(shutoffPressurePa, "shutoffPressurePa");
    }

    /**
     * Gives the pressure at a flow.
     *
     * @param flowM3h flow, m³/h; above the free flow the pressure is negative
     * @return Pa
     */
    public double pressurePa(double flowM3h) {
        return shutoffPressurePa * (1 - Expect.finite(flowM3h, "flowM3h") / freeFlowM3h);
    }

    /**
     * Gives the fan at another speed, by the affinity laws.
     *
     * @param speedRatio other speed / speed now, above 0
     * @return the curve at that speed
     */
    public FanCurve atSpeed(double speedRatio) {
        return new FanCurve(
                FanLaws.flowM3h(freeFlowM3h, speedRatio),
                FanLaws.pressurePa(shutoffPressurePa, speedRatio));
    }
}
