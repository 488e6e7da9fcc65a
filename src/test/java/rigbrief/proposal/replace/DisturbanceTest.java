package rigbrief.proposal.replace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigbrief.fixture.CatalogueFixture.EURO;
import static rigbrief.fixture.CatalogueFixture.euro;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigbrief.part.Slot;

class DisturbanceTest {

    /** Hand calculation: 15 % of 149.90 is 22.485, half up 22.49; with 6.90 postage 29.39. */
    @Test
    void a_share_and_the_postage_are_lost() {
        assertThat(Disturbance.usual(EURO).lossMinor(14_990, 690)).isEqualTo(2_939);
    }

    @Test
    void no_more_is_lost_than_was_paid() {
        assertThat(Disturbance.usual(EURO).lossMinor(500, 690)).isEqualTo(500);
    }

    /** Hand calculation: 45 minutes at 40.00 an hour. */
    @Test
    void work_is_weighed_by_the_hour() {
        assertThat(Disturbance.usual(EURO).workMinor(45)).isEqualTo(3_000);
    }

    @ParameterizedTest
    @EnumSource
    void every_slot_takes_some_time(Slot slot) {
        assertThat(Disturbance.refitMinutes(slot)).isPositive();
    }

    @Test
    void a_share_over_the_whole_is_refused() {
        assertThatThrownBy(() -> new Disturbance(101, euro("40.00")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("101 %");
    }
}
