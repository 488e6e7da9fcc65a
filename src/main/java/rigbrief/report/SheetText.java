package rigbrief.report;

import rigbrief.measurement.accept.Sheet.Run;
import rigbrief.measurement.accept.SheetLine;
import rigbrief.measurement.accept.SheetLine.Station;

/** An acceptance sheet in plain text, to be filled in by hand. */
public final class SheetText implements Report<SheetAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("sheet-text", "an acceptance sheet to fill in");
    private static final int WHAT_COLUMNS = 24;
    private static final int HOW_COLUMNS = 28;
    private static final int EXPECTED_COLUMNS = 14;
    private static final String BLANK = "________";

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(SheetAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        page.chapter("Acceptance sheet", "date ____________");
        page.paragraph(
                0,
                "Build \"%s\" for %s, brief \"%s\"."
                        .formatted(answer.name(), answer.brief().client(), answer.brief().name()));
        page.section("Before you begin");
        SheetWords.CAUTIONS.forEach(caution -> page.hanging("  ", caution));
        for (Station station : Station.values()) {
            station(page, answer, station);
        }
        page.section("Ranges");
        page.hanging(
                "  ",
                "Speeds lie in their range with a chance of %d %%, as the fits behind them scatter."
                        .formatted(answer.brief().confidencePercent()));
        page.hanging(
                "  ",
                "Heat 5 K, noise 3 dB and draw 15 % about what the models give (common practice);"
                        + " temperatures at the room's as planned.");
        page.hanging(
                "  ",
                "Average: all frames over all time. 1 % low: the rate at the 99th percentile of"
                        + " frame time, counted in frames, nearest rank.");
        return page.blank().toString();
    }

    private static void station(TextPage page, SheetAnswer answer, Station station) {
        page.section(station.title());
        if (station == Station.SPEED) {
            for (Run run : answer.sheet().runs()) {
                page.hanging("  ", SheetWords.run(run));
            }
            page.blank();
        }
        TextTable table =
                new TextTable()
                        .left("what", WHAT_COLUMNS)
                        .left("how", HOW_COLUMNS)
                        .left("expected", EXPECTED_COLUMNS)
                        .left("measured", BLANK.length());
        for (SheetLine line : answer.sheet().lines()) {
            if (line.part() == station) {
                String promised = SheetWords.promised(line);
                table.row(
                        line.what(),
                        line.how(),
                        SheetWords.expected(line)
                                + (promised.isEmpty() ? "" : "; promised " + promised),
                        BLANK);
            }
        }
        if (!table.isEmpty()) {
            page.table(table);
        }
    }
}
