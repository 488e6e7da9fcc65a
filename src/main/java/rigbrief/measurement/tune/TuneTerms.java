package rigbrief.measurement.tune;

import java.util.OptionalInt;

/**
 * What a builder may say about tuning beside the brief.
 *
 * @param targetFps rate to hold, in frames/s; empty for what the brief asks of each title. With a
 *     target of the builder's own the brief's average and 1 % low no longer bind
 * @param heldIn in how much of a title it has to hold
 * @param variableFromHz where the screen's variable refresh begins, in Hz; 0 for a screen without;
 *     empty for what the build's display states, and unknown without one
 */
public record TuneTerms(OptionalInt targetFps, HeldScenes heldIn, OptionalInt variableFromHz) {
    /** Nothing said. */
    public static final TuneTerms USUAL =
            new TuneTerms(OptionalInt.empty(), HeldScenes.ALL_BUT_WORST, OptionalInt.empty());
}
