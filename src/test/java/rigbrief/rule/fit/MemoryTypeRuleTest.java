package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.MemoryRate;
import rigbrief.part.MemoryType;
import rigbrief.part.ModuleForm;
import rigbrief.rule.Finding;

class MemoryTypeRuleTest {
    @Test
    void the_same_sort_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new MemoryTypeRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void another_generation_differs_from_board_and_processor() {
        // MEM-03: DDR5 and DDR4 have no electrical or mechanical compatibility (JESD79-4,
        // JESD79-5).
        BuildFixture build = aBuild().with(aMemoryKit().type(MemoryType.DDR4));

        Finding finding = check(new MemoryTypeRule(), build);

        assertThat(finding).isBreachOf(2).saying("DDR4").saying("doesn't take it");
    }

    @Test
    void another_form_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aMemoryKit().form(ModuleForm.SODIMM));

        Finding finding = check(new MemoryTypeRule(), build);

        assertThat(finding).isBreachOf(1).saying("SO-DIMM").saying("processor-1 takes it");
    }

    @Test
    void a_generation_the_processor_does_not_take_is_a_breach_of_one() {
        BuildFixture build =
                aBuild().with(aProcessor().memory(new MemoryRate(MemoryType.DDR4, 3200)));

        Finding finding = check(new MemoryTypeRule(), build);

        assertThat(finding).isBreachOf(1);
    }
}
