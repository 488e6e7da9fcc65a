package rigbrief.model.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class OperatingPointTest {
    private static final FanCurve FAN = new FanCurve(100, 20);
    private static final CaseImpedance LOOSE = new CaseImpedance(0.001);
    private static final CaseImpedance STIFF = new CaseImpedance(0.01);

    /** Computed apart from this program: the root of 20 (1 - Q/100) = 0.001 Q². */
    @Test
    @DisplayName("FAN-01: one fan meets the case at 73.205 m³/h and 5.359 Pa")
    void one_fan() {
        double flowM3h = OperatingPoint.parallelM3h(List.of(FAN), LOOSE);

        assertThat(flowM3h).isCloseTo(73.205, within(0.001));
        assertThat(LOOSE.pressurePa(flowM3h)).isCloseTo(5.359, within(0.001));
        assertThat(FAN.pressurePa(flowM3h)).isCloseTo(5.359, within(0.001));
    }

    /** Computed apart from this program; source of the rule: a fan maker's technical note. */
    @Test
    @DisplayName("FAN-02: two side by side meet it at 100 m³/h and 10 Pa")
    void two_fans_in_parallel() {
        double flowM3h = OperatingPoint.parallelM3h(List.of(FAN, FAN), LOOSE);

        assertThat(flowM3h).isCloseTo(100, within(0.001));
        assertThat(LOOSE.pressurePa(flowM3h)).isCloseTo(10, within(0.001));
    }

    /** Computed apart from this program; source of the rule: the same note. */
    @Test
    @DisplayName("FAN-03: two one behind the other meet it at 82.843 m³/h and 6.863 Pa")
    void two_fans_in_series() {
        double flowM3h = OperatingPoint.seriesM3h(List.of(FAN, FAN), LOOSE);

        assertThat(flowM3h).isCloseTo(82.843, within(0.001));
        assertThat(LOOSE.pressurePa(flowM3h)).isCloseTo(6.863, within(0.001));
    }

    /** Computed apart from this program. */
    @Test
    @DisplayName("FAN-04: in a case ten times stiffer 35.826, 40.000 and 46.332: series wins")
    void a_stiff_case_turns_the_order_round() {
        double single = OperatingPoint.parallelM3h(List.of(FAN), STIFF);
        double parallel = OperatingPoint.parallelM3h(List.of(FAN, FAN), STIFF);
        double series = OperatingPoint.seriesM3h(List.of(FAN, FAN), STIFF);

        assertThat(single).isCloseTo(35.826, within(0.001));
        assertThat(parallel).isCloseTo(40.000, within(0.001)).isLessThan(series);
        assertThat(series).isCloseTo(46.332, within(0.001));
    }

    @Test
    void no_fan_moves_nothing() {
        assertThat(OperatingPoint.parallelM3h(List.of(), LOOSE)).isZero();
        assertThat(OperatingPoint.seriesM3h(List.of(), LOOSE)).isZero();
        assertThat(OperatingPoint.flowM3h(0, 0, 0.001)).isZero();
    }

    @Test
    void an_open_case_lets_the_free_flows_through() {
        var open = new CaseImpedance(0);

        assertThat(OperatingPoint.parallelM3h(List.of(FAN, FAN), open)).isEqualTo(200);
        assertThat(OperatingPoint.seriesM3h(List.of(FAN, FAN), open)).isEqualTo(100);
        assertThat(OperatingPoint.flowM3h(200, 10, 0)).isEqualTo(200);
    }

    /** By hand: A = 2 x 100, B = 2 x 100/20; the sums give what the list gives. */
    @Test
    void sums_and_lists_agree() {
        assertThat(OperatingPoint.flowM3h(200, 10, 0.001)).isCloseTo(100, within(1e-9));
    }

    /**
     * By hand: the strong fan alone meets the stiff case at p = 0.01 x 35.826² = 12.8 Pa, above the
     * 2 Pa of the weak one, which therefore adds nothing.
     */
    @Test
    void a_fan_too_weak_for_the_pressure_gives_nothing_and_lets_nothing_back() {
        var weak = new FanCurve(100, 2);

        double together = OperatingPoint.parallelM3h(List.of(weak, FAN), STIFF);

        assertThat(together).isEqualTo(OperatingPoint.parallelM3h(List.of(FAN), STIFF));
    }

    /**
     * By hand: a fan whose shut-off pressure is exactly that of the operating point of the other
     * (10 Pa at 100 m³/h for two of them) adds nothing, in or out of the sum.
     */
    @Test
    void a_fan_at_its_shut_off_pressure_makes_no_difference() {
        var justTooWeak = new FanCurve(60, 10);

        double together = OperatingPoint.parallelM3h(List.of(FAN, FAN, justTooWeak), LOOSE);

        assertThat(together).isCloseTo(100, within(1e-9));
    }

    /** By hand: 1 Pa drops out at first, then 5 Pa, since the pressure has risen meanwhile. */
    @Test
    void several_weak_fans_drop_out_one_after_the_other() {
        var weaker = new FanCurve(1_000, 1);
        var weak = new FanCurve(100, 5);

        double together = OperatingPoint.parallelM3h(List.of(weaker, weak, FAN), STIFF);

        assertThat(together).isEqualTo(OperatingPoint.parallelM3h(List.of(FAN), STIFF));
    }

    @Test
    void nonsense_is_refused() {
        refused("sumFreeFlowM3h", () -> OperatingPoint.flowM3h(-1, 1, 1));
        refused("sumFlowPerPressure", () -> OperatingPoint.flowM3h(1, -1, 1));
        refused("impedancePaPerM3h2", () -> OperatingPoint.flowM3h(1, 1, -1));
    }

    @Property(tries = 1000)
    void one_more_fan_never_takes_air_away(
            @ForAll @DoubleRange(min = 20, max = 200) double freeFlowM3h,
            @ForAll @DoubleRange(min = 0.5, max = 40) double shutoffPa,
            @ForAll @IntRange(min = 1, max = 8) int count,
            @ForAll @DoubleRange(min = 0, max = 0.01) @Scale(6) double paPerM3h2) {
        var impedance = new CaseImpedance(paPerM3h2);
        List<FanCurve> before = Collections.nCopies(count, FAN);
        List<FanCurve> after = new ArrayList<>(List.of(new FanCurve(freeFlowM3h, shutoffPa)));
        after.addAll(before);

        assertThat(OperatingPoint.parallelM3h(after, impedance))
                .isGreaterThanOrEqualTo(OperatingPoint.parallelM3h(before, impedance) - 1e-9);
    }

    @Property(tries = 1000)
    void flow_follows_a_common_speed_exactly(
            @ForAll @DoubleRange(min = 0.2, max = 1) double share,
            @ForAll @IntRange(min = 1, max = 8) int count,
            @ForAll @DoubleRange(min = 0, max = 0.01) @Scale(6) double paPerM3h2) {
        var impedance = new CaseImpedance(paPerM3h2);
        double full = OperatingPoint.parallelM3h(Collections.nCopies(count, FAN), impedance);
        double slower =
                OperatingPoint.parallelM3h(
                        Collections.nCopies(count, FAN.atSpeed(share)), impedance);

        assertThat(slower).isCloseTo(share * full, within(1e-9));
    }

    @Property(tries = 1000)
    void at_the_operating_point_fans_and_case_agree(
            @ForAll @DoubleRange(min = 20, max = 200) double freeFlowM3h,
            @ForAll @DoubleRange(min = 5, max = 40) double shutoffPa,
            @ForAll @DoubleRange(min = 1e-5, max = 0.01) @Scale(6) double paPerM3h2) {
        var fan = new FanCurve(freeFlowM3h, shutoffPa);
        var impedance = new CaseImpedance(paPerM3h2);

        double flowM3h = OperatingPoint.parallelM3h(List.of(fan), impedance);

        assertThat(fan.pressurePa(flowM3h)).isCloseTo(impedance.pressurePa(flowM3h), within(1e-9));
        assertThat(OperatingPoint.seriesM3h(List.of(fan), impedance))
                .isCloseTo(flowM3h, within(1e-9));
    }
}
