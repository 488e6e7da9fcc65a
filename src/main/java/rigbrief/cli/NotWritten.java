package rigbrief.cli;

/**
 * A file that the command line asks for can't be written; its message says which, why, what to do.
 */
final class NotWritten extends Exception {
    private static final long serialVersionUID = 1L;

    NotWritten(String message) {
        super(message);
    }
}
