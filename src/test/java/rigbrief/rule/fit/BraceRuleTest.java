package rigbrief.rule.fit;

import static rigbrief.fixture.BraceFixture.aBrace;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class BraceRuleTest {
    @Test
    void a_light_short_card_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_card_at_both_limits_is_met() {
        BuildFixture build = aBuild().with(aGraphicsCard().massG(1_500).lengthMm(320));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_card_one_gram_heavier_is_a_caution() {
        // Common practice: beyond 1.5 kg or 320 mm.
        BuildFixture build = aBuild().with(aGraphicsCard().massG(1_501));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding)
                .isCaution()
                .saying("card of 1501 g and 267 mm carries itself badly; add a brace");
    }

    @Test
    void a_card_one_millimetre_longer_is_a_caution() {
        BuildFixture build = aBuild().with(aGraphicsCard().lengthMm(321));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isCaution();
    }

    @Test
    void a_brace_that_carries_it_is_met() {
        BuildFixture build = aBuild().with(aGraphicsCard().massG(2_500)).with(aBrace());

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_brace_for_one_gram_less_is_a_caution() {
        BuildFixture build = aBuild().with(aGraphicsCard().massG(2_501)).with(aBrace());

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isCaution().saying("carries 2500 g, the card has 2501 g");
    }

    @Test
    void the_case_s_own_bracket_is_met() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().massG(2_501)).with(aCase().cardBracket(true));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void no_card_is_met() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS);

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_mass_is_a_caution() {
        BuildFixture build = aBuild().with(aGraphicsCard().unknown("mass_g"));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isUnknown("graphics-1", "mass_g");
    }

    @Test
    void an_empty_length_is_a_caution() {
        BuildFixture build = aBuild().with(aGraphicsCard().unknown("length_mm"));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isUnknown("graphics-1", "length_mm");
    }

    @Test
    void a_long_card_of_unknown_mass_wants_a_brace() {
        BuildFixture build = aBuild().with(aGraphicsCard().unknown("mass_g").lengthMm(321));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isCaution().saying("unknown mass");
    }

    @Test
    void a_brace_of_unknown_strength_is_a_caution() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().massG(1_600)).with(aBrace().unknown("max_mass_g"));

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isUnknown("brace-1", "max_mass_g");
    }

    @Test
    void a_braced_card_of_unknown_mass_is_a_caution() {
        BuildFixture build =
                aBuild().with(aGraphicsCard().unknown("mass_g").lengthMm(330)).with(aBrace());

        Finding finding = check(new BraceRule(), build);

        assertThat(finding).isUnknown("graphics-1", "mass_g");
    }
}
