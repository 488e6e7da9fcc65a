package rigbrief.rule.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SupplySizesTest {
    @Test
    void the_first_sufficient_size_is_planned() {
        // Common practice: the sizes on price lists.
        assertThat(SupplySizes.planned(451, 0)).isEqualTo(500);
        assertThat(SupplySizes.planned(450, 0)).isEqualTo(450);
        assertThat(SupplySizes.planned(1, 0)).isEqualTo(200);
    }

    @Test
    void sizes_up_climb_the_ladder() {
        assertThat(SupplySizes.planned(580, 1)).isEqualTo(750);
        assertThat(SupplySizes.planned(580, 2)).isEqualTo(850);
    }

    @Test
    void the_ladder_ends_at_its_largest_size() {
        assertThat(SupplySizes.planned(1_200, 3)).isEqualTo(1_500);
        assertThat(SupplySizes.planned(1_500, 1)).isEqualTo(1_500);
    }

    @Test
    void above_the_ladder_the_need_itself_is_planned() {
        assertThat(SupplySizes.planned(1_501, 1)).isEqualTo(1_501);
    }

    @Test
    void the_ladder_in_words_climbs() {
        String[] words = SupplySizes.words().split(" ");

        assertThat(words).contains("450", "550", "650", "750", "850", "1000");
        for (int i = 0; i < words.length; i++) {
            assertThat(SupplySizes.planned(Long.parseLong(words[i]), 0)).hasToString(words[i]);
        }
    }
}
