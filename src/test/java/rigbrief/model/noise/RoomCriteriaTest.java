package rigbrief.model.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;

class RoomCriteriaTest {

    /** Computed apart from this program: (38 - 12.0) / 0.930 = 27.957 in the 250 Hz band. */
    @Test
    @DisplayName("SND-08: that row of octaves is rated NR 27.96, governed by 250 Hz, so NR 28")
    void the_highest_band_governs() {
        var rating = RoomCriteria.rating(OctaveBand.HZ_31_5, 55, 50, 45, 38, 32, 27, 22, 18, 15);

        assertThat(rating.rating()).isCloseTo(27.96, within(0.01));
        assertThat(rating.governedBy()).isEqualTo(OctaveBand.HZ_250);
        assertThat(Math.round(rating.rating())).isEqualTo(28);
    }

    /** Computed apart from this program from the help page's constants. */
    @ParameterizedTest
    @CsvSource({
        "20,69.0,51.2,39.4,30.6,24.3,20.0,16.8,14.4,12.6",
        "25,72.4,55.1,43.8,35.2,29.1,25.0,21.9,19.5,17.8",
        "30,75.8,59.1,48.1,39.9,34.0,30.0,26.9,24.6,22.9",
        "35,79.2,63.0,52.5,44.6,38.9,35.0,32.0,29.8,28.1"
    })
    void curves_are_those_of_the_table(ArgumentsAccessor row) {
        for (OctaveBand band : OctaveBand.values()) {
            if (band != OctaveBand.HZ_16000) {
                assertThat(RoomCriteria.curveDb(row.getDouble(0), band))
                        .as("%s", band)
                        .isCloseTo(row.getDouble(1 + band.ordinal()), within(0.051));
            }
        }
    }

    @Test
    void a_row_may_begin_at_any_band() {
        var rating = RoomCriteria.rating(OctaveBand.HZ_4000, 24.65, 10);

        assertThat(rating.rating()).isCloseTo(30, within(0.01));
        assertThat(rating.governedBy()).isEqualTo(OctaveBand.HZ_4000);
    }

    /** By hand: both levels lie on the curve NR 0, which is 0 dB at 1 kHz and -3.5 at 2 kHz. */
    @Test
    void of_equal_bands_the_lower_one_governs() {
        var rating = RoomCriteria.rating(OctaveBand.HZ_1000, 0, -3.5, -20);

        assertThat(rating.governedBy()).isEqualTo(OctaveBand.HZ_1000);
    }

    @Test
    void no_band_has_no_rating() {
        assertThat(RoomCriteria.rating(OctaveBand.HZ_63).rating())
                .isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void a_rating_beyond_the_curves_gets_a_caution() {
        assertThat(RoomCriteria.RATING.remark(-1)).isPresent();
        assertThat(RoomCriteria.RATING.remark(30)).isEmpty();
    }

    @Test
    void the_band_without_a_curve_is_refused() {
        refused("octaveDb", () -> RoomCriteria.curveDb(30, OctaveBand.HZ_16000));
        assertThatThrownBy(() -> RoomCriteria.rating(OctaveBand.HZ_4000, 20, 20, 20))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "octaveDb: found 3 from 4000.0 Hz on, expected at most 2; leave out the"
                                + " last");
    }

    @Property(tries = 200)
    void a_curve_is_rated_by_its_own_number(
            @ForAll @DoubleRange(min = 0, max = 100) double rating) {
        for (OctaveBand band : OctaveBand.values()) {
            if (band != OctaveBand.HZ_16000) {
                double levelDb = RoomCriteria.curveDb(rating, band);

                assertThat(RoomCriteria.rating(band, levelDb).rating())
                        .isCloseTo(rating, within(1e-9));
            }
        }
    }
}
