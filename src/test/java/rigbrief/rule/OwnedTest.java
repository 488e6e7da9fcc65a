package rigbrief.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.DriveFixture.aDrive;
import static rigbrief.fixture.FanFixture.aFan;

import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;

class OwnedTest {
    @Test
    void a_kept_part_in_its_slot_is_owned() {
        Assessment it = assessed(aBuild(), aBrief().keeps(Slot.CASE, aCase()));

        assertThat(Owned.in(it, Slot.CASE)).isTrue();
    }

    @Test
    void another_part_in_that_slot_is_not() {
        Assessment it = assessed(aBuild(), aBrief().keeps(Slot.CASE, aCase().id("case-2")));

        assertThat(Owned.in(it, Slot.CASE)).isFalse();
    }

    @Test
    void the_same_part_in_another_slot_is_not() {
        Assessment it =
                assessed(
                        aBuild().with(Slot.SECOND_DRIVE, aDrive()),
                        aBrief().keeps(Slot.SECOND_DRIVE, aDrive()));

        assertThat(Owned.in(it, Slot.SECOND_DRIVE)).isTrue();
        assertThat(Owned.in(it, Slot.DRIVE)).isFalse();
    }

    @Test
    void an_empty_slot_is_not() {
        Assessment it = assessed(aBuild(), aBrief().keeps(Slot.FANS, aFan()));

        assertThat(Owned.in(it, Slot.FANS)).isFalse();
    }
}
