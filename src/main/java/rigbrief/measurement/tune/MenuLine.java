package rigbrief.measurement.tune;

/**
 * One line of a title's menu as it is to be set.
 *
 * @param name what the title calls it; {@code preset}, {@code rays} or {@code upscaling} where it
 *     is no single setting
 * @param setTo the step to choose
 * @param highest the step with the most work
 * @param reason why it is set so
 * @param visible how much of it is seen, 0 to 3
 * @param cardPercent how much of the card's work at the reference preset that saves against the
 *     highest step, in percent; 0 where it is not a share of that work
 * @param processorPercent the same of the processor's work
 */
public record MenuLine(
        String name,
        String setTo,
        String highest,
        Reason reason,
        int visible,
        double cardPercent,
        double processorPercent) {
    /** The same line for another reason. */
    MenuLine because(Reason other) {
        return new MenuLine(name, setTo, highest, other, visible, cardPercent, processorPercent);
    }

    /** Why something is set as it is. */
    public enum Reason {
        /** It stays at the top. */
        HIGHEST,
        /** It was turned down to hold the target. */
        TURNED_DOWN,
        /** Fewer pixels were drawn to hold the target. */
        FEWER_PIXELS,
        /** Rays draw the same, and better. */
        RAYS_DRAW_IT,
        /** The brief asks for it so. */
        ASKED,
        /** The machine can't do more. */
        MACHINE_CANNOT
    }
}
