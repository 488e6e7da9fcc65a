package rigbrief.search;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Slot;

/**
 * When the losses of an open slot are reckoned anew. Level n stands for n decided slots; mutable,
 * for within a level reckoning comes after a first bound.
 */
final class Rounds {
    private static final int LEVELS = Slot.values().length;

    /** Rounds of a slot at most. */
    static final int MOST = 2;

    /**
     * Slots whose losses are reckoned anew once others are decided, for some in two rounds: each
     * round waits for all of its slots.
     */
    private static final Map<Slot, List<List<Slot>>> RECKONED_BEHIND =
            new EnumMap<>(
                    Map.of(
                            Slot.CASE,
                            List.of(List.of(Slot.SUPPLY), List.of(Slot.SUPPLY, Slot.MEMORY)),
                            Slot.MEMORY,
                            List.of(List.of(Slot.BOARD)),
                            Slot.DRIVE,
                            List.of(List.of(Slot.BOARD)),
                            Slot.SECOND_DRIVE,
                            List.of(List.of(Slot.BOARD, Slot.DRIVE)),
                            Slot.COOLER,
                            List.of(
                                    List.of(Slot.CASE, Slot.SUPPLY),
                                    List.of(Slot.CASE, Slot.SUPPLY, Slot.MEMORY)),
                            Slot.FANS,
                            List.of(
                                    List.of(Slot.CASE, Slot.COOLER, Slot.SUPPLY),
                                    List.of(Slot.CASE, Slot.COOLER, Slot.SUPPLY, Slot.MEMORY))));

    /** The same where only money counts: nothing is lost there, but not everything will do. */
    private static final Map<Slot, List<List<Slot>>> RECKONED_FOR_MONEY =
            new EnumMap<>(
                    Map.of(
                            Slot.CASE,
                            List.of(List.of(Slot.BOARD, Slot.MEMORY)),
                            Slot.MEMORY,
                            List.of(List.of(Slot.BOARD)),
                            Slot.COOLER,
                            List.of(List.of(Slot.CASE, Slot.MEMORY))));

    private final int[][] behind = new int[LEVELS][MOST];
    private final boolean[] reckoned = new boolean[LEVELS];

    Rounds(List<Slot> order, boolean points) {
        Map<Slot, List<List<Slot>>> waits = points ? RECKONED_BEHIND : RECKONED_FOR_MONEY;
        for (int level = 0; level < LEVELS; level++) {
            List<List<Slot>> rounds = waits.getOrDefault(order.get(level), List.of());
            for (int round = 0; round < MOST; round++) {
                behind[level][round] =
                        round < rounds.size()
                                ? rounds.get(round).stream()
                                        .mapToInt(order::indexOf)
                                        .max()
                                        .orElse(LEVELS)
                                : LEVELS;
            }
        }
    }

    /** A level's slot is decided anew. */
    void begin(int level) {
        reckoned[level] = false;
    }

    /** What waits for a level's slot is reckoned from now on. */
    void reckon(int level) {
        reckoned[level] = true;
    }

    /** The round in which an open slot is reckoned once a level's slot is decided; -1 for none. */
    int now(int level, int open) {
        for (int round = MOST - 1; round >= 0; round--) {
            if (behind[open][round] == level) {
                return round;
            }
        }
        return -1;
    }

    /** The last round of an open slot that a level has seen; -1 for none. */
    int seen(int level, int open) {
        for (int round = MOST - 1; round >= 0; round--) {
            if (past(level, behind[open][round])) {
                return round;
            }
        }
        return -1;
    }

    /** Whether a level has seen what was reckoned behind another one. */
    boolean past(int level, int other) {
        return level > other + 1 || (level == other + 1 && reckoned[other]);
    }
}
