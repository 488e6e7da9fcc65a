package rigbrief.rule.fit;

import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class CoolerHeatRuleTest {
    @Test
    void a_good_cooler_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new CoolerHeatRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_cooler_rated_for_the_power_is_met() {
        BuildFixture build = aBuild().with(aCooler().ratedHeatW(88));

        Finding finding = check(new CoolerHeatRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_cooler_rated_for_one_watt_less_is_a_caution() {
        BuildFixture build = aBuild().with(aCooler().ratedHeatW(87));

        Finding finding = check(new CoolerHeatRule(), build);

        assertThat(finding).isCaution().saying("rated for 87 W, processor may draw 88 W");
    }

    @Test
    void no_cooler_at_all_counts_a_hundred_kelvin() {
        BuildFixture build = aBuild().without(Slot.COOLER);

        Finding finding = check(new CoolerHeatRule(), build);

        assertThat(finding).isBreachOf(1_000).saying("no cooler in its box");
    }

    @Test
    void a_boxed_cooler_for_the_power_is_met() {
        BuildFixture build = aBuild().without(Slot.COOLER).with(aProcessor().boxedCoolerW(95));

        Finding finding = check(new CoolerHeatRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_boxed_cooler_for_less_is_a_caution() {
        BuildFixture build =
                aBuild().without(Slot.COOLER).with(aProcessor().boxedCoolerW(87).limitC(105));

        Finding finding = check(new CoolerHeatRule(), build);

        assertThat(finding).isCaution();
    }

    @Test
    void the_excess_is_the_hottest_part_s_in_tenths_of_a_kelvin() {
        Assessment it = assessed(aBuild().with(aCooler().resistanceKw(1.5)));

        Finding finding = new CoolerHeatRule().check(it);

        // By hand: 1.5 K/W at 88 W alone is 132 K over air of at least 22 degrees, so at least 64 K
        // over the limit of 95 less 5; case air and the way from die to lid add at most another 30
        // K.
        assertThat(finding)
                .isBreachOf(Math.round(it.full().excessK() * 10))
                .saying("over the limit");
        assertThat(finding).hasExcessBetween(640, 940);
    }
}
