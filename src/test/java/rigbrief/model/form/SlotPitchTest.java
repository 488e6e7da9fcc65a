package rigbrief.model.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlotPitchTest {

    /** By hand: 61 / 20.32 = 3.002, 60 / 20.32 = 2.953; the pitch of 0.8 inch is from memory. */
    @Test
    @DisplayName("FORM-06: a card of 61 mm takes four slots, one of 60 mm three")
    void a_millimetre_can_cost_a_slot() {
        assertThat(SlotPitch.slots(61)).isEqualTo(4);
        assertThat(SlotPitch.slots(60)).isEqualTo(3);
    }

    /** From memory: component height limits of one, two and three slots. */
    @ParameterizedTest
    @CsvSource({"14.47,1", "34.80,2", "55.12,3"})
    void the_card_specification_s_limits_take_their_slots(double thicknessMm, int slots) {
        assertThat(SlotPitch.slots(thicknessMm)).isEqualTo(slots);
    }

    /** By hand: exactly n pitches take n slots, a hundredth of a millimetre more takes one more. */
    @ParameterizedTest
    @CsvSource({"20.32,1", "20.33,2", "40.64,2", "40.65,3", "60.96,3", "0.001,1"})
    void the_pitch_itself_still_belongs_to_its_slot(double thicknessMm, int slots) {
        assertThat(SlotPitch.slots(thicknessMm)).isEqualTo(slots);
    }

    @Test
    void nonsense_is_refused() {
        refused("thicknessMm", () -> SlotPitch.slots(0));
        refused("thicknessMm", () -> SlotPitch.slots(Double.NaN));
    }

    @Property(tries = 1000)
    void a_thicker_card_never_takes_fewer_slots(
            @ForAll @DoubleRange(min = 1, max = 100) double thicknessMm,
            @ForAll @DoubleRange(min = 0, max = 30) double thickerMm) {
        assertThat(SlotPitch.slots(thicknessMm + thickerMm))
                .isGreaterThanOrEqualTo(SlotPitch.slots(thicknessMm));
    }
}
