package rigbrief.model.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;

class TaskTimeTest {

    /** By hand: (10 + 5) x 2 + 6e9 / 3e9. */
    @Test
    void stages_follow_each_other_and_only_computing_overflows() {
        assertThat(TaskTime.seconds(10, 5, 6e9, 3e9, 2)).isCloseTo(32, within(1e-12));
    }

    /**
     * By hand with Amdahl's law: 100 units, 95 of them spread over 8 cores of one unit a second,
     * take 5 + 11.875 s, which is 100 / 5.926 (PERF-01).
     */
    @Test
    void a_spread_task_takes_what_amdahl_says() {
        double processorS = FrameTime.processorS(5, 1, 95, 8);

        double taskS = TaskTime.seconds(processorS, 0, 0, 0, 1);

        assertThat(taskS).isCloseTo(100 / Amdahl.speedUp(0.95, 8), within(1e-9));
        assertThat(100 / taskS).isCloseTo(5.926, within(0.001));
    }

    @Test
    void work_without_a_rate_never_ends() {
        assertThat(TaskTime.seconds(1, 0, 1, 0, 1)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(TaskTime.seconds(Double.POSITIVE_INFINITY, 0, 0, 0, 1))
                .isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(TaskTime.seconds(0, Double.POSITIVE_INFINITY, 0, 0, 1))
                .isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(TaskTime.seconds(0, 0, 0, 0, 1)).isZero();
    }

    @Test
    void nonsense_is_refused() {
        refused("timeS", () -> TaskTime.seconds(-1, 0, 0, 1, 1));
        refused("timeS", () -> TaskTime.seconds(0, -1, 0, 1, 1));
        refused("timeS", () -> TaskTime.seconds(Double.NaN, 0, 0, 1, 1));
        refused("work", () -> TaskTime.seconds(1, 0, -1, 1, 1));
        refused("perS", () -> TaskTime.seconds(1, 0, 1, -1, 1));
        refused("overflowFactor", () -> TaskTime.seconds(1, 0, 0, 1, 0.9));
        refused("overflowFactor", () -> TaskTime.seconds(1, 0, 0, 1, Double.NaN));
    }
}
