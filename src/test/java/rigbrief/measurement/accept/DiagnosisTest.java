package rigbrief.measurement.accept;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;

/**
 * A fault is put into a machine, its speeds are read with their spread, and the cause has to come
 * out first in at least nine tests of ten.
 */
class DiagnosisTest {
    private static final int TESTS = 20;
    private static final int MOST_MISSED = 2;

    @Test
    void memory_at_its_default_rate_comes_first_when_its_rate_was_read() {
        ranksFirst(
                Cause.MEMORY_AT_DEFAULT_RATE,
                Bench.machine(aProcessor(), aMemoryKit().mts(4_800), aGraphicsCard()),
                with(SheetIds.MEMORY_RATE, 4_800),
                with(SheetIds.MEMORY_MODULES, 2));
    }

    @Test
    void one_module_comes_first_by_speeds_alone() {
        ranksFirst(
                Cause.ONE_MODULE,
                Bench.machine(aProcessor(), aMemoryKit().modules(1).moduleGb(32), aGraphicsCard()));
    }

    @Test
    void a_card_in_a_narrow_slot_comes_first_when_its_lanes_were_read() {
        // Hand calculation: 4 lanes at 16 GT/s pass 7.877 GB/s, 16 pass 31.508; 0.3 % of the
        // traffic makes 3.67 GB x 0.003 x (1 / 7.877 - 1 / 31.508) = 1.05 ms of 9.5 ms.
        ranksFirst(
                Cause.NARROW_SLOT,
                Bench.machine(aProcessor(), aMemoryKit(), aGraphicsCard().tflops(24 / 1.1)),
                with(SheetIds.CARD_LANES, 4));
    }

    @Test
    void the_processors_heat_limit_comes_first_when_it_stands_at_its_limit() {
        ranksFirst(
                Cause.PROCESSOR_HEAT_LIMIT,
                slowProcessor(),
                with(SheetIds.PROCESSOR_C, 95),
                with(SheetIds.IDLE_USE, 2));
    }

    @Test
    void the_processors_power_limit_comes_first_when_it_stays_cool() {
        ranksFirst(
                Cause.PROCESSOR_POWER_LIMIT,
                slowProcessor(),
                with(SheetIds.PROCESSOR_C, 52),
                with(SheetIds.IDLE_USE, 2));
    }

    @Test
    void other_programs_come_first_when_the_processor_works_at_rest() {
        double asPlannedC =
                Bench.acceptor(Bench.machine())
                        .sheet()
                        .byId()
                        .get(SheetIds.PROCESSOR_C)
                        .middle()
                        .orElseThrow();

        ranksFirst(
                Cause.BACKGROUND_LOAD,
                slowProcessor(),
                with(SheetIds.PROCESSOR_C, asPlannedC),
                with(SheetIds.IDLE_USE, 30));
    }

    @Test
    void the_cards_heat_limit_comes_first_when_it_stands_at_its_limit() {
        ranksFirst(Cause.CARD_HEAT_LIMIT, slowCard(), with(SheetIds.CARD_C, 84));
    }

    @Test
    void the_cards_power_limit_comes_first_when_it_stays_cool() {
        ranksFirst(Cause.CARD_POWER_LIMIT, slowCard(), with(SheetIds.CARD_C, 55));
    }

    @Test
    void a_screen_on_the_boards_output_comes_first_by_speeds_alone() {
        ranksFirst(Cause.WRONG_OUTPUT, Bench.machine().without(Slot.GRAPHICS));
    }

    @Test
    void a_sound_machine_is_rarely_blamed() {
        int blamed = 0;
        for (int seed = 0; seed < TESTS; seed++) {
            Acceptance test = judged(Bench.machine(), seed);
            boolean chance =
                    test.causes().isEmpty() || test.causes().get(0).cause() == Cause.CHANCE;
            blamed += chance ? 0 : 1;
        }

        assertThat(blamed).isLessThanOrEqualTo(TESTS / 4);
    }

    @Test
    void shares_of_all_causes_make_no_more_than_one() {
        Acceptance test = judged(slowCard(), 1);

        double sum = test.causes().stream().mapToDouble(RankedCause::share).sum();
        assertThat(sum).isBetween(0.9, 1 + 1e-9);
        assertThat(test.causes())
                .isSortedAccordingTo((one, other) -> Double.compare(other.share(), one.share()));
    }

    @Test
    void what_the_first_cause_would_do_is_told_for_every_speed_measured() {
        RankedCause first = judged(slowCard(), 3, with(SheetIds.CARD_C, 84)).causes().get(0);

        assertThat(first.effects()).hasSize(9);
        assertThat(first.effects().get(0).then()).isLessThan(first.effects().get(0).planned());
    }

    /** 75 % on all threads, 92 % on one. */
    private static BuildFixture slowProcessor() {
        return Bench.machine(
                aProcessor().rateAll(560 * 0.75).rateSingle(92), aMemoryKit(), aGraphicsCard());
    }

    private static BuildFixture slowCard() {
        return Bench.machine(aProcessor(), aMemoryKit(), aGraphicsCard().tflops(24 * 0.75));
    }

    private static Reading with(String line, double figure) {
        return new Reading(line, figure);
    }

    private static void ranksFirst(Cause cause, BuildFixture faulty, Reading... readOff) {
        List<Cause> first = new ArrayList<>();
        for (int seed = 0; seed < TESTS; seed++) {
            Acceptance test = judged(faulty, seed, readOff);
            first.add(test.causes().isEmpty() ? Cause.CHANCE : test.causes().get(0).cause());
        }

        assertThat(first.stream().filter(found -> found != cause).count())
                .as("first: %s", first)
                .isLessThanOrEqualTo(MOST_MISSED);
    }

    private static Acceptance judged(BuildFixture faulty, int seed, Reading... readOff) {
        List<Reading> readings = new ArrayList<>(Bench.speeds(faulty, new Random(seed)));
        readings.addAll(List.of(readOff));
        return Bench.acceptor(Bench.machine()).judge(readings, List.of());
    }
}
