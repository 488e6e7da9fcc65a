package rigbrief.model.speed;

import rigbrief.model.Expect;

/**
 * The time a finite task takes.
 *
 * <p>Formula: (serial / rate of one core + parallel / rate of all + graphics time) x memory
 * overflow factor + bytes / drive rate.
 *
 * <p>Source: {@link Amdahl} and {@link Roofline} for the parts. Common practice: the stages follow
 * each other, and only computing suffers from a memory that is too small.
 */
public final class TaskTime {
    private TaskTime() {}

    /**
     * Gives the time of a task.
     *
     * @param processorS the processor's time, as from {@link FrameTime#processorS}, s
     * @param graphicsS the card's time, as from {@link Roofline#seconds}, s; 0 without graphics
     *     work
     * @param driveBytes bytes read and written
     * @param driveBytesPerS rate of the drive, bytes per second
     * @param overflowFactor as from {@link MemoryOverflow#factor}, 1 or more
     * @return s; infinite for work without a rate
     * @throws IllegalArgumentException for a negative value or a factor below 1
     */
    public static double seconds(
            double processorS,
            double graphicsS,
            double driveBytes,
            double driveBytesPerS,
            double overflowFactor) {
        if (!(overflowFactor >= 1)) {
            throw new IllegalArgumentException(
                    "overflowFactor: found %s, expected 1 or more; 1 means enough memory"
                            .formatted(overflowFactor));
        }
        double computingS = notBelowZero(processorS) + notBelowZero(graphicsS);
        return computingS * overflowFactor + Roofline.workSeconds(driveBytes, driveBytesPerS);
    }

    private static double notBelowZero(double timeS) {
        if (!(timeS >= 0)) {
            Expect.notNegative(timeS, "timeS");
        }
        return timeS;
    }
}
