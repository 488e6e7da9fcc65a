package rigbrief.rule.need;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.WirelessFixture.aWirelessCard;

import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief.Strength;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.WirelessStandard;
import rigbrief.rule.Finding;

class WirelessRuleTest {
    @Test
    void nothing_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void no_wireless_counts_the_generations_that_lack() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isBreachOf(2).saying("wireless none, at least Wi-Fi 6 wanted");
    }

    @Test
    void any_generation_will_do_where_none_is_named() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.NONE);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("at least Wi-Fi 5");
    }

    @Test
    void a_board_of_exactly_that_generation_is_met() {
        BuildFixture build = aBuild().with(aBoard().wireless(WirelessStandard.WIFI6));
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void one_generation_too_old_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aBoard().wireless(WirelessStandard.WIFI5));
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_card_of_that_generation_is_met() {
        BuildFixture build = aBuild().with(aWirelessCard());
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void the_better_of_card_and_board_counts() {
        BuildFixture build =
                aBuild().with(aWirelessCard().standard(WirelessStandard.WIFI5))
                        .with(aBoard().wireless(WirelessStandard.WIFI7));
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_wireless_need_never_drops_the_wired_port() {
        // Common practice.
        BuildFixture build = aBuild().with(aBoard().wireless(WirelessStandard.WIFI7).lanGbps(0));
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("the board has no wired port");
    }

    @Test
    void no_wired_port_is_met_where_no_wireless_is_asked() {
        BuildFixture build = aBuild().with(aBoard().lanGbps(0));
        BriefFixture brief = aBrief();

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void an_unmet_wish_is_a_caution() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().wireless(Strength.WISH, WirelessStandard.WIFI6);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isCaution().saying("wished for");
    }

    @Test
    void a_met_wish_is_met() {
        BuildFixture build = aBuild().with(aWirelessCard());
        BriefFixture brief = aBrief().wireless(Strength.WISH, WirelessStandard.WIFI6);

        Finding finding = check(new WirelessRule(), build, brief);

        assertThat(finding).isMet();
    }
}
