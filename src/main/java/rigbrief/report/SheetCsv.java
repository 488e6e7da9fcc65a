package rigbrief.report;

import java.util.List;
import java.util.stream.Collectors;
import rigbrief.measurement.accept.SheetLine;

/**
 * An acceptance sheet as CSV (RFC 4180), to be filled in with a spreadsheet: the last column is the
 * one to fill, the first says which line it is.
 */
public final class SheetCsv implements Report<SheetAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("sheet-csv", "an acceptance sheet for a spreadsheet");
    private static final String HEADER = "line,part,what,how,unit,expected,promised,measured";

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(SheetAnswer answer, Style style) {
        StringBuilder text = new StringBuilder(HEADER).append('\n');
        for (SheetLine line : answer.sheet().lines()) {
            text.append(row(line)).append('\n');
        }
        return text.toString();
    }

    private static String row(SheetLine line) {
        return List.of(
                        line.id(),
                        SheetWords.station(line.part()),
                        line.what(),
                        line.how(),
                        line.unit().symbol(),
                        SheetWords.expected(line),
                        SheetWords.promised(line),
                        "")
                .stream()
                .map(CsvCell::of)
                .collect(Collectors.joining(","));
    }
}
