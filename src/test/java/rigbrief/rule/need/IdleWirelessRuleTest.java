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

class IdleWirelessRuleTest {
    @Test
    void a_wireless_card_nobody_asks_for_is_a_caution() {
        BuildFixture build = aBuild().with(aWirelessCard());
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleWirelessRule(), build, brief);

        assertThat(finding).isCaution();
    }

    @Test
    void a_wireless_card_that_is_asked_for_is_met() {
        BuildFixture build = aBuild().with(aWirelessCard());
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new IdleWirelessRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_wireless_card_that_is_wished_for_is_met() {
        BuildFixture build = aBuild().with(aWirelessCard());
        BriefFixture brief = aBrief().wireless(Strength.WISH, WirelessStandard.WIFI6);

        Finding finding = check(new IdleWirelessRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_wireless_card_beside_a_board_that_will_do_is_a_caution() {
        BuildFixture build =
                aBuild().with(aWirelessCard().standard(WirelessStandard.WIFI7))
                        .with(aBoard().wireless(WirelessStandard.WIFI6));
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new IdleWirelessRule(), build, brief);

        assertThat(finding).isCaution();
    }

    @Test
    void a_wireless_card_beside_a_board_of_an_older_generation_is_met() {
        BuildFixture build =
                aBuild().with(aWirelessCard()).with(aBoard().wireless(WirelessStandard.WIFI5));
        BriefFixture brief = aBrief().wireless(Strength.MUST, WirelessStandard.WIFI6);

        Finding finding = check(new IdleWirelessRule(), build, brief);

        assertThat(finding).isMet();
    }
}
