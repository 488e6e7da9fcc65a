package rigbrief.model.air;

import java.util.List;
import rigbrief.model.Expect;

/**
 * The flow at which fans and case agree.
 *
 * <p>Formula, straight fan curves against p = K Q²: in parallel the flows add at equal pressure, Q
 * = A - B p with A the sum of free flows and B the sum of free flow / shut-off pressure, so Q = 2 A
 * / (1 + sqrt(1 + 4 K A B)); in series the pressures add at equal flow, Q = 2 C / (D + sqrt(D² + 4
 * K C)) with C the sum of shut-off pressures and D the sum of shut-off pressure / free flow. A fan
 * whose shut-off pressure the others exceed stands still in the sum: it gives nothing, and lets
 * nothing back (common practice).
 *
 * <p>Source: a fan maker's technical notes on system resistance and on series and parallel
 * operation. All fans at the same share s of their speeds give s times the flow at full speed,
 * exactly.
 */
public final class OperatingPoint {
    private OperatingPoint() {}

    /**
     * Gives the flow of fans in parallel from their sums; no list needed.
     *
     * @param sumFreeFlowM3h A, sum of free flows, m³/h; 0 for no fan
     * @param sumFlowPerPressure B, sum of free flow / shut-off pressure, m³/h per Pa
     * @param impedancePaPerM3h2 K of the case, Pa per (m³/h)²
     * @return m³/h
     * @throws IllegalArgumentException for a negative value
     */
    public static double flowM3h(
            double sumFreeFlowM3h, double sumFlowPerPressure, double impedancePaPerM3h2) {
        Expect.notNegative(sumFreeFlowM3h, "sumFreeFlowM3h");
        Expect.notNegative(sumFlowPerPressure, "sumFlowPerPressure");
        Expect.notNegative(impedancePaPerM3h2, "impedancePaPerM3h2");
        double steepness = 4 * impedancePaPerM3h2 * sumFreeFlowM3h * sumFlowPerPressure;
        return 2 * sumFreeFlowM3h / (1 + Math.sqrt(1 + steepness));
    }

    /**
     * Gives the flow of unlike fans in parallel.
     *
     * @param fans each fan's curve at its speed; may be empty
     * @param impedance the case
     * @return m³/h
     */
    public static double parallelM3h(List<FanCurve> fans, CaseImpedance impedance) {
        double leastPa = 0;
        double pressurePa = 0;
        double flowM3h;
        do {
            leastPa = pressurePa;
            flowM3h = flowOfStrongerM3h(fans, leastPa, impedance);
            pressurePa = impedance.pressurePa(flowM3h);
            // A fan that drops out lets the pressure rise, so nobody comes back.
        } while (anyBetween(fans, leastPa, pressurePa));
        return flowM3h;
    }

    private static double flowOfStrongerM3h(
            List<FanCurve> fans, double leastPa, CaseImpedance impedance) {
        double sumFlow = 0;
        double sumFlowPerPressure = 0;
        for (FanCurve fan : fans) {
            if (fan.shutoffPressurePa() > leastPa) {
                sumFlow += fan.freeFlowM3h();
                sumFlowPerPressure += fan.freeFlowM3h() / fan.shutoffPressurePa();
            }
        }
        return flowM3h(sumFlow, sumFlowPerPressure, impedance.paPerM3h2());
    }

    private static boolean anyBetween(List<FanCurve> fans, double leastPa, double mostPa) {
        for (FanCurve fan : fans) {
            if (fan.shutoffPressurePa() > leastPa && fan.shutoffPressurePa() <= mostPa) {
                return true;
            }
        }
        return false;
    }

    /**
     * Gives the flow of fans one behind the other.
     *
     * @param fans each fan's curve at its speed; may be empty
     * @param impedance the case
     * @return m³/h
     */
    public static double seriesM3h(List<FanCurve> fans, CaseImpedance impedance) {
        double sumPressurePa = 0;
        double sumPressurePerFlow = 0;
        for (FanCurve fan : fans) {
            sumPressurePa += fan.shutoffPressurePa();
            sumPressurePerFlow += fan.shutoffPressurePa() / fan.freeFlowM3h();
        }
        double root =
                Math.sqrt(
                        sumPressurePerFlow * sumPressurePerFlow
                                + 4 * impedance.paPerM3h2() * sumPressurePa);
        return fans.isEmpty() ? 0 : 2 * sumPressurePa / (sumPressurePerFlow + root);
    }
}
