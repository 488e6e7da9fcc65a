package rigbrief.measurement.tune;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.catalogue.FrameRate;

class SettingsFrontTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void no_mix_of_the_front_beats_another(int seed) {
        List<Mix> front = SettingsFront.of(Titles.random(new Random(seed)), false);

        for (Mix one : front) {
            assertThat(front)
                    .filteredOn(other -> other != one)
                    .noneMatch(
                            other ->
                                    other.graphics() <= one.graphics()
                                            && other.processor() <= one.processor()
                                            && other.loss() <= one.loss());
        }
    }

    @Test
    void nothing_turned_down_comes_first() {
        FrameRate title = Titles.random(new Random(4));

        Mix first = SettingsFront.of(title, false).get(0);

        assertThat(first.loss()).isZero();
        assertThat(first.steps())
                .isEqualTo(
                        title.settings().stream()
                                .map(setting -> setting.steps().size() - 1)
                                .toList());
    }

    @Test
    void a_title_without_settings_has_one_mix() {
        FrameRate title = Titles.plain(100, 0.1, List.of(), List.of());

        assertThat(SettingsFront.of(title, false)).containsExactly(new Mix(0, 0, 0, List.of()));
    }
}
