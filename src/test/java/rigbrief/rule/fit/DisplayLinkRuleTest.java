package rigbrief.rule.fit;

import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DisplayFixture.aDisplay;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.ScreenFixture.aScreen;

import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Port;
import rigbrief.part.Resolution;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class DisplayLinkRuleTest {
    @Test
    void a_link_with_room_is_met() {
        // 2560x1440@144 at 24 bits with reduced blanking 1: 14.502 Gbit/s (604.25 MHz, independent
        // timing program).
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen());

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isMet().hasMargin(25_920, 14_502, Unit.MEGABIT);
    }

    @Test
    void the_closest_call_fits() {
        // LINK-05: 3840x2160@120, 24 bits, reduced blanking 2: 25.819 of 25.92 Gbit/s.
        BuildFixture build = aBuild().with(aGraphicsCard().outputs(new Port("dp1.3", 1)));
        BriefFixture brief = aBrief().screen(aScreen().mode(3840, 2160, 120));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isMet().hasMargin(25_920, 25_819, Unit.MEGABIT);
    }

    @Test
    void a_mode_beyond_the_link_is_a_breach_in_megabits() {
        // By hand: 1306.206 MHz x 24 bits = 31,348.944 Mbit/s (independent timing program) against
        // 25,920.
        BuildFixture build = aBuild().with(aGraphicsCard().outputs(new Port("dp1.3", 1)));
        BriefFixture brief = aBrief().screen(aScreen().mode(3840, 2160, 144));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding)
                .isBreachOf(5_429)
                .hasMargin(25_920, 31_349, Unit.MEGABIT)
                .saying(
                        "3840x2160 at 144 Hz and 8 bits needs 31348 Mbit/s (CVT-RBv2), dp1.3 carries 25920 Mbit/s");
    }

    @Test
    void an_old_card_with_dp1_2_and_hdmi1_4_does_not_carry_3840x2160_at_144() {
        // By hand: 31,348.944 - 17,280 Mbit/s (four lanes of 5.4 Gbit/s at 8b/10b).
        BuildFixture build =
                aBuild().with(
                                aGraphicsCard()
                                        .outputs(new Port("dp1.2", 2), new Port("hdmi1.4", 1)));
        BriefFixture brief =
                aBrief().screen(aScreen().mode(3840, 2160, 144).inputs("dp1.4", "hdmi2.1"));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isBreachOf(14_069);
    }

    @Test
    void compression_is_a_note() {
        // LINK-08: 3840x2160@240 compressed to 8 bits per pixel fits four lanes of the third
        // DisplayPort rate.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen().mode(3840, 2160, 240));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isNote().saying("with compression");
    }

    @Test
    void plugs_of_different_families_carry_nothing() {
        // By hand: 586.586 MHz x 24 bits = 14,078.064 Mbit/s, all of it lacking.
        BuildFixture build = aBuild().with(aGraphicsCard().outputs(new Port("hdmi2.1", 1)));
        BriefFixture brief = aBrief().screen(aScreen());

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isBreachOf(14_079).saying("no common standard");
    }

    @Test
    void the_better_of_two_inputs_counts() {
        // 2560x1440@144 at 24 bits fits 14.4 Gbit/s with reduced blanking 2 (14.078 Gbit/s).
        BuildFixture build = aBuild().with(aGraphicsCard().outputs(new Port("hdmi2.1", 1)));
        BriefFixture brief = aBrief().screen(aScreen().inputs("dp1.4", "hdmi2.0"));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void within_one_percent_on_a_packing_link_is_a_caution() {
        // By hand: (1e6 / 128 - 460) / 2160 = 3.404 us a line, 2160 + 136 lines of 4000 pixels,
        // 1175.5 MHz x 30 bits
        // = 35,265 Mbit/s, 0.8 % under 4 x 10 Gbit/s x 16/18; such links pack their blanking (from
        // memory).
        BuildFixture build = aBuild().with(aGraphicsCard().outputs(new Port("hdmi2.1-frl40", 1)));
        BriefFixture brief =
                aBrief().screen(aScreen().mode(3840, 2160, 128).bits(10).inputs("hdmi2.1"));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding)
                .isCaution()
                .hasMargin(35_555, 35_265, Unit.MEGABIT)
                .saying("look for a declared mode");
    }

    @Test
    void every_screen_needs_an_output_that_carries_it() {
        // By hand: 1075.804 MHz x 24 bits = 25,819.296 Mbit/s less 17,280 on the second output.
        BuildFixture build =
                aBuild().with(aGraphicsCard().outputs(new Port("dp1.2", 1), new Port("dp1.4", 1)));
        BriefFixture brief = aBrief().screen(aScreen().mode(3840, 2160, 120).count(2));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isBreachOf(8_540);
    }

    @Test
    void one_of_two_screens_takes_the_better_output() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().outputs(new Port("dp1.2", 1), new Port("dp1.4", 1)));
        BriefFixture brief = aBrief().screen(aScreen().mode(3840, 2160, 120));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void ports_of_one_standard_serve_several_screens() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen().count(3));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void without_a_card_the_board_s_outputs_count() {
        BuildFixture build =
                aBuild().without(Slot.GRAPHICS).with(aBoard().outputs(new Port("dp1.2", 1)));
        BriefFixture brief = aBrief().screen(aScreen().mode(3840, 2160, 120));

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isBreachOf(8_540);
    }

    @Test
    void no_output_at_all_is_told_elsewhere() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aBoard().outputs());
        BriefFixture brief = aBrief().screen(aScreen());

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void no_screen_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new DisplayLinkRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_display_still_to_be_bought_is_told_elsewhere() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen().bought());

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_screen_without_stated_inputs_is_a_caution() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().screen(aScreen().inputs());

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isCaution().saying("which inputs");
    }

    @Test
    void a_display_on_the_order_is_judged_at_its_own_size() {
        // Its 3840x2160 at the 120 Hz that the brief asks for.
        BuildFixture build =
                aBuild().with(aGraphicsCard().outputs(new Port("dp1.2", 1)))
                        .with(aDisplay().resolution(new Resolution(3840, 2160)).refreshHz(240));
        BriefFixture brief = aBrief().screen(aScreen().mode(2560, 1440, 120).bought());

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isBreachOf(8_540);
    }

    @Test
    void a_display_on_the_order_is_judged_at_its_own_rate_where_the_brief_says_nothing() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().outputs(new Port("dp1.3", 1)))
                        .with(aDisplay().resolution(new Resolution(3840, 2160)).refreshHz(144));

        Finding finding = check(new DisplayLinkRule(), build);

        assertThat(finding).isBreachOf(5_429);
    }

    @Test
    void a_display_is_never_asked_for_more_than_it_shows() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().outputs(new Port("dp1.3", 1)))
                        .with(aDisplay().resolution(new Resolution(3840, 2160)).refreshHz(120));
        BriefFixture brief = aBrief().screen(aScreen().mode(3840, 2160, 144).bits(10).bought());

        Finding finding = check(new DisplayLinkRule(), build, brief);

        assertThat(finding).isMet();
    }

    private static Optional<ScreenLink> link(BuildFixture build, BriefFixture brief) {
        return new DisplayLinkRule().link(assessed(build, brief));
    }

    @Test
    void the_link_of_a_judged_screen_is_told() {
        BriefFixture brief = aBrief().screen(aScreen().mode(3840, 2160, 120).bits(8));

        ScreenLink link = link(aBuild(), brief).orElseThrow();

        org.assertj.core.api.Assertions.assertThat(link.refreshHz()).isEqualTo(120);
        org.assertj.core.api.Assertions.assertThat(link.bitsPerColour()).isEqualTo(8);
        org.assertj.core.api.Assertions.assertThat(link.result().fits()).isTrue();
    }

    @Test
    void without_outputs_a_screen_or_its_inputs_there_is_no_link() {
        BriefFixture screen = aBrief().screen(aScreen().mode(3840, 2160, 120));
        BuildFixture blind = aBuild().with(aGraphicsCard().outputs());
        BriefFixture noInputs = aBrief().screen(aScreen().mode(3840, 2160, 120).inputs());

        org.assertj.core.api.Assertions.assertThat(link(blind, screen)).isEmpty();
        org.assertj.core.api.Assertions.assertThat(link(aBuild(), aBrief())).isEmpty();
        org.assertj.core.api.Assertions.assertThat(link(aBuild(), noInputs)).isEmpty();
    }

    @Test
    void of_outputs_that_carry_it_alike_the_one_listed_first_is_told() {
        // By hand: four lanes of 8.1 Gbit/s at 8b/10b carry 25,920 Mbit/s, four of 12 Gbit/s at
        // 16b/18b 42,666.
        Port displayPort = new Port("dp1.4", 1);
        Port hdmi = new Port("hdmi2.1", 1);
        BriefFixture brief = aBrief().screen(aScreen().inputs("dp1.4", "hdmi2.1"));

        Finding one =
                check(
                        new DisplayLinkRule(),
                        aBuild().with(aGraphicsCard().outputs(displayPort, hdmi)),
                        brief);
        Finding other =
                check(
                        new DisplayLinkRule(),
                        aBuild().with(aGraphicsCard().outputs(hdmi, displayPort)),
                        brief);

        Assertions.assertThat(one.margin().orElseThrow().have()).isEqualTo(25_920);
        Assertions.assertThat(other.margin().orElseThrow().have()).isEqualTo(42_666);
    }
}
