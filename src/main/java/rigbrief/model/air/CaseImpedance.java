package rigbrief.model.air;

import rigbrief.model.Expect;

/**
 * How a case resists the air that is driven through it.
 *
 * <p>Formula: p = K Q².
 *
 * <p>Source: a fan maker's technical note "Understanding your system resistance": the exponent lies
 * between 1 (laminar) and 2 (turbulent), near 2 for electronic enclosures. Density is left in K.
 *
 * @param paPerM3h2 K, Pa per (m³/h)², 0 or more
 */
public record CaseImpedance(double paPerM3h2) {

    /** Refuses a negative resistance. */
    public CaseImpedance {
        Expect.notNegative(paPerM3h2, "paPerM3h2");
    }

    /**
     * Gives the pressure that a flow needs.
     *
     * @param flowM3h flow, m³/h, 0 or more
     * @return Pa
     */
    public double pressurePa(double flowM3h) {
        return paPerM3h2 * Expect.notNegative(flowM3h, "flowM3h") * flowM3h;
    }
}
