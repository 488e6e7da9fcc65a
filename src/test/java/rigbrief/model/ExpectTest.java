package rigbrief.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class ExpectTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    @Test
    void what_is_in_order_comes_back_unchanged() {
        assertThat(Expect.finite(-3, "a")).isEqualTo(-3);
        assertThat(Expect.notNegative(0, "a")).isZero();
        assertThat(Expect.notNegative(Double.MAX_VALUE, "a")).isEqualTo(Double.MAX_VALUE);
        assertThat(Expect.positive(0.5, "a")).isEqualTo(0.5);
        assertThat(Expect.positive(Double.MAX_VALUE, "a")).isEqualTo(Double.MAX_VALUE);
        assertThat(Expect.share(0, "a")).isZero();
        assertThat(Expect.share(1, "a")).isEqualTo(1);
        assertThat(Expect.level(Double.NEGATIVE_INFINITY, "a")).isEqualTo(-INFINITE);
        assertThat(Expect.level(Double.MAX_VALUE, "a")).isEqualTo(Double.MAX_VALUE);
        assertThat(Expect.atLeastOne(1, "a")).isEqualTo(1);
    }

    @Test
    void a_refusal_states_name_value_expectation_and_advice() {
        assertThatThrownBy(() -> Expect.notNegative(-5, "heatW"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "heatW: found -5.0, expected a finite number of 0 or more; check its sign and"
                                + " the unit its name ends with");
    }

    @Test
    void what_is_not_a_number_is_refused_everywhere() {
        assertRefused(() -> Expect.finite(Double.NaN, "a"), "a finite number");
        assertRefused(() -> Expect.notNegative(Double.NaN, "a"), "0 or more");
        assertRefused(() -> Expect.positive(Double.NaN, "a"), "above 0");
        assertRefused(() -> Expect.share(Double.NaN, "a"), "0 to 1");
        assertRefused(() -> Expect.level(Double.NaN, "a"), "a level in decibels");
    }

    @Test
    void the_first_value_beyond_each_limit_is_refused() {
        assertRefused(() -> Expect.finite(INFINITE, "a"), "a finite number");
        assertRefused(() -> Expect.notNegative(-Double.MIN_VALUE, "a"), "0 or more");
        assertRefused(() -> Expect.notNegative(INFINITE, "a"), "0 or more");
        assertRefused(() -> Expect.positive(0, "a"), "above 0");
        assertRefused(() -> Expect.positive(INFINITE, "a"), "above 0");
        assertRefused(() -> Expect.share(Math.nextUp(1.0), "a"), "0 to 1");
        assertRefused(() -> Expect.share(-Double.MIN_VALUE, "a"), "0 to 1");
        assertRefused(() -> Expect.level(INFINITE, "a"), "a level in decibels");
        assertRefused(() -> Expect.atLeastOne(0, "a"), "1 or more");
    }

    private static void assertRefused(ThrowingCallable call, String expectation) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected")
                .hasMessageContaining(expectation);
    }
}
