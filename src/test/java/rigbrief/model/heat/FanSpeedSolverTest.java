package rigbrief.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCases;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import rigbrief.model.heat.CoolingCase.Air;
import rigbrief.model.heat.CoolingCase.Card;
import rigbrief.model.heat.CoolingCase.Processor;
import rigbrief.model.heat.CoolingCase.Seat;

class FanSpeedSolverTest {
    private static final double SILENT = Double.NEGATIVE_INFINITY;

    /** 402 W in 120 m³/h of air of 1.2 kg/m³: by hand 402 x 3600 / (1206 x 120) = 10 K. */
    private static final Air AIR = new Air(22, 1.2, 402, 120, 32);

    private static final Processor PROCESSOR = new Processor(120, 90, 0.25, 35);
    private static final Card CARD = new Card(250, 83, 0.2, 36, SILENT);
    private static final Seat SEAT = new Seat(0, 1, SILENT);
    private static final CoolingCase USUAL = new CoolingCase(AIR, PROCESSOR, CARD, SILENT, SEAT, 5);

    /**
     * By hand: the air in the case is at 22 + 10 = 32 °C; processor 32 + 120 x 0.25 = 62 °C; card
     * 32 + 250 x 0.2 / sqrt(1.4) = 74.26 °C; levels 32, 35 and 36 + 50 log10(1.4) = 43.31 dB(A)
     * make 44.18.
     */
    @Test
    void flat_out_every_number_follows_from_the_models() {
        var speeds = FanSpeedSolver.flatOut(USUAL);

        assertThat(speeds.caseShare()).isEqualTo(1);
        assertThat(speeds.coolerShare()).isEqualTo(1);
        assertThat(speeds.cardRatio()).isEqualTo(CardCooling.MOST_RATIO);
        assertThat(speeds.caseRiseK()).isCloseTo(10, within(1e-9));
        assertThat(speeds.processorC()).isCloseTo(62, within(1e-9));
        assertThat(speeds.cardC()).isCloseTo(74.258, within(0.001));
        assertThat(speeds.levelDba()).isCloseTo(44.18, within(0.01));
        assertThat(speeds.excessK()).isZero();
    }

    /**
     * By hand, case fans at half speed: rise 20 K, air 42 °C; processor at 0.64 of its cooler's
     * speed 42 + 120 x 0.25 / 0.8 = 79.5 °C; card at its reference 42 + 50 = 92 °C, which is 9 K
     * over 83 and 14 K over 83 less the margin.
     */
    @Test
    void the_hotter_part_sets_the_excess() {
        var speeds = FanSpeedSolver.at(USUAL, 0.5, 0.64, 1);

        assertThat(speeds.caseRiseK()).isCloseTo(20, within(1e-9));
        assertThat(speeds.processorC()).isCloseTo(79.5, within(1e-9));
        assertThat(speeds.cardC()).isCloseTo(92, within(1e-9));
        assertThat(speeds.excessK()).isCloseTo(14, within(1e-9));
    }

    /** By hand: 44.18 less 4 dB of damping less 6.02 dB at 2 m is 34.16; with 30 it makes 35.57. */
    @Test
    void damping_distance_and_room_come_after_the_sum() {
        var far = new CoolingCase(AIR, PROCESSOR, CARD, SILENT, new Seat(4, 2, 30), 5);

        assertThat(FanSpeedSolver.flatOut(far).levelDba()).isCloseTo(35.57, within(0.01));
    }

    /** By hand: the sum and a constant source as loud as it make 3.01 dB more. */
    @Test
    void sources_that_never_slow_down_are_added_before_the_damping() {
        double aloneDba = FanSpeedSolver.flatOut(USUAL).levelDba();
        var withDrives = new CoolingCase(AIR, PROCESSOR, CARD, aloneDba, SEAT, 5);

        assertThat(FanSpeedSolver.flatOut(withDrives).levelDba() - aloneDba)
                .isCloseTo(3.0103, within(1e-4));
    }

    @Test
    void a_cool_idle_machine_turns_everything_as_slowly_as_it_may() {
        var idle =
                new CoolingCase(
                        new Air(22, 1.2, 30, 120, 32),
                        new Processor(10, 90, 0.25, 35),
                        new Card(15, 83, 0.2, 36, SILENT),
                        SILENT,
                        SEAT,
                        5);

        var speeds = FanSpeedSolver.quietest(idle);

        assertThat(speeds.caseShare()).isEqualTo(0.2);
        assertThat(speeds.coolerShare()).isEqualTo(CoolerResistance.LEAST_SPEED_SHARE);
        assertThat(speeds.cardRatio()).isEqualTo(CardCooling.LEAST_RATIO);
        assertThat(speeds.excessK()).isZero();
    }

    /**
     * By hand: 22 + 10 + 300 x 0.25 = 107 °C at full speed, 12 K above a limit of 100 °C less a
     * margin of 5 K.
     */
    @Test
    void a_hopeless_case_runs_flat_out_and_says_by_how_much() {
        var hopeless =
                new CoolingCase(AIR, new Processor(300, 100, 0.25, 35), Card.NONE, SILENT, SEAT, 5);

        var speeds = FanSpeedSolver.quietest(hopeless);

        assertThat(speeds).isEqualTo(FanSpeedSolver.flatOut(hopeless));
        assertThat(speeds.processorC()).isCloseTo(107, within(1e-9));
        assertThat(speeds.excessK()).isCloseTo(12, within(1e-9));
    }

    @Test
    void a_build_without_card_or_fans_has_an_answer_too() {
        var fanless =
                new CoolingCase(
                        new Air(22, 1.2, 20, 0, SILENT),
                        new Processor(15, 95, 1.5, SILENT),
                        Card.NONE,
                        SILENT,
                        SEAT,
                        5);

        var speeds = FanSpeedSolver.quietest(fanless);

        assertThat(speeds.levelDba()).isEqualTo(SILENT);
        assertThat(speeds.excessK()).isZero();
        assertThat(speeds.processorC()).isLessThan(95);
    }

    @Test
    void of_equally_quiet_sets_the_slower_case_fans_are_taken() {
        var silentFans =
                new CoolingCase(
                        new Air(22, 1.2, 30, 120, SILENT),
                        new Processor(10, 90, 0.25, SILENT),
                        Card.NONE,
                        SILENT,
                        SEAT,
                        5);

        assertThat(FanSpeedSolver.quietest(silentFans).caseShare()).isEqualTo(0.2);
    }

    /**
     * By hand: 90 °C less the margin of 5 K less 32 °C leave 53 K to 120 W at 0.44 K/W (52.8 K),
     * but only 52.5 K with the case fans at 95 %; so full case speed, and (52.8 / 53)² of the
     * cooler's.
     */
    @Test
    void full_case_speed_is_one_of_the_choices() {
        var tight =
                new CoolingCase(AIR, new Processor(120, 90, 0.44, 35), Card.NONE, SILENT, SEAT, 5);

        var speeds = FanSpeedSolver.quietest(tight);

        assertThat(speeds.caseShare()).isEqualTo(1);
        assertThat(speeds.coolerShare()).isCloseTo(0.9925, within(0.0001));
        assertThat(speeds.excessK()).isZero();
    }

    /** By hand: without heat in the case all 63 K are there, and 63 / 120 K/W need them all. */
    @Test
    void a_cooler_that_needs_exactly_its_full_speed_is_cool_enough() {
        var exact =
                new CoolingCase(
                        new Air(22, 1.2, 0, 120, 32),
                        new Processor(120, 90, 63.0 / 120, 35),
                        new Card(15, 83, 0.2, 20, 60),
                        SILENT,
                        SEAT,
                        5);

        var speeds = FanSpeedSolver.quietest(exact);

        assertThat(speeds.caseShare()).isEqualTo(0.2);
        assertThat(speeds.coolerShare()).isEqualTo(1);
        assertThat(speeds.cardRatio()).isEqualTo(CardCooling.MOST_RATIO);
        assertThat(speeds.excessK()).isZero();
    }

    @Test
    void a_speed_that_is_no_speed_is_refused() {
        refused("speedShare", () -> FanSpeedSolver.at(USUAL, 1, 0, 1));
        refused("speedShare", () -> FanSpeedSolver.at(USUAL, 1, 1, 0));
        refused("flowM3h", () -> FanSpeedSolver.at(USUAL, -0.5, 1, 1));
    }

    @Provide
    Arbitrary<CoolingCase> builds() {
        Arbitrary<Air> airs =
                Combinators.combine(range(15, 35), range(50, 700), range(0, 250), range(15, 45))
                        .as((roomC, heatW, flow, dba) -> new Air(roomC, 1.2, heatW, flow, dba));
        Arbitrary<Processor> processors =
                Combinators.combine(range(5, 250), range(70, 100), range(0.08, 0.6), range(15, 45))
                        .as(Processor::new);
        Arbitrary<Card> cards =
                Combinators.combine(range(1, 350), range(75, 95), range(0.1, 0.5), range(25, 45))
                        .as((w, limitC, kw, dba) -> new Card(w, limitC, kw, dba, dba - 15));
        return Combinators.combine(airs, processors, cards, range(0, 10))
                .as(
                        (air, processor, card, marginK) ->
                                new CoolingCase(air, processor, card, 15, SEAT, marginK));
    }

    /** Without edge cases: those of thirteen numbers together would leave no other try. */
    private static Arbitrary<Double> range(double low, double high) {
        return Arbitraries.doubles().between(low, high).edgeCases(EdgeCases.Config::none);
    }

    /** An enumeration knows nothing of the closed forms: a fine grid of all three speeds. */
    @Property(tries = 60)
    void no_finer_grid_of_speeds_is_cool_and_quieter(@ForAll("builds") CoolingCase build) {
        var found = FanSpeedSolver.quietest(build);
        double leastRatio = CardCooling.leastRatio(build.card().loadDba(), build.card().idleDba());

        double bestDba = Double.POSITIVE_INFINITY;
        for (int step = 4; step <= 20; step++) {
            for (double cooler = 0.3; cooler <= 1; cooler += 0.02) {
                for (double card = leastRatio; card <= 1.4; card += 0.04) {
                    var speeds = FanSpeedSolver.at(build, step / 20.0, cooler, card);
                    if (speeds.excessK() == 0) {
                        bestDba = Math.min(bestDba, speeds.levelDba());
                    }
                }
            }
        }

        if (bestDba < Double.POSITIVE_INFINITY) {
            assertThat(found.excessK()).isZero();
            assertThat(found.levelDba()).isLessThanOrEqualTo(bestDba + 1e-9);
        }
    }

    @Property(tries = 300)
    void speeds_keep_their_bounds_and_cool_sets_keep_both_limits(
            @ForAll("builds") CoolingCase build) {
        var speeds = FanSpeedSolver.quietest(build);

        assertThat(speeds.caseShare()).isBetween(0.2, 1.0);
        assertThat(speeds.coolerShare()).isBetween(CoolerResistance.LEAST_SPEED_SHARE, 1.0);
        assertThat(speeds.cardRatio()).isBetween(CardCooling.LEAST_RATIO, CardCooling.MOST_RATIO);
        if (speeds.excessK() == 0) {
            double margin = build.marginK() - 1e-3;
            assertThat(speeds.processorC()).isLessThan(build.processor().limitC() - margin);
            assertThat(speeds.cardC()).isLessThan(build.card().limitC() - margin);
        }
    }

    @Property(tries = 300)
    void more_watts_never_cool_anything(
            @ForAll("builds") CoolingCase build,
            @ForAll @DoubleRange(min = 0, max = 60) double moreW) {
        var hotter = withMore(build, moreW, moreW, 2 * moreW, 0);
        var before = FanSpeedSolver.at(build, 0.6, 0.7, 1);
        var after = FanSpeedSolver.at(hotter, 0.6, 0.7, 1);

        assertThat(after.processorC()).isGreaterThanOrEqualTo(before.processorC());
        assertThat(after.cardC()).isGreaterThanOrEqualTo(before.cardC());
        assertThat(after.caseRiseK()).isGreaterThanOrEqualTo(before.caseRiseK());
        assertNoBetter(FanSpeedSolver.quietest(hotter), FanSpeedSolver.quietest(build));
    }

    @Property(tries = 300)
    void more_air_through_the_case_never_raises_any_temperature(
            @ForAll("builds") CoolingCase build,
            @ForAll @DoubleRange(min = 0, max = 60) double moreM3h) {
        var airier = withMore(build, 0, 0, 0, moreM3h);
        var before = FanSpeedSolver.at(build, 0.6, 0.7, 1);
        var after = FanSpeedSolver.at(airier, 0.6, 0.7, 1);

        assertThat(after.processorC()).isLessThanOrEqualTo(before.processorC());
        assertThat(after.cardC()).isLessThanOrEqualTo(before.cardC());
        assertNoBetter(FanSpeedSolver.quietest(build), FanSpeedSolver.quietest(airier));
    }

    @Property(tries = 300)
    void a_wider_margin_is_never_quieter(
            @ForAll("builds") CoolingCase build,
            @ForAll @DoubleRange(min = 0, max = 10) double moreK) {
        var stricter =
                new CoolingCase(
                        build.air(),
                        build.processor(),
                        build.card(),
                        build.constantDba(),
                        build.seat(),
                        build.marginK() + moreK);

        assertNoBetter(FanSpeedSolver.quietest(stricter), FanSpeedSolver.quietest(build));
    }

    private static void assertNoBetter(Speeds harder, Speeds easier) {
        assertThat(harder.levelDba()).isGreaterThanOrEqualTo(easier.levelDba() - 1e-9);
        assertThat(harder.excessK()).isGreaterThanOrEqualTo(easier.excessK() - 1e-9);
    }

    private static CoolingCase withMore(
            CoolingCase it, double processorW, double cardW, double heatW, double flowM3h) {
        Air air = it.air();
        Processor processor = it.processor();
        Card card = it.card();
        return new CoolingCase(
                new Air(
                        air.roomC(),
                        air.densityKgM3(),
                        air.heatW() + heatW,
                        air.fullFlowM3h() + flowM3h,
                        air.fansFullDba()),
                new Processor(
                        processor.powerW() + processorW,
                        processor.limitC(),
                        processor.coolerFullKw(),
                        processor.coolerFullDba()),
                new Card(
                        card.powerW() + cardW,
                        card.limitC(),
                        card.referenceKw(),
                        card.loadDba(),
                        card.idleDba()),
                it.constantDba(),
                it.seat(),
                it.marginK());
    }
}
