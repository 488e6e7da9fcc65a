package rigbrief.model.memory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class DriveEnduranceTest {

    /** Source: a drive maker's page "How to Compute Drive Writes Per Day", which prints 0.43. */
    @Test
    @DisplayName("SSD-01: 1432 TBW over 5 years on 1800 GB are 0.436 a day, 784.7 GB")
    void the_maker_s_example() {
        assertThat(DriveEndurance.writesPerDay(1_432, 5, 1_800)).isCloseTo(0.436, within(0.001));
        assertThat(DriveEndurance.gbPerDay(1_432, 5)).isCloseTo(784.7, within(0.05));
    }

    /** Source: a conversion page for drive writes and terabytes written. */
    @Test
    @DisplayName("SSD-02: one write a day of 3.84 TB over 5 years is 7008 TBW")
    void a_rating_from_daily_writes() {
        assertThat(DriveEndurance.ratingTbw(1, 5, 3_840)).isEqualTo(7_008);
    }

    /** Source: a drive's data sheet, section 6.1 "TBW". */
    @Test
    @DisplayName("SSD-03: 365 TBW over 5 years on 200 GB are one write a day, 200 GB")
    void the_data_sheet_s_example() {
        assertThat(DriveEndurance.writesPerDay(365, 5, 200)).isEqualTo(1);
        assertThat(DriveEndurance.gbPerDay(365, 5)).isEqualTo(200);
    }

    /** By hand: 600 000 / (50 x 365) = 32.9 years, which no warranty promises. */
    @Test
    @DisplayName("SSD-04: 600 TBW at 50 GB a day last 32.9 years: the warranty's 5 are promised")
    void a_client_s_writes_outlive_the_warranty() {
        assertThat(DriveEndurance.yearsByWrites(600, 50)).isCloseTo(32.9, within(0.1));
        assertThat(DriveEndurance.promisedYears(600, 50, 5)).isEqualTo(5);
    }

    /** Source: the page of SSD-01, whose 774 GB a day are its truncated 0.43 x 1800. */
    @Test
    @DisplayName("SSD-05: the page's 774 GB a day come from its rounding, the figure is 784.7")
    void a_truncated_ratio_is_not_carried_on() {
        assertThat(DriveEndurance.gbPerDay(1_432, 5)).isCloseTo(784.7, within(0.05));
        assertThat(0.43 * 1_800).isCloseTo(774, within(1e-9));
    }

    @Test
    void heavy_writes_use_a_rating_up_within_the_warranty() {
        assertThat(DriveEndurance.promisedYears(365, 1_000, 5)).isEqualTo(1);
    }

    @Test
    void more_than_one_write_a_day_is_not_for_a_client_drive() {
        assertThat(DriveEndurance.CLIENT_DWPD.remark(3)).isPresent();
        assertThat(DriveEndurance.CLIENT_DWPD.remark(0.436)).isEmpty();
    }

    @Test
    void nonsense_is_refused() {
        refused("ratingTbw", () -> DriveEndurance.writesPerDay(0, 5, 1_000));
        refused("warrantyYears", () -> DriveEndurance.gbPerDay(1, 0));
        refused("capacityGb", () -> DriveEndurance.writesPerDay(1, 1, 0));
        refused("writesPerDay", () -> DriveEndurance.ratingTbw(0, 5, 1_000));
        refused("capacityGb", () -> DriveEndurance.ratingTbw(1, 5, 0));
        refused("warrantyYears", () -> DriveEndurance.ratingTbw(1, 0, 1_000));
        refused("ratingTbw", () -> DriveEndurance.yearsByWrites(0, 50));
        refused("writtenGbPerDay", () -> DriveEndurance.yearsByWrites(600, 0));
        refused("warrantyYears", () -> DriveEndurance.promisedYears(600, 50, 0));
    }

    @Property(tries = 300)
    void rating_and_daily_writes_are_each_other_s_inverse(
            @ForAll @DoubleRange(min = 0.05, max = 3) double writesPerDay,
            @ForAll @DoubleRange(min = 1, max = 10) double years) {
        double ratingTbw = DriveEndurance.ratingTbw(writesPerDay, years, 1_000);

        assertThat(DriveEndurance.writesPerDay(ratingTbw, years, 1_000))
                .isCloseTo(writesPerDay, within(1e-9));
    }
}
