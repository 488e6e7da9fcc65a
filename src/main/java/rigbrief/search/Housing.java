package rigbrief.search;

import java.util.List;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Slots in a case while they are open: heat and sound couple them, so that the best of each by
 * itself is far better than any of them together.
 */
interface Housing {
    /** No levels. */
    int[] NONE = {};

    /** The one that suits an objective. */
    static Housing of(OpenSlots slots, Problem problem, List<Slot> order, Rounds rounds) {
        boolean inOrder =
                order.indexOf(Slot.CASE) < order.indexOf(Slot.COOLER)
                        && order.indexOf(Slot.COOLER) < order.indexOf(Slot.FANS);
        if (!inOrder) {
            return new Apart();
        }
        Outlook outlook = problem.tables().outlook(problem);
        return slots.points()
                ? new HousingSlots(slots, outlook, order, rounds)
                : new LeastHousing(slots, outlook.sound(), order, rounds);
    }

    /** Levels of the slots that {@link #couple} couples at a level; empty for none. */
    int[] slots(int level);

    /** What is known of the slots coupled at a level, while all are open; null for nothing. */
    Couple couple(int level);

    /** Reckons beside the pair that is decided; false when nothing will do there. */
    boolean besidePair(Unfinished unfinished);

    /** Whether that was reckoned before, so that it costs next to nothing. */
    boolean knows(Outlook.Pair pair);

    /** Forgets what is known beside a processor and a card. */
    void forgetPair();

    /** Takes note of what is decided at a level. */
    void pass(int level, Candidate candidate);

    /** Reckons with the board, if that is what was decided at a level. */
    void board(int level);

    /**
     * Reckons with what a round of reckoning an open slot brought; false when that leaves a slot
     * without any.
     */
    boolean reckon(int level, int open, int round, Unfinished unfinished);

    /** How many coolers were tried in cases so far. */
    long tried();

    /** Where a slot without a choice comes first, each counts by itself. */
    final class Apart implements Housing {
        private Apart() {}

        @Override
        public int[] slots(int level) {
            return NONE;
        }

        @Override
        public Couple couple(int level) {
            return null;
        }

        @Override
        public boolean besidePair(Unfinished unfinished) {
            return true;
        }

        @Override
        public boolean knows(Outlook.Pair pair) {
            return true;
        }

        @Override
        public void forgetPair() {}

        @Override
        public void pass(int level, Candidate candidate) {}

        @Override
        public void board(int level) {}

        @Override
        public boolean reckon(int level, int open, int round, Unfinished unfinished) {
            return true;
        }

        @Override
        public long tried() {
            return 0;
        }
    }
}
