package rigbrief.model;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Asserts that nonsense is refused with a message that states name, value, expectation, advice. */
public final class Refused {
    private Refused() {}

    /** Asserts that the call is refused and that the message begins with the input's name. */
    public static void refused(String what, ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(what)
                .hasMessageContaining("found ")
                .hasMessageContaining(", expected ")
                .hasMessageContaining("; ");
    }
}
