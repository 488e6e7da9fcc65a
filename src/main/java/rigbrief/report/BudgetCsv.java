package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.part.Slot;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.proposal.budget.Rate;
import rigbrief.quantity.Money;

/**
 * The points of a front as CSV, for spreadsheets: one row per build, cheapest first.
 *
 * <p>Source: RFC 4180; cells that a spreadsheet could take for a formula are led by an apostrophe.
 */
public final class BudgetCsv implements Report<Budget> {
    private static final ReportInfo INFO =
            ReportInfo.text("budget-csv", "the points of a front, for spreadsheets");

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(Budget budget, Style style) {
        StringBuilder csv = new StringBuilder();
        row(csv, head(budget));
        for (FrontStep step : budget.front()) {
            row(csv, cells(budget, step));
        }
        return csv.toString();
    }

    private static List<String> head(Budget budget) {
        List<String> head = new ArrayList<>(List.of("total", "currency", "utility", "gap", "knee"));
        if (!budget.front().isEmpty()) {
            for (Rate rate : budget.front().get(0).rates()) {
                head.add(rate.use() + "_" + rate.unit());
            }
        }
        head.add("load_dba");
        for (Slot slot : Slot.values()) {
            head.add(slot.word());
        }
        return head;
    }

    private static List<String> cells(Budget budget, FrontStep step) {
        List<String> cells = new ArrayList<>();
        cells.add(Money.ofMinor(step.totalMinor(), budget.brief().currency()).plain());
        cells.add(budget.brief().currency().getCurrencyCode());
        cells.add(Rounded.print(4, step.utility(), ""));
        cells.add(Rounded.gap(4, step.gap()).map(Object::toString).orElse(""));
        cells.add(step.knee() ? "yes" : "no");
        for (Rate rate : step.rates()) {
            cells.add(Rounded.print(1, rate.value(), ""));
        }
        cells.add(Rounded.print(1, step.noiseDba(), ""));
        for (Slot slot : Slot.values()) {
            boolean has = step.build().has(slot);
            int pieces = has ? step.build().pieces(slot) : 0;
            cells.add(has ? step.build().part(slot).id() + (pieces > 1 ? " x" + pieces : "") : "");
        }
        return cells;
    }

    private static void row(StringBuilder csv, List<String> cells) {
        csv.append(String.join(",", cells.stream().map(CsvCell::of).toList())).append('\n');
    }
}
