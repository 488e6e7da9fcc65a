package rigbrief.measurement;

/**
 * What a log of frame times amounts to.
 *
 * @param frames number of frames
 * @param seconds duration, s
 * @param averageFps total frames over total time, 1/s
 * @param lowFps rate at the 99th percentile of frame time, counted in frames by nearest rank, 1/s
 * @param longestMs longest frame time, ms
 */
public record FrameLog(
        long frames, double seconds, double averageFps, double lowFps, double longestMs) {}
