package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;

class CompleteRuleTest {
    @Test
    void a_complete_build_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new CompleteRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_build_without_card_or_fans_is_complete() {
        BuildFixture build = aBuild().without(Slot.GRAPHICS);

        Finding finding = check(new CompleteRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void one_missing_part_is_a_breach_of_one() {
        BuildFixture build = aBuild().without(Slot.SUPPLY);

        Finding finding = check(new CompleteRule(), build);

        assertThat(finding).isBreachOf(1).saying("missing: supply");
    }

    @Test
    void no_cooler_at_all_is_a_breach_of_one() {
        BuildFixture build = aBuild().without(Slot.COOLER);

        Finding finding = check(new CompleteRule(), build);

        assertThat(finding).isBreachOf(1).saying("a cooler");
    }

    @Test
    void a_boxed_cooler_is_a_cooler() {
        BuildFixture build = aBuild().without(Slot.COOLER).with(aProcessor().boxedCoolerW(65));

        Finding finding = check(new CompleteRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_empty_build_misses_every_required_part() {
        BuildFixture build = anEmptyBuild();

        Finding finding = check(new CompleteRule(), build);

        assertThat(finding).isBreachOf(6).saying("processor, board, memory, drive, supply, case");
    }
}
