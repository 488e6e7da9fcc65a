package rigbrief.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Random moves that change slots together which only make sense together.
 *
 * <p>Most change one slot to a candidate near in price; some swap a whole platform, a card with the
 * supply that feeds it and the case that takes it, a case with cooler and fans, or both drives; a
 * few kick several slots at once.
 */
public final class CoupledMoves implements MoveIteratorFactory<Workbench, CoupledMove> {
    private static final List<List<Slot>> GROUPS =
            List.of(
                    List.of(Slot.PROCESSOR, Slot.BOARD, Slot.MEMORY, Slot.COOLER),
                    List.of(Slot.PROCESSOR, Slot.BOARD, Slot.MEMORY),
                    List.of(Slot.BOARD, Slot.MEMORY),
                    List.of(Slot.GRAPHICS, Slot.SUPPLY),
                    List.of(Slot.GRAPHICS, Slot.SUPPLY, Slot.CASE),
                    List.of(Slot.CASE, Slot.FANS),
                    List.of(Slot.CASE, Slot.COOLER, Slot.FANS),
                    List.of(Slot.CASE, Slot.COOLER, Slot.SUPPLY),
                    List.of(Slot.DRIVE, Slot.SECOND_DRIVE),
                    List.of(Slot.GRAPHICS, Slot.BRACE),
                    List.of(Slot.BOARD, Slot.WIRELESS));

    private static final int SINGLE_PERCENT = 62;
    private static final int KICK_PERCENT = 2;
    private static final int KICKED_SLOTS = 4;
    private static final int NEAR = 6;
    private static final int TRIES = 12;

    private Compatibility compatibility;

    /**
     * Sorting every slot's candidates once a phase instead of once a step made local search 20
     * times as fast.
     */
    @Override
    public void phaseStarted(ScoreDirector<Workbench> director) {
        compatibility = new Compatibility(director.getWorkingSolution().slots().get(0).problem());
    }

    @Override
    public long getSize(ScoreDirector<Workbench> director) {
        long size = 0;
        for (SlotChoice slot : director.getWorkingSolution().slots()) {
            size += slot.getCandidates().size();
        }
        return size * GROUPS.size();
    }

    @Override
    public Iterator<CoupledMove> createOriginalMoveIterator(ScoreDirector<Workbench> director) {
        throw new UnsupportedOperationException(
                "found a request for moves in order, expected random selection; configure it so");
    }

    @Override
    public Iterator<CoupledMove> createRandomMoveIterator(
            ScoreDirector<Workbench> director, Random random) {
        List<SlotChoice> slots = director.getWorkingSolution().slots();
        List<SlotChoice> free = new ArrayList<>();
        for (SlotChoice slot : slots) {
            if (slot.getCandidates().size() > 1) {
                free.add(slot);
            }
        }
        return free.isEmpty()
                ? List.<CoupledMove>of().iterator()
                : new Endless(slots, free, random, compatibility);
    }

    /** Draws moves without end; the solver stops by its count of moves. */
    private static final class Endless implements Iterator<CoupledMove> {
        private final List<SlotChoice> slots;
        private final List<SlotChoice> free;
        private final Random random;
        private final Compatibility compatibility;

        Endless(
                List<SlotChoice> slots,
                List<SlotChoice> free,
                Random random,
                Compatibility compatibility) {
            this.slots = slots;
            this.free = free;
            this.random = random;
            this.compatibility = compatibility;
        }

        @Override
        public boolean hasNext() {
            return true;
        }

        @Override
        public CoupledMove next() {
            int dice = random.nextInt(100);
            if (dice < SINGLE_PERCENT) {
                SlotChoice slot = free.get(random.nextInt(free.size()));
                return new CoupledMove(List.of(slot), List.of(near(slot)));
            }
            if (dice < SINGLE_PERCENT + KICK_PERCENT) {
                return kick();
            }
            return coupled(GROUPS.get(random.nextInt(GROUPS.size())));
        }

        private Candidate near(SlotChoice slot) {
            List<Candidate> all = slot.getCandidates();
            if (random.nextInt(3) == 0) {
                return all.get(random.nextInt(all.size()));
            }
            List<Candidate> byPrice = compatibility.byPrice(slot.slot());
            int at = compatibility.rank(slot.getCandidate()) + random.nextInt(2 * NEAR + 1) - NEAR;
            return byPrice.get(Math.max(0, Math.min(byPrice.size() - 1, at)));
        }

        private CoupledMove kick() {
            List<SlotChoice> changed = new ArrayList<>();
            List<Candidate> candidates = new ArrayList<>();
            for (int i = 0; i < KICKED_SLOTS; i++) {
                SlotChoice slot = free.get(random.nextInt(free.size()));
                if (!changed.contains(slot)) {
                    changed.add(slot);
                    candidates.add(near(slot));
                }
            }
            return new CoupledMove(changed, candidates);
        }

        /**
         * Each slot of the group in turn gets a candidate that fits those already drawn, if a few
         * tries find one.
         */
        private CoupledMove coupled(List<Slot> group) {
            List<SlotChoice> changed = new ArrayList<>(group.size());
            List<Candidate> candidates = new ArrayList<>(group.size());
            Candidate[] drawn = new Candidate[slots.size()];
            for (Slot name : group) {
                SlotChoice slot = slots.get(name.ordinal());
                Candidate candidate = near(slot);
                drawn[name.ordinal()] = candidate;
                for (int i = 0; i < TRIES && !compatibility.fits(drawn, name); i++) {
                    List<Candidate> all = slot.getCandidates();
                    candidate = all.get(random.nextInt(all.size()));
                    drawn[name.ordinal()] = candidate;
                }
                changed.add(slot);
                candidates.add(candidate);
            }
            return new CoupledMove(changed, candidates);
        }
    }
}
