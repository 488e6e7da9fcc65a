package rigbrief.cli;

/** What the exit status of the program means. */
public enum ExitStatus {
    /** Everything asked for was done. */
    DONE(0, "done"),
    /** The program is at fault. */
    INTERNAL_FAULT(1, "internal fault; please report it"),
    /** The command line makes no sense, or a file named on it can't be written. */
    WRONG_USE(2, "wrong use of the command line, or no writing where it says"),
    /** A file can't be used; every fault was listed. */
    BAD_INPUT(3, "bad input file"),
    /** An answer, not an error: the brief asks for what can't be had. */
    IMPOSSIBLE(4, "no build meets the musts"),
    /** The judged build breaks a rule. */
    BREAKS(5, "the audited, accepted or replaced build fails");

    private final int code;
    private final String meaning;

    ExitStatus(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    /** The number a shell sees. */
    public int code() {
        return code;
    }

    /** What it means, in a few words. */
    public String meaning() {
        return meaning;
    }

    static ExitStatus of(int code) {
        for (ExitStatus status : values()) {
            if (status.code == code) {
                return status;
            }
        }
        throw new IllegalArgumentException(
                "found exit status %d, expected 0 to 5; add it to the list".formatted(code));
    }
}
