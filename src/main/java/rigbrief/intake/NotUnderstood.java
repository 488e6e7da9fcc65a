package rigbrief.intake;

import rigbrief.diagnostic.Quotation;

/** An answer that could not be taken: what was found, what was expected, what may be done. */
public final class NotUnderstood extends Exception {
    private static final long serialVersionUID = 1L;

    private final String expected;
    private final String advice;

    NotUnderstood(String found, String expected, String advice) {
        super(
                "found %s, expected %s; %s"
                        .formatted(
                                found.isEmpty() ? "nothing" : Quotation.of(found),
                                expected,
                                advice));
        this.expected = expected;
        this.advice = advice;
    }

    /** What would have been an answer. */
    public String expected() {
        return expected;
    }

    /** What to do, in the imperative. */
    public String advice() {
        return advice;
    }
}
