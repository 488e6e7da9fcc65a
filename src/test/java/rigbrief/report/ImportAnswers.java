package rigbrief.report;

import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.CatalogueFixture.euro;
import static rigbrief.fixture.FanFixture.aFan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigbrief.catalogue.Catalogue;
import rigbrief.pricelist.ImportPlan;
import rigbrief.pricelist.PriceImport;
import rigbrief.pricelist.PriceList;
import rigbrief.pricelist.PriceRow;
import rigbrief.pricelist.Verdicts;
import rigbrief.report.ImportAnswer.Outcome;

/** Answers to a price list in which there is one row of every sort. */
final class ImportAnswers {
    private ImportAnswers() {}

    static ImportAnswer refused() {
        return answer(Verdicts.NONE, Outcome.REFUSED, 0);
    }

    static ImportAnswer changed() {
        var skipped = new Verdicts(Map.of(), Set.of(), Set.of(4));
        return answer(skipped, Outcome.CHANGED, 2);
    }

    private static ImportAnswer answer(Verdicts verdicts, Outcome outcome, int recorded) {
        ImportPlan plan = PriceImport.plan(catalogue(), list(), verdicts);
        return new ImportAnswer("kestrel.csv", catalogue(), plan, outcome, recorded);
    }

    private static Catalogue catalogue() {
        return aCatalogue()
                .part(aFan().id("fan-a"))
                .offer("fan-a", KESTREL, "10.00")
                .part(aFan().id("fan-b"))
                .offer("fan-b", KESTREL, "20.00")
                .part(aFan().id("fan-c"))
                .offer("fan-c", QUAY, "20.00")
                .part(aFan().id("fan-d"))
                .offer("fan-d", KESTREL, "20.00")
                .part(aFan().id("fan-e"))
                .offer("fan-e", KESTREL, "20.00")
                .make();
    }

    private static PriceList list() {
        String likely = catalogue().part("fan-e").orElseThrow().name();
        List<PriceRow> rows =
                List.of(
                        row(2, "fan-a", "", "11.00", 7),
                        row(3, "fan-b", "", "20.00", 0),
                        row(4, "fan-d", "", "2000.00", -3),
                        row(5, "fan-c", "", "19.00", 4),
                        row(6, "", "boxed " + likely, "20.00", 4),
                        row(7, "", "Tallowmere desk lamp, brass", "34.50", 4));
        return new PriceList(KESTREL, rows, 1, Map.of(), false);
    }

    private static PriceRow row(int line, String id, String words, String price, int stock) {
        return new PriceRow(
                line, "", id, "", "", words, euro(price), stock, 2, LocalDate.of(2026, 12, 1));
    }
}
