package rigbrief.bench.export;

import java.util.List;
import rigbrief.part.Slot;

/**
 * A no-good: no build takes all its slots out of these candidates.
 *
 * @param slots the slots
 * @param candidates for each of them some places in its domain
 */
public record Box(List<Slot> slots, List<int[]> candidates) {}
