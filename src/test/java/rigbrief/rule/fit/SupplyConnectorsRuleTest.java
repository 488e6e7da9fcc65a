package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.GraphicsFixture;
import rigbrief.part.FanConnector;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.Tally;
import rigbrief.rule.Finding;

class SupplyConnectorsRuleTest {
    @Test
    void enough_plugs_are_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void exactly_enough_plugs_are_met() {
        BuildFixture build =
                aBuild().with(
                                aSupply()
                                        .plugs(Plug.EPS8, 1)
                                        .plugs(Plug.PCIE8, 1)
                                        .plugs(Plug.PCIE16, 0)
                                        .plugs(Plug.SATA, 0)
                                        .plugs(Plug.PERIPHERAL4, 0));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void one_card_plug_short_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aGraphicsCard().plugs(Plug.PCIE8, 4));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1).saying("1 x 8-pin or 6-pin card plug");
    }

    @Test
    void an_8_pin_plug_feeds_a_6_pin_socket() {
        // Common practice: two of the eight pins come off.
        BuildFixture build =
                aBuild().with(aGraphicsCard().plugs(Plug.PCIE8, 2).plugs(Plug.PCIE6, 1));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_6_pin_plug_does_not_feed_an_8_pin_socket() {
        BuildFixture build = aBuild().with(aSupply().plugs(Plug.PCIE8, 0).plugs(Plug.PCIE6, 2));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void spare_8_pin_plugs_count_once() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().plugs(Plug.PCIE8, 2).plugs(Plug.PCIE6, 2));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void an_8_pin_plug_does_not_feed_a_12v_2x6_socket() {
        // Common practice: no adapters and no splitters.
        BuildFixture build =
                aBuild().with(aGraphicsCard().plugs(Plug.PCIE8, 0).plugs(Plug.PCIE16, 1))
                        .with(aSupply().plugs(Plug.PCIE16, 0));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1).saying("12V-2x6");
    }

    @Test
    void an_eps8_plug_feeds_an_eps4_socket() {
        // ATX design guide: processor power is one 2x4 or one or two 2x2 plugs; common practice: a
        // 2x4 parts in two.
        BuildFixture build = aBuild().with(aBoard().plugs(Plug.EPS4, 1));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void processor_plugs_short_are_counted() {
        BuildFixture build = aBuild().with(aBoard().plugs(Plug.EPS8, 2).plugs(Plug.EPS4, 1));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1).saying("1 x processor plug");
    }

    @Test
    void no_board_plug_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aSupply().plugs(Plug.ATX24, 0));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1).saying("board plug");
    }

    @Test
    void drives_in_bays_want_a_sata_plug_each() {
        BuildFixture build =
                aBuild().with(aDrive().sata25())
                        .with(Slot.SECOND_DRIVE, aDrive().sata35())
                        .with(aSupply().plugs(Plug.SATA, 1));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1).saying("1 x SATA plug");
    }

    @Test
    void drives_in_bays_with_a_sata_plug_each_are_met() {
        BuildFixture build =
                aBuild().with(aDrive().sata25())
                        .with(Slot.SECOND_DRIVE, aDrive().sata35())
                        .with(aSupply().plugs(Plug.SATA, 2));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void fans_on_4_pins_want_a_plug_each() {
        BuildFixture build = aBuild().with(aFan().connector(FanConnector.PERIPHERAL4).pack(2), 2);

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1).saying("1 x 4-pin plug");
    }

    @Test
    void shortages_add_up() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().plugs(Plug.PCIE8, 5))
                        .with(aSupply().plugs(Plug.ATX24, 0));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(3);
    }

    @Test
    void no_card_wants_no_plug() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aSupply().plugs(Plug.PCIE8, 0));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void empty_supply_cells_are_a_caution() {
        BuildFixture build = aBuild().with(aSupply().unknown("connectors"));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isUnknown("supply-1", "connectors");
    }

    @Test
    void empty_board_cells_are_a_caution() {
        BuildFixture build = aBuild().with(aBoard().unknown("processor_connectors"));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isUnknown("board-1", "processor_connectors");
    }

    @Test
    void empty_card_cells_are_a_caution() {
        BuildFixture build = aBuild().with(aGraphicsCard().unknown("connectors"));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isUnknown("graphics-1", "connectors");
    }

    @Test
    void an_empty_cell_does_not_hide_a_known_shortage() {
        BuildFixture build =
                aBuild().with(aBoard().unknown("processor_connectors"))
                        .with(aGraphicsCard().plugs(Plug.PCIE8, 4));

        Finding finding = check(new SupplyConnectorsRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_supply_feeds_a_card_whose_sockets_it_has_plugs_for() {
        Supply supply = aSupply().make();

        Assertions.assertThat(feeds(supply, aGraphicsCard().plugs(Plug.PCIE8, 3))).isTrue();
        Assertions.assertThat(feeds(supply, aGraphicsCard().plugs(Plug.PCIE8, 4))).isFalse();
        Assertions.assertThat(feeds(supply, aGraphicsCard().plugs(Plug.PCIE16, 1))).isTrue();
        Assertions.assertThat(feeds(supply, aGraphicsCard().plugs(Plug.PCIE16, 2))).isFalse();
        Assertions.assertThat(feeds(supply, aGraphicsCard().unknown("connectors"))).isTrue();
        Supply unstated = aSupply().unknown("connectors").make();
        Assertions.assertThat(feeds(unstated, aGraphicsCard().plugs(Plug.PCIE8, 9))).isTrue();
    }

    private static boolean feeds(Supply supply, GraphicsFixture card) {
        return SupplyConnectorsRule.feeds(supply, card.make());
    }

    @Test
    void only_what_lacks_is_named() {
        BuildFixture build = aBuild().with(aGraphicsCard().plugs(Plug.PCIE8, 4));

        Finding finding = check(new SupplyConnectorsRule(), build);

        org.assertj.core.api.Assertions.assertThat(finding.text())
                .isEqualTo("supply lacks 1 x 8-pin or 6-pin card plug");
    }

    @Test
    void plugs_of_both_sorts_that_a_card_lacks_add_up() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().plugs(Plug.PCIE8, 2).plugs(Plug.PCIE16, 1));

        int lacks = PlugNeeds.cardLacks(build.make().graphics(), Tally.none());

        org.assertj.core.api.Assertions.assertThat(lacks).isEqualTo(3);
    }
}
