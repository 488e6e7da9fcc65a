package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Guide;
import rigbrief.part.Plug;
import rigbrief.part.Supply;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class SupplyPeakRuleTest {
    @Test
    void a_peak_within_the_allowance_is_met() {
        // By hand: 344 W sustained + 0.6 x 200 W; 180 % of 750 W (ATX 3 guide 336521, table 3-3, 1
        // ms).
        BuildFixture build = aBuild();

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isMet().hasMargin(1_350, 464, Unit.WATT);
    }

    @Test
    void an_older_guide_allows_the_rating() {
        BuildFixture build = aBuild().with(aSupply().guide(Guide.ATX2).watts(464));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isMet().hasMargin(464, 464, Unit.WATT);
    }

    @Test
    void an_older_guide_one_watt_short_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aSupply().guide(Guide.ATX2).watts(463));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isBreachOf(1).saying("guide ATX 2");
    }

    @Test
    void a_small_supply_stands_145_percent() {
        // Table 3-3, up to 450 W: 145 % for 1 ms; 320 W x 1.45 = 464 W.
        BuildFixture build = aBuild().with(aSupply().watts(320));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isMet().hasMargin(464, 464, Unit.WATT);
    }

    @Test
    void a_supply_without_the_16_contact_plug_stands_145_percent() {
        // Table 3-3, without the 16-contact connector: 145 %; 700 W x 1.45 = 1015 W.
        BuildFixture build = aBuild().with(aSupply().plugs(Plug.PCIE16, 0).watts(700));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isMet().hasMargin(1_015, 464, Unit.WATT);
    }

    @Test
    void a_1000_watt_supply_stands_1800_watts() {
        // Table 3-4: 1800 W for 1 ms from 1000 W; by hand 144 W + 600 W x 2.76 = 1800 W.
        BuildFixture build =
                aBuild().with(aSupply().watts(1_000))
                        .with(aGraphicsCard().boardPowerW(600).peakFactor(2.76));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isMet().hasMargin(1_800, 1_800, Unit.WATT);
    }

    @Test
    void one_watt_over_1800_is_a_breach_of_one() {
        BuildFixture build =
                aBuild().with(aSupply().watts(1_000))
                        .with(aProcessor().sustainedPowerW(89))
                        .with(aGraphicsCard().boardPowerW(600).peakFactor(2.76));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isBreachOf(1).saying("peaks of 1801 W for 1 ms");
    }

    @Test
    void the_revision_before_has_the_same_table() {
        BuildFixture build = aBuild().with(aSupply().guide(Guide.ATX3_0));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isMet().hasMargin(1_350, 464, Unit.WATT);
    }

    @Test
    void empty_connectors_are_a_caution_where_they_decide() {
        // By hand: 144 + 900 = 1044 W, between 145 % (870 W) and 180 % (1080 W) of 600 W.
        BuildFixture build =
                aBuild().with(aGraphicsCard().boardPowerW(450).peakFactor(2))
                        .with(aSupply().watts(600).unknown("connectors"));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isUnknown("supply-1", "connectors");
    }

    @Test
    void empty_connectors_are_met_where_they_do_not_decide() {
        BuildFixture build = aBuild().with(aSupply().unknown("connectors"));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void empty_connectors_do_not_hide_a_peak_beyond_either_column() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().boardPowerW(450).peakFactor(2))
                        .with(aSupply().watts(500).unknown("connectors"));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isBreach();
    }

    @Test
    void a_supply_alone_allows_what_the_rule_allows() {
        // Table 3-3: 180 % of 750 W with the 16-contact plug, 145 % without it, unstated plugs at
        // their best.
        Assertions.assertThat(SupplyPeakRule.allows(aSupply().make(), 1_350)).isTrue();
        Assertions.assertThat(SupplyPeakRule.allows(aSupply().make(), 1_351)).isFalse();
        Supply without = aSupply().plugs(Plug.PCIE16, 0).make();
        Assertions.assertThat(SupplyPeakRule.allows(without, 1_087)).isTrue();
        Assertions.assertThat(SupplyPeakRule.allows(without, 1_088)).isFalse();
        Supply unstated = aSupply().unknown("connectors").make();
        Assertions.assertThat(SupplyPeakRule.allows(unstated, 1_350)).isTrue();
    }

    @Test
    void unstated_plugs_do_not_matter_where_the_lesser_peak_is_enough() {
        // Table 3-3: 320 W x 1.45 = 464 W, just what is drawn.
        BuildFixture build = aBuild().with(aSupply().unknown("connectors").watts(320));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isMet().hasMargin(464, 464, Unit.WATT);
    }

    @Test
    void unstated_plugs_are_a_caution_where_the_greater_peak_is_just_enough() {
        // Table 3-3: 1000 W x 1.8 = 1800 W with the 16-contact plug, 1450 W without.
        BuildFixture build =
                aBuild().with(aSupply().unknown("connectors").watts(1_000))
                        .with(aGraphicsCard().boardPowerW(600).peakFactor(2.76));

        Finding finding = check(new SupplyPeakRule(), build);

        assertThat(finding).isUnknown("supply-1", "connectors");
    }

    @Test
    void the_allowance_is_told_as_a_multiple_of_the_rating() {
        // ATX 3 guide 336521, table 3-3, 1 ms; an older guide has no such table.
        Supply young = aSupply().watts(750).make();
        Supply old = aSupply().guide(Guide.ATX2).watts(750).make();

        Assertions.assertThat(SupplyPeakRule.factor(young, true)).isEqualTo(1.8);
        Assertions.assertThat(SupplyPeakRule.factor(young, false)).isEqualTo(1.45);
        Assertions.assertThat(SupplyPeakRule.factor(old, true)).isEqualTo(1);
    }
}
