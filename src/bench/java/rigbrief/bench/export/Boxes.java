package rigbrief.bench.export;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import rigbrief.part.Slot;
import rigbrief.rule.Rule;

/**
 * Makes no-goods from a broken rule, as wide as the rule itself confirms: a candidate is let into
 * the box when the rule forbids it beside every combination that is already inside.
 */
final class Boxes {
    private final Instance instance;
    private final long mostQuestions;

    Boxes(Instance instance, long mostQuestions) {
        this.instance = instance;
        this.mostQuestions = mostQuestions;
    }

    /** A no-good that holds a choice which a rule forbids. */
    Box around(Rule rule, int[] choice) {
        List<Slot> slots = core(rule, choice);
        slots.sort(Comparator.comparingInt(slot -> instance.domain(slot).size()));
        List<int[]> inside = new ArrayList<>();
        for (Slot slot : slots) {
            inside.add(new int[] {choice[slot.ordinal()]});
        }
        for (int s = 0; s < slots.size(); s++) {
            widen(rule, choice, slots, inside, s);
        }
        return new Box(List.copyOf(slots), inside);
    }

    /** Without the slots that can only make it worse, where the rule is broken without them. */
    private List<Slot> core(Rule rule, int[] choice) {
        EnumSet<Slot> core = EnumSet.noneOf(Slot.class);
        core.addAll(Instance.scope(rule));
        core.removeAll(rule.onlyWorsenedBy());
        boolean without =
                !rule.onlyWorsenedBy().isEmpty() && instance.judge().broken(rule, choice, core);
        return new ArrayList<>(without ? core : Instance.scope(rule));
    }

    private void widen(Rule rule, int[] choice, List<Slot> slots, List<int[]> inside, int s) {
        Slot slot = slots.get(s);
        int size = instance.domain(slot).size();
        long within = 1;
        for (int d = 0; d < s; d++) {
            within *= inside.get(d).length;
        }
        if (size == 1 || within * size > mostQuestions) {
            return;
        }
        int[] trial = choice.clone();
        List<Integer> let = new ArrayList<>();
        for (int c = 0; c < size; c++) {
            trial[slot.ordinal()] = c;
            if (c == choice[slot.ordinal()] || all(rule, trial, slots, inside, 0, s)) {
                let.add(c);
            }
        }
        inside.set(s, let.stream().mapToInt(Integer::intValue).toArray());
    }

    private boolean all(
            Rule rule, int[] trial, List<Slot> slots, List<int[]> inside, int d, int end) {
        if (d == end) {
            return instance.judge().broken(rule, trial, slots);
        }
        int before = trial[slots.get(d).ordinal()];
        for (int c : inside.get(d)) {
            trial[slots.get(d).ordinal()] = c;
            if (!all(rule, trial, slots, inside, d + 1, end)) {
                trial[slots.get(d).ordinal()] = before;
                return false;
            }
        }
        trial[slots.get(d).ordinal()] = before;
        return true;
    }
}
