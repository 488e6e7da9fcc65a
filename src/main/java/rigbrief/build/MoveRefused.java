package rigbrief.build;

/** A move that makes no sense; its message says what was found, what was expected, what to do. */
public final class MoveRefused extends Exception {
    private static final long serialVersionUID = 1L;

    /** A refusal in words. */
    public MoveRefused(String message) {
        super(message);
    }
}
