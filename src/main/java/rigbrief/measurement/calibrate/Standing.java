package rigbrief.measurement.calibrate;

/** What became of a figure of the catalogue. */
public enum Standing {
    /** The measurements say what it is. */
    FITTED("fitted"),
    /** The measurements say next to nothing of it. */
    KEPT("kept"),
    /** The measurements can't tell it from other figures, so it stays. */
    HELD("held");

    /** A figure whose error is this much of its prior's was not found, only repeated. */
    private static final double UNINFORMED = 0.8;

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** Whether measurements say more of a figure than was held of it before. */
    static Standing of(double error, double priorSigma) {
        return error < UNINFORMED * priorSigma ? FITTED : KEPT;
    }

    /** The word files and pages use. */
    public String word() {
        return word;
    }
}
