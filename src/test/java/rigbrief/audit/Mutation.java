package rigbrief.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.audit.ProposedMachine.Request;
import rigbrief.part.Slot;

/**
 * A change to a sound machine after which one rule has to speak.
 *
 * @param rule id of the rule
 * @param how what is changed, in words
 * @param from the machine before
 * @param change the change
 */
record Mutation(
        String rule, String how, ProposedMachine from, UnaryOperator<ProposedMachine> change) {

    /** A mutation of any sort. */
    static Mutation on(
            String rule, String how, ProposedMachine from, UnaryOperator<ProposedMachine> change) {
        return new Mutation(rule, how, from, change);
    }

    /** A mutation of one cell of one part. */
    static Mutation cell(String rule, ProposedMachine from, Slot slot, String column, String text) {
        String how = "%s of %s is %s".formatted(column, slot.word(), text);
        return new Mutation(rule, how, from, it -> it.cell(slot, column, text));
    }

    /** A mutation of the brief. */
    static Mutation asked(String rule, String how, ProposedMachine from, Request request) {
        return new Mutation(rule, how, from, it -> it.asked(request));
    }

    /** All mutations of one rule; none for a rule that nobody wrote any for. */
    static List<Mutation> of(String rule) {
        return all().stream().filter(it -> it.rule().equals(rule)).toList();
    }

    /** Every mutation. */
    static List<Mutation> all() {
        List<Mutation> all = new ArrayList<>(FitMutations.ALL);
        all.addAll(NeedMutations.ALL);
        return all;
    }

    /** At which levels the audit of the machine before names the rule. */
    List<Level> before() {
        return levels(from.audit());
    }

    /** At which levels the audit of the changed machine names the rule. */
    List<Level> after() {
        return levels(change.apply(from).audit());
    }

    @Override
    public String toString() {
        return "%s: %s (%s)".formatted(rule, how, from);
    }

    private List<Level> levels(Audit audit) {
        return audit.findings().stream()
                .filter(it -> it.rule().equals(rule))
                .map(AuditFinding::level)
                .toList();
    }
}
