package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.CoolerFixture.aCooler;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.FanConnector;
import rigbrief.rule.Finding;

class FanHeadersRuleTest {
    @Test
    void a_header_for_every_fan_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void as_many_fans_as_headers_are_met() {
        BuildFixture build = aBuild().with(aFan());

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void two_added_fans_within_the_current_share_a_header() {
        BuildFixture build = aBuild().with(aFan().currentMa(500), 2);

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isNote().saying("1 header feeds two fans");
    }

    @Test
    void two_added_fans_one_milliampere_over_are_a_breach_of_one() {
        BuildFixture build = aBuild().with(aFan().currentMa(501), 2);

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isBreachOf(1).saying("two fans of 501 mA each and gives 1000 mA");
    }

    @Test
    void sharing_with_the_case_s_own_fans_is_a_caution() {
        BuildFixture build = aBuild().with(aBoard().fanHeaders(2));

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding)
                .isCaution()
                .saying("1 header feeds two fans; the current of the case's own fans isn't stated");
    }

    @Test
    void two_fans_on_every_header_are_not_yet_a_breach() {
        BuildFixture build = aBuild().with(aBoard().fanHeaders(3)).with(aFan(), 3);

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isCaution();
    }

    @Test
    void one_fan_more_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aBoard().fanHeaders(3)).with(aFan().pack(4));

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isBreachOf(1).saying("7 case fans on 3 headers");
    }

    @Test
    void fans_on_the_supply_do_not_count() {
        BuildFixture build = aBuild().with(aFan().connector(FanConnector.PERIPHERAL4), 3);

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void fans_given_up_for_a_radiator_do_not_count() {
        // By hand: a 360 mm radiator takes the front; the rear fan stays.
        BuildFixture build = aBuild().with(aBoard().fanHeaders(1)).with(aCooler().liquid(360));

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_number_of_headers_is_a_caution() {
        BuildFixture build = aBuild().with(aBoard().unknown("fan_headers"));

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isUnknown("board-1", "fan_headers");
    }

    @Test
    void an_empty_header_current_is_a_caution_where_fans_share() {
        BuildFixture build = aBuild().with(aBoard().unknown("fan_header_ma")).with(aFan(), 2);

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isUnknown("board-1", "fan_header_ma");
    }

    @Test
    void an_empty_fan_current_is_a_caution_where_fans_share() {
        BuildFixture build = aBuild().with(aFan().unknown("current_ma"), 2);

        Finding finding = check(new FanHeadersRule(), build);

        assertThat(finding).isUnknown("fan-1", "current_ma");
    }
}
