package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BoardFixture;
import rigbrief.fixture.BriefFixture;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.FamilySupport;
import rigbrief.rule.Finding;

class FamilyRuleTest {
    @Test
    void a_family_known_from_older_firmware_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new FamilyRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_family_known_from_the_shipped_firmware_on_is_met() {
        BuildFixture build =
                aBuild().with(
                                aBoard().families(new FamilySupport("heron", "1.20"))
                                        .shippedFirmware("1.20"));

        Finding finding = check(new FamilyRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_family_that_is_never_supported_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aBoard().families(new FamilySupport("egret", "1.00")));

        Finding finding = check(new FamilyRule(), build);

        assertThat(finding).isBreachOf(1).saying("never supports the family heron");
    }

    @Test
    void a_family_of_newer_firmware_is_a_breach_when_the_board_can_not_be_updated() {
        BuildFixture build = aBuild().with(newer());

        Finding finding = check(new FamilyRule(), build);

        assertThat(finding)
                .isBreachOf(1)
                .saying("knows Ashgrove model processor-1 from 1.21 on")
                .saying("can't do without");
    }

    @Test
    void a_family_of_newer_firmware_is_a_caution_when_the_board_updates_without_a_processor() {
        // Common practice: a board that writes firmware without a processor takes the update before
        // first boot.
        BuildFixture build = aBuild().with(newer().firmwareWithoutProcessor(true));

        Finding finding = check(new FamilyRule(), build);

        assertThat(finding)
                .isCaution()
                .saying("update it before the first boot without a processor fitted");
    }

    @Test
    void a_family_of_newer_firmware_is_a_caution_when_a_helper_processor_is_at_hand() {
        BuildFixture build = aBuild().with(newer());
        BriefFixture brief = aBrief().helperProcessor();

        Finding finding = check(new FamilyRule(), build, brief);

        assertThat(finding).isCaution().saying("helper processor");
    }

    @Test
    void versions_compare_number_by_number() {
        BuildFixture build =
                aBuild().with(
                                aBoard().families(new FamilySupport("heron", "1.9"))
                                        .shippedFirmware("1.10"));

        Finding finding = check(new FamilyRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_cell_is_a_caution() {
        BuildFixture build = aBuild().with(aBoard().unknown("families"));

        Finding finding = check(new FamilyRule(), build);

        assertThat(finding).isUnknown("board-1", "families");
    }

    private static BoardFixture newer() {
        return aBoard().families(new FamilySupport("heron", "1.21")).shippedFirmware("1.20");
    }
}
