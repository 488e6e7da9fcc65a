package rigbrief.intake;

import rigbrief.diagnostic.Quotation;
import rigbrief.wording.Phrase;

/** An answer that could not be taken: what was found, what was expected, what may be done. */
public final class NotUnderstood extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Phrase told;
    private final transient Phrase expected;
    private final transient Phrase advice;

    NotUnderstood(String found, Phrase expected, Phrase advice) {
        this(told(found, expected, advice), expected, advice);
    }

    /** Without places of its own, by the keys {@code expected.KEY} and {@code advice.KEY}. */
    static NotUnderstood of(String found, String key) {
        return new NotUnderstood(found, Phrase.of("expected." + key), Phrase.of("advice." + key));
    }

    private NotUnderstood(Phrase told, Phrase expected, Phrase advice) {
        super(told.toString());
        this.told = told;
        this.expected = expected;
        this.advice = advice;
    }

    private static Phrase told(String found, Phrase expected, Phrase advice) {
        return found.isEmpty()
                ? Phrase.of("intake.refused.nothing", expected, advice)
                : Phrase.of("intake.refused", Quotation.of(found), expected, advice);
    }

    /** All of it, to be read in the language of whoever typed. */
    public Phrase told() {
        return told;
    }

    /** What would have been an answer. */
    public Phrase expected() {
        return expected;
    }

    /** What to do, in the imperative. */
    public Phrase advice() {
        return advice;
    }
}
