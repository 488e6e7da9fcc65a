package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DisplayFixture.aDisplay;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.ScreenFixture.aScreen;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Port;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class PictureRuleTest {
    @Test
    void a_card_gives_a_picture() {
        BuildFixture build = aBuild();

        Finding finding = check(new PictureRule(), build);

        assertThat(finding).isMet().hasMargin(4, 1, Unit.PIECE);
    }

    @Test
    void integrated_graphics_give_a_picture_on_the_board() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS);

        Finding finding = check(new PictureRule(), build);

        assertThat(finding).isMet().hasMargin(2, 1, Unit.PIECE);
    }

    @Test
    void neither_is_a_breach_of_one() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aProcessor().integratedTflops(0));

        Finding finding = check(new PictureRule(), build);

        assertThat(finding).isBreachOf(1).saying("no graphics card");
    }

    @Test
    void a_board_without_outputs_is_a_breach_of_one() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aBoard().outputs());

        Finding finding = check(new PictureRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void as_many_screens_as_outputs_are_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen().count(4));

        Finding finding = check(new PictureRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void one_screen_too_many_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen().count(5));

        Finding finding = check(new PictureRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("5 screens, 4 outputs");
    }

    @Test
    void screens_on_the_order_are_counted() {
        BuildFixture build =
                aBuild().without(Slot.GRAPHICS)
                        .with(aBoard().outputs(new Port("dp1.4", 1)))
                        .with(aDisplay(), 2);

        Finding finding = check(new PictureRule(), build);

        assertThat(finding).isBreachOf(1);
    }
}
