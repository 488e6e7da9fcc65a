package rigbrief.cli;

import java.util.Locale;
import rigbrief.proposal.budget.Budget;
import rigbrief.report.BudgetCsv;
import rigbrief.report.BudgetJson;
import rigbrief.report.BudgetText;
import rigbrief.report.Style;
import rigbrief.report.page.BudgetPage;
import rigbrief.report.page.PageWriter;
import rigbrief.report.page.Words;

/** How a budget is written. */
enum BudgetFormat {
    TEXT,
    JSON,
    HTML,
    CSV;

    /**
     * A budget in this format.
     *
     * @param unicode whether a plot may use letters beyond ASCII
     * @param style how a text is laid out
     * @param words what a page is told in
     */
    String write(Budget budget, boolean unicode, Style style, Words words) {
        return switch (this) {
            case TEXT -> new BudgetText(unicode).write(budget, style);
            case JSON -> new BudgetJson().write(budget, style);
            case HTML -> PageWriter.html(BudgetPage.of(budget, words), words);
            case CSV -> new BudgetCsv().write(budget, style);
        };
    }

    /** As it is spelt on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
