package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.ReplacementCandidates;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Which slots have to change together, told by the rules that break while nothing else changes.
 *
 * <p>A rule depends on the slots it reads alone. So when a candidate in the place of a lost part
 * breaks a rule, no build with that candidate is sound in which all other slots that the rule reads
 * stay: at least one of them has to change. A set of slots that fails this for every candidate of a
 * lost slot need not be searched.
 */
final class Clauses {
    /** For each lost slot: for each way to fill it, the masks of which each must be hit. */
    private final List<Set<Set<Integer>>> ways = new ArrayList<>();

    private final Map<Candidate, Set<Integer>> byCandidate = new IdentityHashMap<>();

    /**
     * The clauses around a build.
     *
     * @param lost slots whose own part can't stay; when there is none, it is the rules that the
     *     build itself breaks which tell
     */
    Clauses(Assessor assessor, ReplacementCandidates candidates, Build build, Set<Slot> lost) {
        if (lost.isEmpty()) {
            ways.add(Set.of(broken(assessor.assess(build), Optional.empty(), lost)));
        }
        for (Slot slot : lost) {
            Set<Set<Integer>> ofSlot = new LinkedHashSet<>();
            for (Candidate candidate : candidates.all(slot)) {
                Build other =
                        candidate.none()
                                ? build.without(slot)
                                : build.with(slot, candidate.partOrNull(), candidate.pieces());
                Set<Integer> masks = broken(assessor.assess(other), Optional.of(slot), lost);
                ofSlot.add(masks);
                byCandidate.put(candidate, masks);
            }
            ways.add(ofSlot);
        }
    }

    /** Whether a set of slots may hold a sound build; false only when it certainly does not. */
    boolean allow(int changing) {
        for (Set<Set<Integer>> ofSlot : ways) {
            if (ofSlot.stream().noneMatch(way -> way.stream().allMatch(m -> (m & changing) != 0))) {
                return false;
            }
        }
        return true;
    }

    /** Whether a candidate may be part of a sound build in which only some slots change. */
    boolean allow(Candidate candidate, int changing) {
        return byCandidate.getOrDefault(candidate, Set.of()).stream()
                .allMatch(mask -> (mask & changing) != 0);
    }

    private static Set<Integer> broken(Assessment it, Optional<Slot> changed, Set<Slot> lost) {
        Set<Integer> masks = new LinkedHashSet<>();
        for (Rule rule : Rules.ALL) {
            if (telling(rule, changed, lost) && rule.forbids(rule.check(it))) {
                masks.add(mask(reads(rule)) & ~changed.map(Clauses::bit).orElse(0));
            }
        }
        return masks;
    }

    /** A rule that reads another lost slot tells nothing, since that one will change anyway. */
    private static boolean telling(Rule rule, Optional<Slot> changed, Set<Slot> lost) {
        for (Slot slot : lost) {
            if (reads(rule).contains(slot) && !changed.equals(Optional.of(slot))) {
                return false;
            }
        }
        return true;
    }

    /** A rule that is asked of any build, however unfinished, looks at them all. */
    private static Set<Slot> reads(Rule rule) {
        return rule.reads().isEmpty() ? Reads.ALL : rule.reads();
    }

    /** One bit per slot, in slot order. */
    static int mask(Set<Slot> slots) {
        int mask = 0;
        for (Slot slot : slots) {
            mask |= bit(slot);
        }
        return mask;
    }

    static int bit(Slot slot) {
        return 1 << slot.ordinal();
    }
}
