package rigbrief.api;

import rigbrief.proposal.Proposals;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.replace.Replacement;
import rigbrief.report.AuditAnswer;
import rigbrief.report.AuditJson;
import rigbrief.report.BudgetJson;
import rigbrief.report.ProposalsJson;
import rigbrief.report.ReplacementAnswer;
import rigbrief.report.ReplacementJson;
import rigbrief.report.Style;

/**
 * Answers as JSON documents, to the byte what {@code --format json} prints; each names its schema.
 */
public final class Json {
    private Json() {}

    /** After {@code rigbrief/proposals/1}. */
    public static String of(Proposals answer) {
        return new ProposalsJson().write(answer, Style.PLAIN);
    }

    /** After {@code rigbrief/audit/1}. */
    public static String of(AuditAnswer answer) {
        return new AuditJson().write(answer, Style.PLAIN);
    }

    /** After {@code rigbrief/budget/1}. */
    public static String of(Budget answer) {
        return new BudgetJson().write(answer, Style.PLAIN);
    }

    /**
     * After {@code rigbrief/replacement/1}.
     *
     * @param build what the build is called
     */
    public static String of(String build, Replacement answer) {
        return new ReplacementJson().write(new ReplacementAnswer(build, answer), Style.PLAIN);
    }
}
