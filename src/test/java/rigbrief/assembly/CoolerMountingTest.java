package rigbrief.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Place;
import rigbrief.part.RadiatorPosition;
import rigbrief.part.Slot;

/** The order of work around the cooler: common practice throughout. */
class CoolerMountingTest {
    private static BuildFixture roomy() {
        return aBuild().with(aCase().widthMm(230).heightMm(470).depthMm(450));
    }

    @Test
    void a_tall_cooler_in_a_roomy_case_follows_the_board_and_its_power_lead() {
        var plan = Benches.plan(roomy().with(aCooler().heightMm(155)));

        assertThat(plan.mounting()).isEqualTo(CoolerMounting.AFTER_THE_BOARD);
        assertThat(Benches.steps(plan)).containsSubsequence("brackets", "board", "cooler", "leads");
    }

    @Test
    void a_low_cooler_goes_on_before_the_board() {
        var plan = Benches.plan(roomy().with(aCooler().heightMm(100)));

        assertThat(plan.mounting()).isEqualTo(CoolerMounting.BEFORE_THE_BOARD);
        assertThat(Benches.steps(plan))
                .containsSubsequence("memory", "cooler", "board")
                .doesNotContain("brackets");
    }

    @Test
    void a_millimetre_more_is_tall() {
        assertThat(Benches.plan(roomy().with(aCooler().heightMm(101))).mounting())
                .isEqualTo(CoolerMounting.AFTER_THE_BOARD);
    }

    @Test
    void a_cooler_of_unknown_height_is_taken_for_tall() {
        assertThat(Benches.plan(roomy().with(aCooler().unknown("height_mm"))).mounting())
                .isEqualTo(CoolerMounting.AFTER_THE_BOARD);
    }

    @Test
    void in_a_small_case_even_a_tall_cooler_goes_on_before_the_board() {
        var small = aBuild().with(aCase().widthMm(180).heightMm(300).depthMm(350));

        assertThat(Benches.plan(small.with(aCooler().heightMm(155))).mounting())
                .isEqualTo(CoolerMounting.BEFORE_THE_BOARD);
    }

    @Test
    void a_boxed_cooler_is_fitted_on_the_bench_without_paste_of_ours() {
        var build = roomy().without(Slot.COOLER).with(aProcessor().boxedCoolerW(95));

        var plan = Benches.plan(build);

        assertThat(Benches.steps(plan)).containsSubsequence("processor", "cooler", "board");
        assertThat(plan.steps().toString()).contains("paste from the factory");
    }

    @ParameterizedTest
    @EnumSource(
            value = Place.class,
            names = {"TOP", "REAR"})
    void a_radiator_above_or_behind_follows_the_board(Place place) {
        assertThat(Benches.steps(liquid(place))).containsSubsequence("board", "radiator", "cooler");
    }

    @ParameterizedTest
    @EnumSource(
            value = Place.class,
            names = {"FRONT", "SIDE", "BOTTOM"})
    void any_other_radiator_goes_before_the_board(Place place) {
        assertThat(Benches.steps(liquid(place))).containsSubsequence("radiator", "board", "cooler");
    }

    private static AssemblyPlan liquid(Place place) {
        return Benches.plan(
                roomy().with(
                                aCase().graphicsLengthMm(420)
                                        .radiators(new RadiatorPosition(place, List.of(240), 60)))
                        .with(aCooler().liquid(240)));
    }

    @Test
    void the_fan_over_tall_memory_is_told_where_the_cooler_is_fitted() {
        var build =
                roomy().with(aCase().coolerHeightMm(190))
                        .with(aCooler().heightMm(155).memoryClearanceMm(35).fanRaiseMm(20))
                        .with(aMemoryKit().heightMm(44));

        var plan = Benches.plan(build);

        Step cooler =
                plan.steps().stream()
                        .filter(step -> step.id().equals("cooler"))
                        .findFirst()
                        .orElseThrow();
        assertThat(cooler.actions()).anyMatch(action -> action.contains("raised by 9 mm"));
    }
}
