package rigbrief.cli;

import java.util.Locale;
import rigbrief.proposal.budget.Budget;
import rigbrief.report.BudgetCsv;
import rigbrief.report.BudgetHtml;
import rigbrief.report.BudgetJson;
import rigbrief.report.BudgetText;
import rigbrief.report.Report;

/** How a budget is written. */
enum BudgetFormat {
    TEXT,
    JSON,
    HTML,
    CSV;

    /**
     * The report of this format.
     *
     * @param unicode whether a plot may use letters beyond ASCII
     */
    Report<Budget> report(boolean unicode) {
        return switch (this) {
            case TEXT -> new BudgetText(unicode);
            case JSON -> new BudgetJson();
            case HTML -> new BudgetHtml();
            case CSV -> new BudgetCsv();
        };
    }

    /** As it is spelt on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
