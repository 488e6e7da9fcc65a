package rigbrief.rule.need;

import static rigbrief.fixture.BraceFixture.aBrace;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class IdleBraceRuleTest {
    @Test
    void a_brace_without_a_card_is_a_caution() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS).with(aBrace());
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleBraceRule(), build, brief);

        assertThat(finding).isCaution();
    }

    @Test
    void a_brace_for_a_card_that_carries_itself_is_a_caution() {
        BuildFixture build = aBuild().with(aBrace());
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleBraceRule(), build, brief);

        assertThat(finding).isCaution();
    }

    @Test
    void a_brace_beside_the_case_s_bracket_is_a_caution() {
        BuildFixture build =
                aBuild().with(aBrace())
                        .with(aGraphicsCard().massG(1_600))
                        .with(aCase().cardBracket(true));
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleBraceRule(), build, brief);

        assertThat(finding).isCaution();
    }

    @Test
    void a_brace_for_a_heavy_card_is_met() {
        BuildFixture build = aBuild().with(aBrace()).with(aGraphicsCard().massG(1_501));
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleBraceRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_brace_for_a_long_card_is_met() {
        BuildFixture build = aBuild().with(aBrace()).with(aGraphicsCard().lengthMm(321));
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleBraceRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_brace_for_a_card_of_unknown_mass_is_met() {
        BuildFixture build = aBuild().with(aBrace()).with(aGraphicsCard().unknown("mass_g"));
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleBraceRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void a_brace_for_a_card_of_unknown_length_is_met() {
        BuildFixture build = aBuild().with(aBrace()).with(aGraphicsCard().unknown("length_mm"));
        BriefFixture brief = aBrief();

        Finding finding = check(new IdleBraceRule(), build, brief);

        assertThat(finding).isMet();
    }
}
