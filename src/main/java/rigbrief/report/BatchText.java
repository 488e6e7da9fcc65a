package rigbrief.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import rigbrief.batch.Answered;
import rigbrief.batch.BatchAnswer;
import rigbrief.batch.BatchResult;
import rigbrief.batch.Ending;
import rigbrief.batch.TierTotal;
import rigbrief.proposal.Tier;
import rigbrief.quantity.Money;
import rigbrief.wording.Counted;

/** A batch in text: one line per brief, then every failure with what is wrong. */
public final class BatchText implements Report<BatchAnswer> {
    private static final ReportInfo INFO = ReportInfo.text("batch-text", "the briefs of a batch");

    private static final int BRIEF_COLUMNS = 34;
    private static final int ENDED_COLUMNS = 14;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(BatchAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        page.paragraph(0, head(answer)).blank();
        TextTable table =
                new TextTable().left("result", BRIEF_COLUMNS).left("ended", ENDED_COLUMNS);
        for (Tier tier : Tier.values()) {
            table.right(tier.word());
        }
        answer.results().forEach(result -> row(table, result));
        page.table(table);
        legend(page, answer);
        failures(page, answer.failures());
        return page.toString();
    }

    private static String head(BatchAnswer answer) {
        List<String> counts = new ArrayList<>();
        for (Ending ending : Ending.values()) {
            int count = answer.count(ending);
            if (count > 0) {
                counts.add(count + " " + ending.word());
            }
        }
        String before =
                answer.before() == 0
                        ? ""
                        : " %d of them %s answered before."
                                .formatted(answer.before(), answer.before() == 1 ? "was" : "were");
        return "%s: %s.%s"
                .formatted(
                        Counted.of(answer.results().size(), "brief"),
                        String.join(", ", counts),
                        before);
    }

    private static void row(TextTable table, BatchResult result) {
        List<TierTotal> totals = result.answered().map(Answered::totals).orElse(List.of());
        List<String> cells =
                new ArrayList<>(List.of(result.brief().result(), result.ending().word()));
        for (Tier tier : Tier.values()) {
            cells.add(
                    totals.stream()
                            .filter(total -> total.tier().equals(tier.word()))
                            .map(BatchText::total)
                            .findFirst()
                            .orElse("-"));
        }
        table.remarked(variants(totals), cells.toArray(String[]::new));
    }

    private static String amount(TierTotal total) {
        return Money.grouped(new BigDecimal(total.total()));
    }

    private static String total(TierTotal total) {
        return amount(total) + (total.proven() ? "" : " *");
    }

    private static String variants(List<TierTotal> totals) {
        return totals.stream()
                .filter(total -> total.tier().equals(TierTotal.VARIANTS))
                .map(total -> "in two variants: " + amount(total))
                .findFirst()
                .orElse("");
    }

    private static void legend(TextPage page, BatchAnswer answer) {
        List<String> currencies =
                answer.results().stream()
                        .flatMap(result -> result.answered().stream())
                        .map(Answered::currency)
                        .distinct()
                        .toList();
        if (!currencies.isEmpty()) {
            page.paragraph(
                    2,
                    "Totals in %s. A star: not proven best; its result says how far off it may be."
                            .formatted(String.join(", ", currencies)));
        }
    }

    private static void failures(TextPage page, List<BatchResult> failures) {
        if (failures.isEmpty()) {
            return;
        }
        page.section("Without a result");
        for (BatchResult failure : failures) {
            page.line("%s: %s".formatted(failure.brief().file(), failure.ending().word()));
            failure.diagnostics().forEach(line -> page.line("  " + line));
            int more = failure.faults() - failure.diagnostics().size();
            if (more > 0) {
                page.line("  and %d more like these".formatted(more));
            }
        }
    }
}
