package rigbrief.file;

import java.util.Optional;

/**
 * Which column of a log holds the frame times, and in what unit.
 *
 * @param name header of the column; empty where the log has one column alone
 * @param inSeconds whether times are in seconds rather than milliseconds
 */
public record FrameColumn(Optional<String> name, boolean inSeconds) {
    /** The only column, or {@code frame_ms}, in milliseconds. */
    public static FrameColumn usual() {
        return new FrameColumn(Optional.empty(), false);
    }
}
