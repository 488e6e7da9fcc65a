package rigbrief.rule.fit;

import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.MemoryType;
import rigbrief.rule.Finding;

class MemoryRateRuleTest {
    @Test
    void a_kit_that_runs_at_its_rate_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new MemoryRateRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void four_modules_that_slow_the_memory_down_are_a_note() {
        BuildFixture build = aBuild().with(aMemoryKit(), 2);

        Finding finding = check(new MemoryRateRule(), build);

        assertThat(finding).isNote().saying("sold as 5600 MT/s runs at 4800 MT/s");
    }

    @Test
    void a_processor_slower_than_the_kit_is_a_note() {
        BuildFixture build = aBuild().with(aMemoryKit().mts(6000));

        Finding finding = check(new MemoryRateRule(), build);

        assertThat(finding).isNote().saying("processor 5600");
    }

    @Test
    void memory_that_does_not_fit_at_all_is_told_elsewhere() {
        BuildFixture build = aBuild().with(aMemoryKit().type(MemoryType.DDR4));

        Finding finding = check(new MemoryRateRule(), build);

        assertThat(finding).isMet();
    }
}
