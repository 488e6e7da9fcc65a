package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.batch.Answered;
import rigbrief.batch.BatchAnswer;
import rigbrief.batch.BatchResult;
import rigbrief.batch.TierTotal;
import rigbrief.proposal.Tier;

/**
 * A batch as CSV, for spreadsheets: one row per brief, in the order in which they were named. The
 * same results give the same rows, in however many runs they were answered.
 *
 * <p>Source: RFC 4180; cells that a spreadsheet could take for a formula are led by an apostrophe.
 */
public final class BatchCsv implements Report<BatchAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("batch-csv", "the briefs of a batch, for spreadsheets");

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(BatchAnswer answer, Style style) {
        StringBuilder csv = new StringBuilder(head());
        answer.results().forEach(result -> row(csv, cells(result)));
        return csv.toString();
    }

    /** The first line, by which such a file is known. */
    public static String head() {
        List<String> head = new ArrayList<>(List.of("brief", "result", "ended", "currency"));
        for (String tier : tiers()) {
            head.add(tier + "_total");
            head.add(tier + "_gap_percent");
        }
        head.addAll(List.of("proven", "faults"));
        StringBuilder line = new StringBuilder();
        row(line, head);
        return line.toString();
    }

    private static List<String> tiers() {
        List<String> tiers = new ArrayList<>();
        for (Tier tier : Tier.values()) {
            tiers.add(tier.word());
        }
        tiers.add(TierTotal.VARIANTS);
        return tiers;
    }

    private static List<String> cells(BatchResult result) {
        List<String> cells = new ArrayList<>();
        cells.add(result.brief().file().toString());
        cells.add(result.ending().answered() ? result.brief().result() : "");
        cells.add(result.ending().word());
        cells.add(result.answered().map(Answered::currency).orElse(""));
        List<TierTotal> totals = result.answered().map(Answered::totals).orElse(List.of());
        for (String tier : tiers()) {
            Optional<TierTotal> total =
                    totals.stream().filter(it -> it.tier().equals(tier)).findFirst();
            cells.add(total.map(TierTotal::total).orElse(""));
            cells.add(total.map(TierTotal::gapPercent).orElse(""));
        }
        cells.add(totals.isEmpty() ? "" : proven(totals) ? "yes" : "no");
        cells.add(Integer.toString(result.faults()));
        return cells;
    }

    private static boolean proven(List<TierTotal> totals) {
        return totals.stream().allMatch(TierTotal::proven);
    }

    private static void row(StringBuilder csv, List<String> cells) {
        csv.append(String.join(",", cells.stream().map(CsvCell::of).toList())).append('\n');
    }
}
