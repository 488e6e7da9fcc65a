package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.part.Slot;
import rigbrief.presolve.ReplacementCandidates;
import rigbrief.search.Objective;
import rigbrief.search.Standing;

/**
 * Finds the sound build that disturbs a filed one least, and proves it.
 *
 * <p>In this order: what is here already is given up as little as possible, the fewest slots
 * change, the least money is spent, the most utility is had. The sets of slots that may change are
 * walked in the order of the first two, and for each the certifier is asked for the least money;
 * the first set with an answer ends the walk at its level. Sets are passed over when the rules show
 * that they hold no sound build, or when a set that contains them was searched in vain.
 */
final class LeastDisturbance {
    /** From so many further slots on, it is first asked whether any build exists at all. */
    private static final int DEEP = 3;

    private final Situation situation;
    private final ReplacementCandidates candidates;
    private final SlotSearch search;
    private final long limitMinor;
    private final Set<Slot> lost;
    private final List<Slot> flexible = new ArrayList<>();
    private final Clauses clauses;

    /**
     * What was found.
     *
     * @param best the build; empty when none was found
     * @param changing the slots that had to be let go for it
     * @param disturbanceMinor by how much it disturbs what is here
     * @param proven whether no build comes before it in that order, or none exists at all
     */
    record Found(
            Optional<Standing> best, Set<Slot> changing, long disturbanceMinor, boolean proven) {}

    LeastDisturbance(
            Situation situation,
            ReplacementCandidates candidates,
            Clauses clauses,
            SlotSearch search,
            long limitMinor) {
        this.situation = situation;
        this.candidates = candidates;
        this.search = search;
        this.limitMinor = limitMinor;
        this.clauses = clauses;
        this.lost = lost(candidates);
        for (Slot slot : Slot.values()) {
            if (!lost.contains(slot) && candidates.canChange(slot)) {
                flexible.add(slot);
            }
        }
    }

    /** The slots whose own part can't stay. */
    static Set<Slot> lost(ReplacementCandidates candidates) {
        Set<Slot> lost = EnumSet.noneOf(Slot.class);
        for (Slot slot : Slot.values()) {
            if (candidates.own(slot).isEmpty()) {
                lost.add(slot);
            }
        }
        return lost;
    }

    /** Slots that might change beside those. */
    List<Slot> flexible() {
        return flexible;
    }

    Found find() {
        if (lost.stream().anyMatch(slot -> !candidates.canChange(slot))) {
            return new Found(Optional.empty(), lost, 0, true);
        }
        List<Integer> barren = new ArrayList<>();
        boolean known = false;
        Level best = null;
        for (Level level : levels()) {
            if (best != null && !level.equalTo(best)) {
                break;
            }
            if (search.exhausted()) {
                return best == null ? freely() : best.found(false);
            }
            if (!clauses.allow(level.mask) || covered(level.mask, barren)) {
                continue;
            }
            if (!known && best == null && level.changing.size() >= lost.size() + DEEP) {
                known = true;
                Optional<Boolean> any = search.exists(everything(), limitMinor);
                if (any.equals(Optional.of(false))) {
                    return new Found(Optional.empty(), lost, 0, true);
                }
            }
            Optional<Standing> before = best == null ? Optional.empty() : best.standing;
            level.standing =
                    search.best(level.changing, Objective.leastMoney(), limitMinor, before);
            if (level.standing.isEmpty()) {
                barren.add(level.mask);
            } else if (!level.standing.equals(before)) {
                best = level;
            }
        }
        return best == null
                ? new Found(Optional.empty(), lost, 0, search.complete())
                : best.found(search.complete());
    }

    /** When the steps are used up before any set had an answer: whatever costs least. */
    private Found freely() {
        search.extend();
        Set<Slot> all = everything();
        return search.best(all, Objective.leastMoney(), limitMinor, Optional.empty())
                .map(
                        standing -> {
                            Set<Slot> changed =
                                    Changes.between(situation.build(), standing.build());
                            return new Found(
                                    Optional.of(standing),
                                    changed,
                                    situation.disturbanceMinor(changed),
                                    false);
                        })
                .orElseGet(() -> new Found(Optional.empty(), lost, 0, search.complete()));
    }

    private Set<Slot> everything() {
        Set<Slot> all = EnumSet.copyOf(flexible);
        all.addAll(lost);
        return all;
    }

    private static boolean covered(int mask, List<Integer> barren) {
        for (int wider : barren) {
            if ((mask & ~wider) == 0) {
                return true;
            }
        }
        return false;
    }

    /** Every set of slots that holds the lost ones, least disturbance first, then fewest slots. */
    private List<Level> levels() {
        List<Level> levels = new ArrayList<>();
        for (int bits = 0; bits < 1 << flexible.size(); bits++) {
            Set<Slot> changing = EnumSet.copyOf(lost.isEmpty() ? EnumSet.noneOf(Slot.class) : lost);
            for (int i = 0; i < flexible.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    changing.add(flexible.get(i));
                }
            }
            levels.add(new Level(changing, situation.disturbanceMinor(changing)));
        }
        levels.sort(
                Comparator.<Level>comparingLong(level -> level.disturbanceMinor)
                        .thenComparingInt(level -> level.changing.size())
                        .thenComparingInt(level -> level.mask));
        return levels;
    }

    /** A set of slots that may change. */
    private static final class Level {
        private final Set<Slot> changing;
        private final int mask;
        private final long disturbanceMinor;
        private Optional<Standing> standing = Optional.empty();

        Level(Set<Slot> changing, long disturbanceMinor) {
            this.changing = changing;
            this.mask = Clauses.mask(changing);
            this.disturbanceMinor = disturbanceMinor;
        }

        boolean equalTo(Level other) {
            return disturbanceMinor == other.disturbanceMinor
                    && changing.size() == other.changing.size();
        }

        Found found(boolean proven) {
            return new Found(standing, changing, disturbanceMinor, proven);
        }
    }
}
