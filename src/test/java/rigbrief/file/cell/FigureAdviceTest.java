package rigbrief.file.cell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureAdviceTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "height_mm | 165mm | 165",
                "height_mm | 16,5 cm | 165",
                "height_mm | 16.5cm | 165",
                "height_mm | 0.165 m | 165",
                // An inch is 25.4 mm exactly (ISO 80000-3).
                "height_mm | 10 in | 254",
                "mass_g | 1,25 kg | 1250",
                "capacity_gb | 2 TB | 2000",
                "current_ma | 0.3 A | 300",
                "mts | 5600 MT/s | 5600"
            })
    void a_figure_with_a_unit_is_turned_into_the_unit_of_its_column(
            String column, String written, String meant) {
        assertThat(FigureAdvice.meant(column, written, true, 1, 10_000)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "height_mm | 16.55 cm",
                "height_mm | 165 kg",
                "height_mm | 20 m",
                "height_mm | tall",
                "height_mm | 1 2",
                "threads | 16 pieces"
            })
    void no_guess_is_made_that_is_not_whole_not_within_bounds_or_of_another_unit(
            String column, String written) {
        assertThat(FigureAdvice.meant(column, written, true, 1, 10_000)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"base_ghz | 3,7 | 3.7", "base_ghz | 3700 MHz | 3.7"})
    void a_decimal_comma_becomes_a_point(String column, String written, String meant) {
        assertThat(FigureAdvice.meant(column, written, false, 0.5, 8)).contains(meant);
    }
}
