package rigbrief.measurement.tune;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisibleLossTest {

    /** Hand calculation: (visibility + 0.1) x (down / most)^2 in thousandths. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 3, 0",
        "3, 0, 1, 0",
        "0, 1, 2, 100",
        "1, 1, 2, 1100",
        "3, 1, 2, 3100",
        "2, 1, 3, 525",
        "2, 2, 3, 2100",
        "1, 1, 4, 122"
    })
    void loss_grows_with_the_square_of_the_steps_down(
            int visible, int down, int steps, long thousandths) {
        assertThat(VisibleLoss.ofSteps(visible, down, steps)).isEqualTo(thousandths);
    }

    /** Hand calculation: 3.1 x ((1 - 0.75) / 0.5)^2 = 0.775. */
    @Test
    void half_the_way_to_half_the_pixels_along_an_axis_loses_a_quarter() {
        assertThat(VisibleLoss.ofPixels(1)).isZero();
        assertThat(VisibleLoss.ofPixels(0.75)).isEqualTo(775);
        assertThat(VisibleLoss.ofPixels(0.5)).isEqualTo(3_100);
    }
}
