package rigbrief.proposal;

import java.time.Duration;
import java.util.Optional;

/**
 * How hard to search.
 *
 * @param seed seed of every random choice
 * @param moves moves of local search, where the certifier comes across no build
 * @param steps steps of the certifier for each tier
 * @param time ceiling on time; empty for none. Only this one depends on the machine, and its use is
 *     reported
 */
public record SearchLimits(long seed, long moves, long steps, Optional<Duration> time) {
    /** What suits a catalogue of ordinary size. */
    public static SearchLimits usual() {
        return new SearchLimits(1, 1_500, 150_000, Optional.empty());
    }
}
