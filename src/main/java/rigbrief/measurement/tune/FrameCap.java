package rigbrief.measurement.tune;

/**
 * A frame cap.
 *
 * @param hundredthsFps the rate, in hundredths of a frame a second
 * @param steadyBy why the screen shows it steadily
 * @param refreshes for {@link SteadyBy#DIVISOR}, how many refreshes each frame is shown; else 1
 */
public record FrameCap(long hundredthsFps, SteadyBy steadyBy, int refreshes) {
    private static final double HUNDREDTHS = 100;

    /** Why a screen shows a rate steadily. */
    public enum SteadyBy {
        /** A frame at every refresh. */
        REFRESH,
        /** A frame at every second, third, ... refresh. */
        DIVISOR,
        /** The screen waits for each frame. */
        VARIABLE,
        /** A usual rate, of which most screens make something. */
        USUAL
    }

    /** The rate in frames/s. */
    public double fps() {
        return hundredthsFps / HUNDREDTHS;
    }
}
