package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DisplayFixture.aDisplay;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.ScreenFixture.aScreen;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Resolution;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class DisplayWantedRuleTest {
    @Test
    void no_display_is_met_where_none_is_bought() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen());

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_display_nobody_asked_for_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aDisplay());
        BriefFixture brief = aBrief();

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("buys no display");
    }

    @Test
    void the_client_s_own_display_is_met() {
        BuildFixture build = aBuild().with(aDisplay());
        BriefFixture brief = aBrief().keeps(Slot.DISPLAY, aDisplay());

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_display_exactly_as_asked_is_met() {
        BuildFixture build = aBuild().with(aDisplay());
        BriefFixture brief = aBrief().screen(aScreen().bought());

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void no_display_is_a_breach_of_one_where_one_is_bought() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen().bought().count(2));

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("2 displays are to be bought");
    }

    @Test
    void one_hertz_too_slow_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aDisplay().refreshHz(143));
        BriefFixture brief = aBrief().screen(aScreen().bought());

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("at 143 Hz");
    }

    @Test
    void a_narrower_picture_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aDisplay().resolution(new Resolution(2559, 1440)));
        BriefFixture brief = aBrief().screen(aScreen().bought());

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_lower_picture_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aDisplay().resolution(new Resolution(3440, 1439)));
        BriefFixture brief = aBrief().screen(aScreen().bought());

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void less_depth_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aDisplay());
        BriefFixture brief = aBrief().screen(aScreen().bits(10).bought());

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void one_display_short_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aDisplay());
        BriefFixture brief = aBrief().screen(aScreen().bought().count(2));

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void two_displays_where_two_are_bought_are_met() {
        BuildFixture build = aBuild().with(aDisplay(), 2);
        BriefFixture brief = aBrief().screen(aScreen().bought().count(2));

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void the_named_display_is_met() {
        BuildFixture build = aBuild().with(aDisplay());
        BriefFixture brief = aBrief().screen(aScreen().bought().named("display-1"));

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void another_display_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aDisplay());
        BriefFixture brief = aBrief().screen(aScreen().bought().named("display-2"));

        Finding finding = check(new DisplayWantedRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("asked for 1 x display-2");
    }
}
