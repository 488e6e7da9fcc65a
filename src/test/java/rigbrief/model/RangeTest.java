package rigbrief.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import rigbrief.wording.Phrase;

class RangeTest {
    private static final Range ROOM = new Range("room temperature", 5, 40, "°C");

    @Test
    void both_ends_belong_to_the_range() {
        assertThat(ROOM.holds(5)).isTrue();
        assertThat(ROOM.holds(40)).isTrue();
        assertThat(ROOM.remark(40)).isEmpty();
        assertThat(ROOM.remark(5)).isEmpty();
    }

    @Test
    void a_value_beyond_either_end_gets_a_caution_that_names_both_ends() {
        assertThat(ROOM.remark(60).map(Phrase::toString))
                .hasValue(
                        "room temperature of 60 °C is outside 5 to 40 °C, where the model was"
                                + " checked; take it as a guess");
        assertThat(ROOM.holds(4.9)).isFalse();
        assertThat(ROOM.remark(4.9)).isPresent();
    }

    @Test
    void a_number_without_unit_and_an_infinite_one_are_printed_as_they_are() {
        var share = new Range("load share", 0.2, 1, "");

        assertThat(share.remark(1.5).map(Phrase::toString))
                .hasValueSatisfying(it -> assertThat(it).contains("of 1.5 is"));
        assertThat(share.remark(Double.POSITIVE_INFINITY).map(Phrase::toString))
                .hasValueSatisfying(it -> assertThat(it).contains("Infinity is outside 0.2 to 1,"));
        assertThat(share.holds(Double.NaN)).isFalse();
    }

    @Test
    void ends_in_the_wrong_order_or_not_finite_are_refused() {
        assertThatThrownBy(() -> new Range("x", 2, 1, "m"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2.0 to 1.0");
        assertThatThrownBy(() -> new Range("x", 2, Double.POSITIVE_INFINITY, "m"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Range("x", Double.NaN, 1, "m"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Range("x", 1, 1, "m").holds(1)).isTrue();
    }
}
