package rigbrief.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.pricelist.ImportPlan;
import rigbrief.pricelist.OfferChange;
import rigbrief.pricelist.Suggestion;
import rigbrief.pricelist.Suspicion;
import rigbrief.pricelist.Unmatched;
import rigbrief.wording.Counted;

/** What a price list means for a catalogue, as text. */
public final class ImportText implements Report<ImportAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("import-text", "what a price list changes");
    private static final int NAME_COLUMNS = 40;

    /** What is beyond is counted only; the JSON has everything. */
    private static final int MOST_LINES = 20;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(ImportAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        page.paragraph(0, head(answer)).paragraph(0, outcome(answer));
        suspicions(page, answer.plan());
        moves(page, answer.plan());
        others(page, answer.plan());
        unmatched(page, answer.plan());
        newer(page, answer);
        return page.toString();
    }

    /** Ages of offers count from the catalogue's own date, which no import changes. */
    private static void newer(TextPage page, ImportAnswer answer) {
        LocalDate own = answer.catalogue().asOf();
        answer.plan().changes().stream()
                .map(change -> change.after().asOf())
                .max(Comparator.naturalOrder())
                .filter(day -> day.isAfter(own))
                .ifPresent(
                        day ->
                                page.section("Date")
                                        .paragraph(
                                                2,
                                                "The list is of %s, the catalogue of %s. So that ages count from the list on, write as-of: %s in catalog.yaml."
                                                        .formatted(day, own, day)));
    }

    private static String head(ImportAnswer answer) {
        ImportPlan plan = answer.plan();
        String supplier =
                answer.catalogue().suppliers().stream()
                        .filter(each -> each.id().equals(plan.list().supplier()))
                        .map(Supplier::name)
                        .findFirst()
                        .orElse(plan.list().supplier());
        int without = plan.list().withoutPrice();
        return "Price list \"%s\" of %s: %s%s, %d matched, %d not."
                .formatted(
                        answer.name(),
                        supplier,
                        Counted.of(plan.list().rows().size(), "row"),
                        without == 0 ? "" : " and %d without a price".formatted(without),
                        plan.matches().size(),
                        plan.unmatched().size());
    }

    private static String outcome(ImportAnswer answer) {
        int offers = answer.plan().changes().size();
        int open = answer.plan().suspicions().size();
        return switch (answer.outcome()) {
            case CHANGED ->
                    "Changed: %s; %s put on record in prices.csv."
                            .formatted(
                                    Counted.of(offers, "offer"),
                                    Counted.of(answer.recorded(), "earlier one"));
            case SHOWN -> "Nothing is changed yet: this is what would be.";
            case REFUSED ->
                    "Nothing is changed: %s."
                            .formatted(
                                    open == 1
                                            ? "1 thing is suspicious"
                                            : open + " things are suspicious");
        };
    }

    private static void suspicions(TextPage page, ImportPlan plan) {
        if (plan.suspicions().isEmpty()) {
            return;
        }
        page.section("Suspicious");
        shortened(page, plan.suspicions(), suspicion -> suspicion(page, suspicion));
        page.paragraph(
                2,
                "Mend the list; or, where a line is right, add --accept LINE; to leave a line out,"
                        + " --skip LINE.");
    }

    private static void suspicion(TextPage page, Suspicion it) {
        page.hanging(
                "  line %d  ".formatted(it.row().line()),
                "%s: %s.".formatted(it.row().name(), it.text()));
    }

    private static void moves(TextPage page, ImportPlan plan) {
        List<OfferChange> moves =
                plan.changes().stream()
                        .filter(OfferChange::moves)
                        .sorted(
                                Comparator.comparing(
                                        change -> change.percent().orElseThrow().abs().negate()))
                        .toList();
        page.section("Prices that move");
        if (moves.isEmpty()) {
            page.paragraph(2, "None.");
            return;
        }
        TextTable table =
                new TextTable()
                        .left("part", NAME_COLUMNS)
                        .right("before")
                        .right("now")
                        .right("percent");
        moves.stream().limit(MOST_LINES).forEach(change -> table.row(cells(change)));
        page.table(table);
        more(page, moves.size());
    }

    private static String[] cells(OfferChange change) {
        var percent = change.percent().orElseThrow();
        return new String[] {
            change.part().name(),
            change.before().orElseThrow().price().grouped(),
            change.after().price().grouped(),
            (percent.signum() > 0 ? "+" : "") + percent.toPlainString()
        };
    }

    private static void others(TextPage page, ImportPlan plan) {
        page.section("Other offers");
        long same =
                plan.changes().stream()
                        .filter(change -> change.before().isPresent() && !change.moves())
                        .count();
        page.paragraph(2, "Price confirmed: %d.".formatted(same));
        List<String> fresh =
                plan.changes().stream()
                        .filter(change -> change.before().isEmpty())
                        .map(ImportText::priced)
                        .toList();
        named(page, "New", fresh);
        named(
                page,
                "Sold out now",
                plan.changes().stream()
                        .filter(OfferChange::sellsOut)
                        .map(change -> change.part().name())
                        .toList());
        named(
                page,
                plan.list().unlistedSoldOut()
                        ? "Not in the list, so sold out"
                        : "Not in the list, left as they are",
                plan.unlisted().stream().map(Offer::part).toList());
    }

    private static String priced(OfferChange change) {
        return change.part().name() + " at " + change.after().price().grouped();
    }

    private static void named(TextPage page, String what, List<String> names) {
        if (names.isEmpty()) {
            return;
        }
        int shown = Math.min(names.size(), MOST_LINES / 2);
        String more = names.size() > shown ? "; and %d more".formatted(names.size() - shown) : "";
        page.hanging(
                "  ",
                "%s, %d: %s%s."
                        .formatted(
                                what,
                                names.size(),
                                String.join("; ", names.subList(0, shown)),
                                more));
    }

    private static void unmatched(TextPage page, ImportPlan plan) {
        if (plan.unmatched().isEmpty()) {
            return;
        }
        page.section("Not matched");
        List<Unmatched> likely =
                plan.unmatched().stream().filter(it -> !it.suggestions().isEmpty()).toList();
        List<String> strange =
                plan.unmatched().stream()
                        .filter(it -> it.suggestions().isEmpty())
                        .map(it -> it.row().name())
                        .toList();
        shortened(page, likely, it -> likely(page, it));
        named(page, "Like nothing in the catalogue", strange);
    }

    private static void likely(TextPage page, Unmatched it) {
        page.hanging("  line %d  ".formatted(it.row().line()), it.row().name());
        for (Suggestion suggestion : it.suggestions()) {
            page.paragraph(
                    4,
                    "may be %s (%d %%): --accept %d=%s"
                            .formatted(
                                    suggestion.part().name(),
                                    suggestion.percent(),
                                    it.row().line(),
                                    suggestion.part().id()));
        }
    }

    private static <T> void shortened(TextPage page, List<T> items, Consumer<T> line) {
        items.stream().limit(MOST_LINES).forEach(line);
        more(page, items.size());
    }

    private static void more(TextPage page, int size) {
        if (size > MOST_LINES) {
            page.paragraph(2, "And %d more; --format json has all.".formatted(size - MOST_LINES));
        }
    }
}
