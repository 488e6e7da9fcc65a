package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.SupplyForm;
import rigbrief.rule.Finding;

class SupplyFormRuleTest {
    @Test
    void a_listed_body_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new SupplyFormRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_body_not_listed_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aSupply().form(SupplyForm.SFX));

        Finding finding = check(new SupplyFormRule(), build);

        assertThat(finding).isBreachOf(1).saying("takes no SFX supply");
    }

    @Test
    void an_empty_cell_is_a_caution() {
        BuildFixture build = aBuild().with(aCase().unknown("supplies"));

        Finding finding = check(new SupplyFormRule(), build);

        assertThat(finding).isUnknown("case-1", "supplies");
    }
}
