package rigbrief.measurement.tune;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.assess.FrameModel.SceneTime;
import rigbrief.catalogue.FrameRate.Scene;

class HeldScenesTest {
    private static final double CLOSE = 1e-9;
    private static final List<SceneTime> SCENES =
            List.of(scene(0.1, 40), scene(0.6, 90), scene(0.3, 60));

    @Test
    void all_but_the_worst_leaves_the_slowest_scene_out() {
        assertThat(HeldScenes.ALL_BUT_WORST.rateFps(SCENES)).isCloseTo(60, within(CLOSE));
    }

    @Test
    void of_a_single_scene_that_one_counts() {
        assertThat(HeldScenes.ALL_BUT_WORST.rateFps(List.of(scene(1, 40))))
                .isCloseTo(40, within(CLOSE));
    }

    /** Hand calculation: 90 fps in 60 % of play, 60 in 90 %, 40 in all of it. */
    @ParameterizedTest
    @CsvSource({"1, 90", "60, 90", "61, 60", "90, 60", "91, 40", "100, 40"})
    void a_share_of_play_counts_the_fastest_scenes_that_make_it_up(int percent, double fps) {
        HeldScenes held = new HeldScenes(OptionalInt.of(percent));

        assertThat(held.rateFps(SCENES)).isCloseTo(fps, within(CLOSE));
    }

    @ParameterizedTest
    @CsvSource({"0", "101"})
    void a_share_outside_1_to_100_is_refused(int percent) {
        assertThatThrownBy(() -> new HeldScenes(OptionalInt.of(percent)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected 1 to 100");
    }

    private static SceneTime scene(double share, double fps) {
        return new SceneTime(new Scene("scene", share, 1, 1), 1 / fps, 0, 0, 1 / fps);
    }
}
