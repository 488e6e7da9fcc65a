package rigbrief.presolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Pricing;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.rule.Rule;

/**
 * Finds what may fill each slot: parts on offer within the brief's terms that no rule refuses
 * whatever the other slots hold.
 */
public final class CandidateFinder {
    private static final String NO_OFFER = "in-stock";

    private final Assessor assessor;
    private final List<Rule> rules;

    /** A finder that asks the given rules. */
    public CandidateFinder(Assessor assessor, List<Rule> rules) {
        this.assessor = assessor;
        this.rules = rules;
    }

    /** The candidates of every slot. */
    public Candidates find() {
        Map<Slot, List<Candidate>> bySlot = new EnumMap<>(Slot.class);
        Map<Slot, Map<String, Integer>> refused = new EnumMap<>(Slot.class);
        for (Slot slot : Slot.values()) {
            Map<String, Integer> causes = new LinkedHashMap<>();
            List<Candidate> list = of(slot, causes);
            bySlot.put(slot, list);
            if (list.isEmpty()) {
                refused.put(slot, mostFirst(causes));
            }
        }
        return new Candidates(bySlot, refused);
    }

    private List<Candidate> of(Slot slot, Map<String, Integer> causes) {
        List<Candidate> list = new ArrayList<>();
        for (Kept kept : assessor.brief().keep()) {
            if (kept.slot() == slot) {
                long[] free = new long[assessor.pricing().supplierSets().length];
                list.add(new Candidate(slot, 0, kept.part(), kept.pieces(), free));
                return list;
            }
        }
        if (!slot.required()) {
            addIfAllowed(slot, null, 0, list, causes);
        }
        for (Part part : assessor.catalogue().parts(slot.kind())) {
            for (int pieces = least(slot); pieces <= most(slot, part); pieces++) {
                addIfAllowed(slot, part, pieces, list, causes);
            }
        }
        return list;
    }

    private int least(Slot slot) {
        return slot == Slot.DISPLAY ? displays() : 1;
    }

    private int most(Slot slot, Part part) {
        return slot == Slot.DISPLAY ? displays() : slot.mostPieces();
    }

    private int displays() {
        Brief brief = assessor.brief();
        return brief.screen().map(screen -> screen.count()).orElse(1);
    }

    private void addIfAllowed(
            Slot slot, Part part, int pieces, List<Candidate> list, Map<String, Integer> causes) {
        int sets = assessor.pricing().supplierSets().length;
        long[] minor = part == null ? new long[sets] : assessor.pricing().minorBySet(part, pieces);
        if (part != null && !onOffer(minor)) {
            causes.merge(NO_OFFER, 1, Integer::sum);
            return;
        }
        Build alone = part == null ? Build.empty() : Build.empty().with(slot, part, pieces);
        String cause = refusal(slot, assessor.assess(alone));
        if (cause == null) {
            list.add(new Candidate(slot, list.size(), part, pieces, minor));
        } else {
            causes.merge(cause, 1, Integer::sum);
        }
    }

    private static boolean onOffer(long[] minor) {
        for (long amount : minor) {
            if (amount < Pricing.notToBeHad()) {
                return true;
            }
        }
        return false;
    }

    private String refusal(Slot slot, Assessment alone) {
        for (Rule rule : rules) {
            boolean decided =
                    rule.reads().contains(slot)
                            && (rule.reads().size() == 1 || rule.decidesEarly());
            if (decided && rule.forbids(rule.check(alone))) {
                return rule.info().id();
            }
        }
        return null;
    }

    private static Map<String, Integer> mostFirst(Map<String, Integer> causes) {
        Map<String, Integer> sorted = new LinkedHashMap<>();
        causes.entrySet().stream()
                .sorted(
                        Comparator.comparing(Map.Entry<String, Integer>::getValue)
                                .reversed()
                                .thenComparing(Map.Entry::getKey))
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return sorted;
    }
}
