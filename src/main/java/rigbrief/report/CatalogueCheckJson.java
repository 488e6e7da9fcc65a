package rigbrief.report;

import java.util.List;
import java.util.Optional;
import rigbrief.diagnostic.Fault;

/** A check of a catalogue in JSON, after the contract {@code rigbrief/catalogue-check/1}. */
public final class CatalogueCheckJson implements Report<CatalogueCheck> {
    private static final String SCHEMA = "rigbrief/catalogue-check/1";
    private static final ReportInfo INFO =
            ReportInfo.json(
                    "catalogue-check-json",
                    "faults and notes of a catalogue for other programs",
                    SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(CatalogueCheck check, Style style) {
        return JsonPage.object(json -> document(json, check));
    }

    private static void document(JsonPage json, CatalogueCheck check) {
        Optional<CatalogueStats> stats = check.stats();
        json.field("schema", SCHEMA)
                .field("folder", check.folder())
                .field("verdict", check.faultCount() == 0 ? "sound" : "faulty")
                .field("fault-count", check.faultCount())
                .list("faults", check.faults(), fault -> fault(json, fault))
                .list("notes", check.notes(), note -> fault(json, note))
                .texts("without-offer", stats.map(CatalogueStats::withoutOffer).orElse(List.of()))
                .field("single-offer", stats.map(CatalogueStats::singleOffer).orElse(0))
                .field("stale-offers", stats.map(CatalogueStats::staleOffers).orElse(0));
    }

    private static void fault(JsonPage json, Fault fault) {
        json.field("file", fault.file())
                .field("line", fault.line())
                .field("column", fault.column())
                .field("subject", fault.subject())
                .field("found", fault.found())
                .field("expected", fault.expected())
                .field("advice", fault.advice());
    }
}
