package rigbrief.report;

import java.util.List;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Workload;
import rigbrief.pricelist.PriceTrend;
import rigbrief.report.CatalogueStats.KindLine;
import rigbrief.report.CatalogueStats.SupplierLine;

/** A catalogue counted through, in JSON, after the contract {@code rigbrief/catalogue-stats/1}. */
public final class CatalogueStatsJson implements Report<CatalogueStats> {
    private static final String SCHEMA = "rigbrief/catalogue-stats/1";
    private static final ReportInfo INFO =
            ReportInfo.json(
                    "catalogue-stats-json", "numbers of a catalogue for other programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(CatalogueStats stats, Style style) {
        return JsonPage.object(json -> document(json, stats));
    }

    private static void document(JsonPage json, CatalogueStats stats) {
        Catalogue catalogue = stats.catalogue();
        json.field("schema", SCHEMA).field("currency", catalogue.currency().getCurrencyCode());
        CatalogueJson.write(json, catalogue);
        json.list("kinds", stats.kinds(), line -> kind(json, line))
                .list("suppliers", stats.suppliers(), line -> supplier(json, line))
                .list("workloads", catalogue.workloads(), workload -> workload(json, workload))
                .texts("without-offer", List.copyOf(stats.withoutOffer()))
                .field("single-offer", stats.singleOffer())
                .field("stale-offers", stats.staleOffers());
        stats.trend()
                .ifPresentOrElse(
                        trend -> json.object("prices-over-time", of -> trend(of, trend)),
                        () -> json.nothing("prices-over-time"));
    }

    private static void trend(JsonPage json, PriceTrend trend) {
        json.field("offers", trend.offers())
                .field("with-several", trend.series())
                .field("from", trend.from().toString())
                .field("to", trend.to().toString())
                .field("dearer", trend.dearer())
                .field("cheaper", trend.cheaper())
                .list("moves", trend.moves(), move -> move(json, move));
    }

    private static void move(JsonPage json, PriceTrend.Move move) {
        json.field("part", move.after().part())
                .field("supplier", move.after().supplier())
                .field("first-price", move.before().price().plain())
                .field("first-date", move.before().asOf().toString())
                .field("price", move.after().price().plain())
                .field("date", move.after().asOf().toString())
                .field("change-percent", move.percent());
    }

    private static void kind(JsonPage json, KindLine line) {
        json.field("kind", line.kind().word())
                .field("parts", line.parts())
                .field("offered", line.offered())
                .field("makers", line.makers());
        line.prices()
                .ifPresentOrElse(
                        prices ->
                                json.field("least-price", prices.least().toPlainString())
                                        .field("median-price", prices.median().toPlainString())
                                        .field("most-price", prices.most().toPlainString()),
                        () ->
                                json.nothing("least-price")
                                        .nothing("median-price")
                                        .nothing("most-price"));
    }

    private static void supplier(JsonPage json, SupplierLine line) {
        json.field("supplier", line.supplier().id())
                .field("name", line.supplier().name())
                .field("offers", line.offers())
                .field("stale", line.stale())
                .field("sold-out", line.soldOut())
                .field("delivery", line.supplier().delivery().plain());
    }

    private static void workload(JsonPage json, Workload workload) {
        json.field("workload", workload.id())
                .field("title", workload.title())
                .field("kind", CatalogueStatsText.kind(workload))
                .field("measurements", workload.fitted().n())
                .field("sigma", Rounded.to(4, workload.fitted().sigma()));
    }
}
