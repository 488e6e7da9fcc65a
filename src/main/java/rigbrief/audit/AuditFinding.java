package rigbrief.audit;

import java.util.List;
import java.util.Optional;
import rigbrief.quantity.Unit;
import rigbrief.rule.Margin;
import rigbrief.wording.Phrase;

/**
 * One rule's remark in an audit.
 *
 * @param rule id of the rule
 * @param title the rule's title
 * @param level how serious
 * @param excess by how much a breach breaks the rule, in its unit; 0 otherwise
 * @param unit unit of the excess
 * @param phrase what to tell
 * @param source where the limit comes from
 * @param parts ids of the parts in the slots the rule reads; empty for a rule that reads them all
 * @param margin what there is against what is needed
 */
public record AuditFinding(
        String rule,
        String title,
        Level level,
        long excess,
        Unit unit,
        Phrase phrase,
        String source,
        List<String> parts,
        Optional<Margin> margin) {
    public AuditFinding {
        parts = List.copyOf(parts);
    }

    /** A caution about something that breaks no rule. */
    static AuditFinding caution(
            String under, String title, Phrase phrase, String source, List<String> parts) {
        return new AuditFinding(
                under,
                title,
                Level.CAUTION,
                0,
                Unit.CONDITION,
                phrase,
                source,
                parts,
                Optional.empty());
    }

    /** What to tell, in English. */
    public String text() {
        return phrase.toString();
    }

    /** How serious a remark is. */
    public enum Level {
        BREACH,
        CAUTION,
        NOTE
    }
}
