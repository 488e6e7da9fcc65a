package rigbrief.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BuildFixture.aBuild;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;

class GoalBookTest {
    private static final List<String> IDS =
            List.of(
                    "workloads",
                    "value",
                    "quiet",
                    "upgrade-room",
                    "look",
                    "energy",
                    "lifetime",
                    "simple-order");

    @Test
    void the_goals_are_those_a_brief_can_weigh() {
        assertThat(Goals.ALL)
                .extracting(goal -> goal.info().id())
                .containsExactlyInAnyOrderElementsOf(IDS);
    }

    @Test
    void every_goal_says_what_it_means_and_how_it_is_reckoned() {
        for (Goal goal : Goals.ALL) {
            assertThat(goal.info().title()).hasSizeBetween(10, 60).doesNotEndWith(".");
            assertThat(goal.info().curve()).hasSizeGreaterThan(20).doesNotEndWith(".");
        }
    }

    @Test
    void every_goal_has_a_test_of_the_same_name() {
        for (Goal goal : Goals.ALL) {
            assertThatCode(() -> Class.forName(goal.getClass().getName() + "Test"))
                    .as(goal.info().id())
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void every_goal_gives_a_utility_within_bounds_and_a_reason() {
        Assessment it = assessed(aBuild());

        for (Goal goal : Goals.ALL) {
            assertThat(goal.utility(it)).as(goal.info().id()).isBetween(0, Goal.FULL);
            assertThat(goal.because(it)).as(goal.info().id()).hasSizeGreaterThan(5);
        }
    }

    @Test
    void what_a_goal_reads_can_not_be_changed() {
        for (Goal goal : Goals.ALL) {
            assertThatThrownBy(() -> goal.reads().add(Slot.DISPLAY))
                    .isInstanceOf(UnsupportedOperationException.class);
        }
    }

    @Test
    void shares_are_clipped_and_rounded_half_up() {
        assertThat(Goal.tenThousandths(-0.2)).isZero();
        assertThat(Goal.tenThousandths(1.2)).isEqualTo(10_000);
        assertThat(Goal.tenThousandths(0.12345)).isEqualTo(1_235);
    }
}
