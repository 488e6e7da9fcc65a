package rigbrief.measurement.tune;

/**
 * One scene at the settings that were chosen.
 *
 * @param name the scene
 * @param share share of play time
 * @param fps expected mean rate before any cap, in frames/s; 0 when it can't be drawn
 * @param lowFps lower end of the range in which it will lie with the brief's confidence
 * @param highFps upper end of that range
 * @param sureFps what it reaches with the brief's confidence
 * @param processorBound whether the processor is the slower part there
 * @param pace what becomes of the frame cap there
 */
public record SceneLine(
        String name,
        double share,
        double fps,
        double lowFps,
        double highFps,
        double sureFps,
        boolean processorBound,
        Pace pace) {
    /** What becomes of a cap in a scene. */
    public enum Pace {
        /** No cap was found. */
        UNCAPPED,
        /** The cap is reached. */
        STEADY,
        /** The cap is missed by so little that a screen which waits for frames hides it. */
        HIDDEN_DIP,
        /** The rate drops visibly below the cap. */
        DIP
    }
}
