package rigbrief.rule.fit;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class SupplyLoadRuleTest {
    @Test
    void the_planned_size_is_met() {
        // By hand, with the typical draws that common practice gives: 88 W processor + 200 W card +
        // 30 W board
        // + 2 x 4 W memory + 7 W drive + 3 x 2 W fans + 5 W attached = 344 W; / 0.8 = 430 W; 450,
        // one up 500.
        BuildFixture build = aBuild().with(aSupply().watts(500));

        Finding finding = check(new SupplyLoadRule(), build);

        assertThat(finding).isMet().hasMargin(500, 500, Unit.WATT);
    }

    @Test
    void one_watt_less_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aSupply().watts(499));

        Finding finding = check(new SupplyLoadRule(), build);

        assertThat(finding)
                .isBreachOf(1)
                .saying("500 W planned for a sustained load of 344 W at 80 %");
    }

    @Test
    void a_card_of_320_watts_with_a_six_core_processor_leads_to_750_watts() {
        // Common practice: 464 W / 0.8 = 580 W; 650, one up 750.
        BuildFixture build = aBuild().with(aGraphicsCard().boardPowerW(320));

        Finding finding = check(new SupplyLoadRule(), build);

        assertThat(finding).isMet().hasMargin(750, 750, Unit.WATT);
    }

    @Test
    void for_that_card_650_watts_are_a_hundred_short() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().boardPowerW(320)).with(aSupply().watts(650));

        Finding finding = check(new SupplyLoadRule(), build);

        assertThat(finding).isBreachOf(100);
    }

    @Test
    void no_size_up_plans_the_least_sufficient_size() {
        BuildFixture build = aBuild().with(aSupply().watts(450));
        BriefFixture brief = aBrief().headroom(80, 0, 5);

        Finding finding = check(new SupplyLoadRule(), build, brief);

        assertThat(finding).isMet().hasMargin(450, 450, Unit.WATT);
    }

    @Test
    void two_sizes_up_plan_further() {
        BuildFixture build = aBuild().with(aSupply().watts(549));
        BriefFixture brief = aBrief().headroom(80, 2, 5);

        Finding finding = check(new SupplyLoadRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_load_exactly_at_a_size_stays_there() {
        // By hand: 360 W / 0.8 = 450 W.
        BuildFixture build =
                aBuild().with(aProcessor().sustainedPowerW(104)).with(aSupply().watts(450));
        BriefFixture brief = aBrief().headroom(80, 0, 5);

        Finding finding = check(new SupplyLoadRule(), build, brief);

        assertThat(finding).isMet().hasMargin(450, 450, Unit.WATT);
    }

    @Test
    void one_watt_more_needs_the_next_size() {
        BuildFixture build =
                aBuild().with(aProcessor().sustainedPowerW(105)).with(aSupply().watts(450));
        BriefFixture brief = aBrief().headroom(80, 0, 5);

        Finding finding = check(new SupplyLoadRule(), build, brief);

        assertThat(finding).isBreachOf(50);
    }

    @Test
    void a_kept_supply_has_to_keep_the_share_alone() {
        BuildFixture build = aBuild().with(aSupply().watts(430));
        BriefFixture brief = aBrief().keeps(Slot.SUPPLY, aSupply());

        Finding finding = check(new SupplyLoadRule(), build, brief);

        assertThat(finding).isMet().hasMargin(430, 430, Unit.WATT);
    }

    @Test
    void a_kept_supply_one_watt_under_the_share_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aSupply().watts(429));
        BriefFixture brief = aBrief().keeps(Slot.SUPPLY, aSupply());

        Finding finding = check(new SupplyLoadRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void the_plan_for_a_load_alone_is_the_same() {
        // By hand: 464 W / 0.8 = 580 W; 650, one up 750.
        long plannedW = SupplyLoadRule.plannedW(464, aBrief().make());

        Assertions.assertThat(plannedW).isEqualTo(750);
    }
}
