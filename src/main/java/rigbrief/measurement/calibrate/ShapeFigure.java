package rigbrief.measurement.calibrate;

/** A figure of how a title's speed comes together, apart from how much work it is. */
public enum ShapeFigure {
    /** How processor time falls with the memory rate. */
    MEMORY_EXPONENT("memory exponent"),
    /** Spread of frame times within a scene, which the 1 % low shows. */
    SPREAD("spread");

    private final String word;

    ShapeFigure(String word) {
        this.word = word;
    }

    /** The word files and pages use. */
    public String word() {
        return word;
    }
}
