package rigbrief.model.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PixelDensityTest {

    /** Computed apart from this program: density, pitch, pixels per degree, acuity distance. */
    @ParameterizedTest
    @CsvSource({
        "1920,1080,24,91.788,0.27673,37.84,951",
        "2560,1440,27,108.786,0.23349,44.85,803",
        "3440,1440,34,109.683,0.23158,45.22,796",
        "5120,1440,49,108.544,0.23401,44.75,804",
        "3840,2160,32,137.682,0.18448,56.76,634",
        "3840,2160,27,163.178,0.15566,67.28,535",
        "5120,2880,27,217.571,0.11674,89.70,401"
    })
    void panels_are_as_fine_as_geometry_says(
            int widthPx,
            int heightPx,
            double diagonalInch,
            double perInch,
            double pitchMm,
            double perDegree,
            double acuityMm) {
        double density = PixelDensity.perInch(widthPx, heightPx, diagonalInch);

        assertThat(density).isCloseTo(perInch, within(0.0006));
        assertThat(PixelDensity.pitchMm(density)).isCloseTo(pitchMm, within(0.000006));
        assertThat(PixelDensity.perDegree(density, 600)).isCloseTo(perDegree, within(0.006));
        // The table rounds 60 pixels per degree; the arc minute itself is 0.002 % away.
        assertThat(PixelDensity.acuityDistanceMm(density)).isCloseTo(acuityMm, within(0.6));
    }

    /** Source: "The math behind visual acuity", 3438 / density in inches. */
    @Test
    @DisplayName("PPD-01: 300 pixels per inch vanish at 11.46 inch")
    void a_fine_print_vanishes_at_a_foot() {
        assertThat(PixelDensity.acuityDistanceMm(300) / 25.4).isCloseTo(11.46, within(0.01));
    }

    /** Source: the same article, which prints 143. */
    @Test
    @DisplayName("PPD-02: from 24 inch it takes 143.2 pixels per inch")
    void a_desk_s_distance() {
        assertThat(PixelDensity.acuityPerInch(24 * 25.4)).isCloseTo(143.2, within(0.1));
    }

    /** Source: table of needed density by visual acuity at 12 inch, which prints 286. */
    @Test
    @DisplayName("PPD-03: from 12 inch it takes 286.48 pixels per inch")
    void a_hand_s_distance() {
        assertThat(PixelDensity.acuityPerInch(12 * 25.4)).isCloseTo(286.48, within(0.05));
    }

    /** By hand: 2 x 600 / 25.4 x tan(0.5°) x 108.786. */
    @Test
    @DisplayName("PPD-04: 2560 x 1440 on 27 inch from 600 mm are 44.85 pixels per degree")
    void an_angle_of_sight() {
        double density = PixelDensity.perInch(2_560, 1_440, 27);

        assertThat(PixelDensity.perDegree(density, 600)).isCloseTo(44.85, within(0.01));
    }

    /** By hand: 27 x 25.4 mm x 16 / sqrt(16² + 9²), and x 9 / the same. */
    @Test
    @DisplayName("PPD-05: 16:9 at 27 inch is 597.7 x 336.2 mm")
    void the_sides_of_a_panel() {
        double density = PixelDensity.perInch(1_920, 1_080, 27);

        assertThat(PixelDensity.sideMm(1_920, density)).isCloseTo(597.7, within(0.1));
        assertThat(PixelDensity.sideMm(1_080, density)).isCloseTo(336.2, within(0.1));
    }

    @Test
    void a_seat_across_the_room_gets_a_caution() {
        assertThat(PixelDensity.DISTANCE_MM.remark(2_000)).isPresent();
        assertThat(PixelDensity.DISTANCE_MM.remark(600)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("widthPx", () -> PixelDensity.perInch(0, 1, 27));
        refused("heightPx", () -> PixelDensity.perInch(1, 0, 27));
        refused("diagonalInch", () -> PixelDensity.perInch(1, 1, 0));
        refused("perInch", () -> PixelDensity.pitchMm(0));
        refused("distanceMm", () -> PixelDensity.perDegree(100, -1));
        refused("distanceMm", () -> PixelDensity.acuityPerInch(0));
        refused("sidePx", () -> PixelDensity.sideMm(0, 100));
    }
}
