package rigbrief.rule.fit;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.SupplyFixture.aSupply;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Efficiency;
import rigbrief.rule.Finding;

class SupplyQualityRuleTest {
    @Test
    void a_labelled_supply_with_five_years_and_reserve_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new SupplyQualityRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void no_label_is_a_caution() {
        BuildFixture build = aBuild().with(aSupply().efficiency(Efficiency.NONE));

        Finding finding = check(new SupplyQualityRule(), build);

        assertThat(finding).isCaution().saying("no efficiency label");
    }

    @Test
    void four_years_are_a_caution() {
        // Common practice: five years mark a supply one trusts.
        BuildFixture build = aBuild().with(aSupply().warrantyYears(4));

        Finding finding = check(new SupplyQualityRule(), build);

        assertThat(finding).isCaution().saying("guaranteed for 4 years only");
    }

    @Test
    void an_unknown_guarantee_is_a_caution() {
        BuildFixture build = aBuild().with(aSupply().noWarranty());

        Finding finding = check(new SupplyQualityRule(), build);

        assertThat(finding).isCaution().saying("no guarantee stated");
    }

    @Test
    void a_size_of_reserve_is_met() {
        BuildFixture build = aBuild().with(aSupply().watts(500));

        Finding finding = check(new SupplyQualityRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void less_than_a_size_of_reserve_is_a_caution() {
        BuildFixture build = aBuild().with(aSupply().watts(499));
        BriefFixture brief = aBrief().headroom(80, 0, 5);

        Finding finding = check(new SupplyQualityRule(), build, brief);

        assertThat(finding).isCaution().saying("no usual size of reserve");
    }
}
