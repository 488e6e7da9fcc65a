package rigbrief.model.link;

import rigbrief.model.Expect;

/**
 * One display mode with its blanking: what a link must carry without pause.
 *
 * @param pixelClockHz pixels per second, blanking included, in Hz
 * @param horizontalTotal pixels per line, blanking included
 * @param verticalTotal lines per picture, blanking included
 */
public record DisplayTiming(long pixelClockHz, int horizontalTotal, int verticalTotal) {

    /** Refuses a mode without pixels or without a clock. */
    public DisplayTiming {
        Expect.positive(pixelClockHz, "pixelClockHz");
        Expect.atLeastOne(horizontalTotal, "horizontalTotal");
        Expect.atLeastOne(verticalTotal, "verticalTotal");
    }

    /**
     * Gives the pictures per second that the rounded clock really makes.
     *
     * @return Hz
     */
    public double refreshHz() {
        return (double) pixelClockHz / ((double) horizontalTotal * verticalTotal);
    }

    /**
     * Gives the bits per second that the mode needs, blanking included.
     *
     * @param bitsPerPixel 24 for three colours of 8 bits, 30 for 10 bits, 8 after compression
     * @return bit/s, exact
     */
    public long bitsPerSecond(int bitsPerPixel) {
        return Math.multiplyExact(pixelClockHz, Expect.atLeastOne(bitsPerPixel, "bitsPerPixel"));
    }
}
