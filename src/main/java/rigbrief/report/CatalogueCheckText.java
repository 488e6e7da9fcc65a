package rigbrief.report;

import java.util.List;
import rigbrief.diagnostic.Fault;
import rigbrief.wording.Counted;

/** A check of a catalogue in plain text. */
public final class CatalogueCheckText implements Report<CatalogueCheck> {
    private static final ReportInfo INFO =
            ReportInfo.text("catalogue-check-text", "faults and notes of a catalogue for people");
    private static final int IDS_SHOWN = 6;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(CatalogueCheck check, Style style) {
        TextPage page = new TextPage(style);
        check.faults().forEach(fault -> page.line(fault.text()));
        if (check.faultCount() > check.faults().size()) {
            page.line("and " + (check.faultCount() - check.faults().size()) + " more like these");
        }
        page.line(
                check.folder()
                        + ": "
                        + (check.faultCount() == 0
                                ? "no faults"
                                : Counted.of(check.faultCount(), "fault")));
        check.stats().ifPresent(stats -> stats(page, stats));
        for (Fault note : check.notes()) {
            page.line("note: " + note.text());
        }
        return page.toString();
    }

    private static void stats(TextPage page, CatalogueStats stats) {
        page.line(
                "%s, %s, %s"
                        .formatted(
                                Counted.of(stats.catalogue().partCount(), "part"),
                                Counted.of(stats.catalogue().offerCount(), "offer"),
                                Counted.of(stats.catalogue().workloads().size(), "workload")));
        if (!stats.withoutOffer().isEmpty()) {
            page.hanging("note: ", "nobody offers " + some(stats.withoutOffer()));
        }
        if (stats.singleOffer() > 0) {
            page.hanging(
                    "note: ",
                    "one supplier alone offers " + Counted.of(stats.singleOffer(), "part"));
        }
        if (stats.staleOffers() > 0) {
            page.hanging(
                    "note: ",
                    "%s at least %s old"
                            .formatted(
                                    Counted.of(stats.staleOffers(), "offer"),
                                    Counted.of(stats.catalogue().reference().staleDays(), "day")));
        }
    }

    private static String some(List<String> ids) {
        int shown = Math.min(IDS_SHOWN, ids.size());
        String first = String.join(", ", ids.subList(0, shown));
        return Counted.of(ids.size(), "part") + ": " + first + (ids.size() > shown ? ", ..." : "");
    }
}
