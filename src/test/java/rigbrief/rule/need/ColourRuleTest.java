package rigbrief.rule.need;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.CablesFixture.someCables;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FanFixture.aFan;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief.Strength;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Colour;
import rigbrief.part.SidePanel;
import rigbrief.rule.Finding;

class ColourRuleTest {
    @Test
    void no_colour_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief();

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_wish_is_no_must() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().colour(Colour.WHITE, Strength.WISH);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void the_colour_throughout_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().colour(Colour.BLACK, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void one_part_in_another_colour_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aMemoryKit().colour(Colour.WHITE));
        BriefFixture brief = aBrief().colour(Colour.BLACK, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("not black: Brindle model memory-1");
    }

    @Test
    void what_shows_is_counted() {
        // Case, board, memory, card and cooler; processor, drive and supply don't show.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().colour(Colour.WHITE, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isBreachOf(5).saying("Hollin model case-1");
    }

    @Test
    void behind_a_solid_panel_only_the_case_shows() {
        BuildFixture build = aBuild().with(aCase().side(SidePanel.SOLID));
        BriefFixture brief = aBrief().colour(Colour.WHITE, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_white_solid_case_hides_the_rest() {
        BuildFixture build = aBuild().with(aCase().side(SidePanel.SOLID).colour(Colour.WHITE));
        BriefFixture brief = aBrief().colour(Colour.WHITE, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_part_without_a_stated_colour_passes() {
        BuildFixture build = aBuild().with(aMemoryKit().noColour());
        BriefFixture brief = aBrief().colour(Colour.BLACK, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void fans_and_cables_show() {
        BuildFixture build =
                aBuild().with(aFan().colour(Colour.WHITE)).with(someCables().colour(Colour.WHITE));
        BriefFixture brief = aBrief().colour(Colour.BLACK, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isBreachOf(2);
    }

    @Test
    void a_case_alone_can_break_it() {
        BuildFixture build = anEmptyBuild().with(aCase());
        BriefFixture brief = aBrief().colour(Colour.WHITE, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void an_inner_part_alone_does_not() {
        BuildFixture build = anEmptyBuild().with(aBoard());
        BriefFixture brief = aBrief().colour(Colour.WHITE, Strength.MUST);

        Finding finding = check(new ColourRule(), build, brief);

        assertThat(finding).isMet();
    }
}
