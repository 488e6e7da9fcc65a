package rigbrief.measurement.calibrate;

/** What became of a figure of the catalogue. */
public enum Standing {
    /** The measurements say what it is. */
    FITTED("fitted"),
    /** The measurements say next to nothing of it. */
    KEPT("kept"),
    /** The measurements can't tell it from other figures, so it stays. */
    HELD("held");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** The word files and pages use. */
    public String word() {
        return word;
    }
}
