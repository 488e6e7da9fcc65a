package rigbrief.measurement.calibrate;

import java.util.Optional;

/** What of a machine a workload leans on; each has a demand on one side and a rate on the other. */
public enum Channel {
    /** Arithmetic and memory traffic of the card. */
    GRAPHICS("graphics"),
    /** Ray work of the card. */
    RAYS("rays"),
    /** Work of the processor, on one thread and on all. */
    PROCESSOR("processor"),
    /** Reading and writing of the drive. */
    DRIVE("drive");

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
        return this == GRAPHICS || this == RAYS;
    }

    /**
     * The channel under which a machine's own piece of the part goes; empty for the drive, whose
     * pieces differ less than the few tasks that move data can show.
     */
    Optional<Channel> piece() {
        return this == DRIVE ? Optional.empty() : Optional.of(ofCard() ? GRAPHICS : this);
    }
}
