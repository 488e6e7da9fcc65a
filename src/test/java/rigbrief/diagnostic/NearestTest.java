package rigbrief.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    @ParameterizedTest
    @CsvSource({
        // Textbook pairs: three steps (two exchanged, one added), and a swap of neighbours as one.
        "kitten, sitting, 3",
        "ca, ac, 1",
        // The pair that tells optimal string alignment (3) from the unrestricted distance (2).
        "ca, abc, 3",
        "same, same, 0",
        "'', abc, 3",
        "abc, '', 3"
    })
    void the_distance_counts_letters_put_in_left_out_exchanged_or_swapped(
            String from, String to, int steps) {
        assertThat(Nearest.distance(from, to)).isEqualTo(steps);
    }

    @Test
    void the_nearest_of_several_words_is_offered() {
        assertThat(Nearest.to("heigth_mm", List.of("width_mm", "height_mm", "depth_mm")))
                .contains("height_mm");
    }

    @Test
    void the_first_of_equally_near_words_is_offered() {
        assertThat(Nearest.to("cat", List.of("bat", "rat"))).contains("bat");
    }

    @Test
    void a_word_further_than_a_third_of_the_letters_is_not_offered() {
        assertThat(Nearest.to("quiet", List.of("value", "noise"))).isEmpty();
    }

    @Test
    void nothing_is_offered_out_of_nothing() {
        assertThat(Nearest.to("x", List.of())).isEmpty();
    }
}
