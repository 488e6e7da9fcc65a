package rigbrief.measurement.calibrate;

/** What of a machine a workload leans on; each has a demand on one side and a rate on the other. */
public enum Channel {
    /** Arithmetic and memory traffic of the card. */
    GRAPHICS("graphics"),
    /** Ray work of the card. */
    RAYS("rays"),
    /** Work of the processor, on one thread and on all. */
    PROCESSOR("processor");

    private final String word;

    Channel(String word) {
        this.word = word;
    }

    /** The word files and pages use. */
    public String word() {
        return word;
    }

    /** Whether it is the card's. */
    public boolean ofCard() {
        return this != PROCESSOR;
    }
}
