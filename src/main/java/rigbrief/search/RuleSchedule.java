package rigbrief.search;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rigbrief.part.Slot;
import rigbrief.rule.Rule;

/** Which rules are asked at which level of the certifier, and what each of them narrows. */
final class RuleSchedule {
    private static final int LEVELS = Slot.values().length;

    private final List<Slot> order;
    private final List<List<Rule>> askedAt = new ArrayList<>();
    private final List<List<Narrowing>> narrowing = new ArrayList<>();

    RuleSchedule(List<Rule> rules, List<Slot> order) {
        this.order = order;
        for (int level = 0; level < LEVELS; level++) {
            askedAt.add(new ArrayList<>());
            narrowing.add(new ArrayList<>());
        }
        for (Rule rule : rules) {
            if (rule.reads().size() < 2) {
                // Rules about several slots narrow the last of them instead.
                askedAt.get(lastLevel(rule)).add(rule);
            }
            boolean fewSlots = rule.reads().size() > 2 && rule.reads().size() < LEVELS;
            if (fewSlots && rule.decidesEarly()) {
                rule.reads().forEach(slot -> askedAt.get(order.indexOf(slot)).add(rule));
            }
            addNarrowing(rule, rule.reads());
            if (!rule.onlyWorsenedBy().isEmpty()) {
                addRechecks(rule);
                EnumSet<Slot> core = EnumSet.copyOf(rule.reads());
                core.removeAll(rule.onlyWorsenedBy());
                addNarrowing(rule, core);
            }
        }
    }

    /**
     * A rule that narrows one open slot once all the others it reads are decided.
     *
     * @param rule the rule
     * @param open level of the open slot
     */
    record Narrowing(Rule rule, int open) {}

    /** Rules to ask once the slot of a level is decided. */
    List<Rule> askedAt(int level) {
        return askedAt.get(level);
    }

    /** Rules that narrow an open slot once the slot of a level is decided. */
    List<Narrowing> narrowing(int level) {
        return narrowing.get(level);
    }

    /** A rule is asked again whenever a slot is decided that can only make it worse. */
    private void addRechecks(Rule rule) {
        boolean core = false;
        int open = rule.reads().size() - rule.onlyWorsenedBy().size();
        for (int level = 0; level < LEVELS; level++) {
            Slot slot = order.get(level);
            if (core && rule.onlyWorsenedBy().contains(slot)) {
                askedAt.get(level).add(rule);
            }
            if (rule.reads().contains(slot) && !rule.onlyWorsenedBy().contains(slot)) {
                open--;
                core = open == 0;
            }
        }
    }

    private void addNarrowing(Rule rule, Set<Slot> slots) {
        int last = -1;
        int before = -1;
        for (int level = 0; level < LEVELS; level++) {
            if (slots.contains(order.get(level))) {
                before = last;
                last = level;
            }
        }
        boolean paired = slots.size() == 2 && rule.reads().size() == 2;
        if (before >= 0 && !paired) {
            narrowing.get(before).add(new Narrowing(rule, last));
        }
    }

    private int lastLevel(Rule rule) {
        int last = 0;
        for (int level = 0; level < LEVELS; level++) {
            if (rule.reads().contains(order.get(level))) {
                last = level;
            }
        }
        return rule.reads().isEmpty() ? LEVELS - 1 : last;
    }
}
