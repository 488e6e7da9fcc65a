package rigbrief.presolve;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import rigbrief.assess.Assessor;
import rigbrief.assess.Pricing;
import rigbrief.build.Build;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * What may fill each slot of a build that is to change as little as possible.
 *
 * <p>A slot that stays holds the build's own part alone, which no other can dominate; a slot that
 * may change holds the own part, while it can be had, beside everything else. Prices tell what was
 * paid before and what is lost by sending a part back.
 */
public final class ReplacementCandidates {
    private final Map<Slot, List<Candidate>> free = new EnumMap<>(Slot.class);
    private final Map<Slot, Candidate> own = new EnumMap<>(Slot.class);

    /**
     * The candidates around a build.
     *
     * @param assessor an assessor that knows what is settled
     * @param usual what might fill each slot were nothing chosen yet
     * @param build the build as it was chosen
     */
    public ReplacementCandidates(Assessor assessor, Candidates usual, Build build) {
        for (Slot slot : Slot.values()) {
            Part part = build.has(slot) ? build.part(slot) : null;
            List<Candidate> all = new ArrayList<>();
            if (kept(assessor, slot)) {
                all.addAll(usual.of(slot));
                own.put(slot, all.get(0));
                free.put(slot, all);
                continue;
            }
            for (Candidate candidate : usual.of(slot)) {
                if (!same(candidate, part, build.pieces(slot))) {
                    all.add(priced(assessor, slot, all.size(), candidate));
                }
            }
            long[] minor = assessor.pricing().minorBySet(slot, part, build.pieces(slot));
            boolean wanted = part != null || !slot.required();
            if (wanted && onOffer(minor)) {
                own.put(slot, new Candidate(slot, 0, part, build.pieces(slot), minor));
                all.add(new Candidate(slot, all.size(), part, build.pieces(slot), minor));
            }
            free.put(slot, all);
        }
    }

    private static boolean kept(Assessor assessor, Slot slot) {
        return assessor.brief().keep().stream().anyMatch(kept -> kept.slot() == slot);
    }

    private static boolean same(Candidate candidate, Part part, int pieces) {
        if (candidate.none() || part == null) {
            return candidate.none() && part == null;
        }
        return candidate.partOrNull().id().equals(part.id()) && candidate.pieces() == pieces;
    }

    private static Candidate priced(Assessor assessor, Slot slot, int index, Candidate candidate) {
        Part part = candidate.partOrNull();
        long[] minor = assessor.pricing().minorBySet(slot, part, candidate.pieces());
        return new Candidate(slot, index, part, candidate.pieces(), minor);
    }

    private static boolean onOffer(long[] minor) {
        for (long amount : minor) {
            if (amount < Pricing.notToBeHad()) {
                return true;
            }
        }
        return false;
    }

    /** The build's own way to fill a slot; empty when it can't be had any more. */
    public Optional<Candidate> own(Slot slot) {
        return Optional.ofNullable(own.get(slot));
    }

    /** Every way to fill a slot that may change, the own one last. */
    public List<Candidate> all(Slot slot) {
        return free.get(slot);
    }

    /** Whether a slot has any other way to be filled than the build's own. */
    public boolean canChange(Slot slot) {
        return free.get(slot).size() > (own.containsKey(slot) ? 1 : 0);
    }

    /**
     * The candidates when some slots may change and all others stay.
     *
     * @param changing slots that may change
     * @param passes asked of every candidate of these; who fails is left out
     */
    public Candidates changing(Set<Slot> changing, Predicate<Candidate> passes) {
        Map<Slot, List<Candidate>> bySlot = new EnumMap<>(Slot.class);
        Map<Slot, Map<String, Integer>> refused = new EnumMap<>(Slot.class);
        for (Slot slot : Slot.values()) {
            List<Candidate> list =
                    changing.contains(slot)
                            ? passing(free.get(slot), passes)
                            : own(slot).stream().toList();
            bySlot.put(slot, list);
            if (list.isEmpty()) {
                refused.put(slot, new LinkedHashMap<>());
            }
        }
        return new Candidates(bySlot, refused);
    }

    /** A slot's candidates are numbered without gaps, so what is left of them is numbered anew. */
    private static List<Candidate> passing(List<Candidate> all, Predicate<Candidate> passes) {
        if (all.stream().allMatch(passes)) {
            return all;
        }
        List<Candidate> left = new ArrayList<>();
        for (Candidate candidate : all) {
            if (passes.test(candidate)) {
                left.add(
                        new Candidate(
                                candidate.slot(),
                                left.size(),
                                candidate.partOrNull(),
                                candidate.pieces(),
                                candidate.minorBySet()));
            }
        }
        return left;
    }
}
