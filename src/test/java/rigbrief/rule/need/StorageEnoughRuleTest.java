package rigbrief.rule.need;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.WorkloadFixture.ARCHIVE;
import static rigbrief.fixture.WorkloadFixture.aWorkload;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class StorageEnoughRuleTest {
    @Test
    void more_than_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().storage(500);

        Finding finding = check(new StorageEnoughRule(), build, brief);

        assertThat(finding).isMet().hasMargin(1_000, 500, Unit.GB);
    }

    @Test
    void exactly_as_much_as_asked_is_met() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().storage(1_000);

        Finding finding = check(new StorageEnoughRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void one_gb_short_is_a_breach_of_one() {
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().storage(1_001);

        Finding finding = check(new StorageEnoughRule(), build, brief);

        assertThat(finding).isBreachOf(1).saying("1001 GB of storage wanted, there are 1000 GB");
    }

    @Test
    void both_drives_count() {
        BuildFixture build = aBuild().with(Slot.SECOND_DRIVE, aDrive());
        BriefFixture brief = aBrief().storage(2_000);

        Finding finding = check(new StorageEnoughRule(), build, brief);

        assertThat(finding).isMet();
    }

    @Test
    void growth_and_free_space_count() {
        // By hand: (520 + 3 x 90 + 60 GB for the system) / 0.85 = 1000 GB (15 % free: common
        // practice).
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().storage(0, ARCHIVE);
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().diskGb(520).capacity());

        Finding finding = check(new StorageEnoughRule(), build, brief, catalogue);

        assertThat(finding).isMet().hasMargin(1_000, 1_000, Unit.GB);
    }

    @Test
    void a_gb_more_to_store_is_a_breach_of_two() {
        // By hand: 851 / 0.85 = 1001.2 GB, rounded up 1002.
        BuildFixture build = aBuild();
        BriefFixture brief = aBrief().storage(0, ARCHIVE);
        CatalogueFixture catalogue =
                aCatalogue().offering(aBuild().make()).workload(aWorkload().diskGb(521).capacity());

        Finding finding = check(new StorageEnoughRule(), build, brief, catalogue);

        assertThat(finding).isBreachOf(2);
    }

    @Test
    void two_drives_of_a_kind_count_twice() {
        // By hand: 2 x 1000 GB.
        BuildFixture build = aBuild().with(aDrive(), 2);
        BriefFixture brief = aBrief().storage(2_000);

        Finding finding = check(new StorageEnoughRule(), build, brief);

        assertThat(finding).isMet().hasMargin(2_000, 2_000, Unit.GB);
    }
}
