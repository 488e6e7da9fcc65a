package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;

class MemorySlotsRuleTest {
    @Test
    void fewer_modules_than_slots_are_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isMet().hasMargin(4, 2, Unit.PIECE);
    }

    @Test
    void as_many_modules_as_slots_are_met() {
        BuildFixture build = aBuild().with(aMemoryKit(), 2);

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isMet().hasMargin(4, 4, Unit.PIECE);
    }

    @Test
    void one_module_too_many_is_a_breach_of_one() {
        BuildFixture build = aBuild().with(aBoard().memorySlots(1).memoryMaxGb(64));

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding)
                .isBreachOf(1)
                .hasMargin(1, 2, Unit.PIECE)
                .saying("2 modules of 16 GB for 1 slot");
    }

    @Test
    void capacity_at_the_limit_of_the_board_is_met() {
        BuildFixture build = aBuild().with(aBoard().memoryMaxGb(64)).with(aMemoryKit(), 2);

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void one_module_beyond_the_board_is_a_breach_of_one() {
        // 45 GB against 44 GB: one module of 15 GB has to go.
        BuildFixture build =
                aBuild().with(aBoard().memoryMaxGb(63))
                        .with(aMemoryKit().moduleGb(15).modules(3), 1)
                        .with(aProcessor().memoryMaxGb(44));

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void capacity_at_the_limit_of_the_processor_is_met() {
        BuildFixture build = aBuild().with(aProcessor().memoryMaxGb(32));

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void capacity_one_gb_beyond_the_processor_is_a_breach_of_one_module() {
        BuildFixture build = aBuild().with(aProcessor().memoryMaxGb(31));

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isBreachOf(1);
    }

    @Test
    void a_module_larger_than_a_slot_takes_counts_every_module() {
        BuildFixture build = aBuild().with(aMemoryKit().moduleGb(48));

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isBreachOf(2).saying("at most 32 GB");
    }

    @Test
    void a_module_as_large_as_a_slot_takes_is_met() {
        BuildFixture build = aBuild().with(aMemoryKit().moduleGb(32));

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void whole_modules_beyond_the_processor_are_counted_whole() {
        // By hand: 64 GB against 32 GB are two modules of 16 GB too many.
        BuildFixture build = aBuild().with(aMemoryKit(), 2).with(aProcessor().memoryMaxGb(32));

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isBreachOf(2);
    }

    @Test
    void slots_all_filled_with_too_much_are_no_lack_of_slots() {
        BuildFixture build = aBuild().with(aMemoryKit(), 2).with(aProcessor().memoryMaxGb(63));

        Finding finding = check(new MemorySlotsRule(), build);

        assertThat(finding).isBreachOf(1);
        org.assertj.core.api.Assertions.assertThat(finding.margin()).isEmpty();
    }
}
