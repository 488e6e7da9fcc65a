package rigbrief.report;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.Workload;
import rigbrief.pricelist.PriceTrend;
import rigbrief.quantity.Money;
import rigbrief.report.CatalogueStats.KindLine;
import rigbrief.report.CatalogueStats.Prices;
import rigbrief.report.CatalogueStats.SupplierLine;
import rigbrief.wording.Counted;

/** A catalogue counted through, in plain text. */
public final class CatalogueStatsText implements Report<CatalogueStats> {
    private static final ReportInfo INFO =
            ReportInfo.text("catalogue-stats-text", "numbers of a catalogue for people");
    private static final int NAME_COLUMNS = 30;
    private static final int SUPPLIER_COLUMNS = 16;
    private static final int MOVES = 5;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(CatalogueStats stats, Style style) {
        TextPage page = new TextPage(style);
        page.chapter(stats.catalogue().name(), "as of " + stats.catalogue().asOf());
        page.paragraph(
                0,
                "%s, %s in %s, %s."
                        .formatted(
                                Counted.of(stats.catalogue().partCount(), "part"),
                                Counted.of(stats.catalogue().offerCount(), "offer"),
                                stats.catalogue().currency().getCurrencyCode(),
                                stats.catalogue().digest()));
        page.section("Parts, each at its cheapest offer").table(kinds(stats));
        page.section("Suppliers").table(suppliers(stats));
        trend(page, stats);
        page.section("Workloads").table(workloads(stats));
        return page.blank().toString();
    }

    private static void trend(TextPage page, CatalogueStats stats) {
        page.section("Prices over time");
        if (stats.trend().isEmpty()) {
            page.paragraph(2, "No earlier prices are on record; catalog import keeps them.");
            return;
        }
        PriceTrend trend = stats.trend().get();
        page.paragraph(
                2,
                "%s from %s to %s; of %d with more than one, %d %s dearer than at first and %d cheaper."
                        .formatted(
                                Counted.of(trend.offers(), "offer"),
                                trend.from(),
                                trend.to(),
                                trend.series(),
                                trend.dearer(),
                                trend.dearer() == 1 ? "is" : "are",
                                trend.cheaper()));
        if (!trend.moves().isEmpty()) {
            page.table(moves(trend));
        }
    }

    private static TextTable moves(PriceTrend trend) {
        TextTable table =
                new TextTable()
                        .left("largest moves", NAME_COLUMNS)
                        .left("supplier", SUPPLIER_COLUMNS)
                        .right("first")
                        .right("now")
                        .right("percent");
        for (PriceTrend.Move move :
                trend.moves().subList(0, Math.min(MOVES, trend.moves().size()))) {
            table.row(
                    move.after().part(),
                    move.after().supplier(),
                    move.before().price().grouped(),
                    move.after().price().grouped(),
                    (move.percent().signum() > 0 ? "+" : "") + move.percent().toPlainString());
        }
        return table;
    }

    private static TextTable kinds(CatalogueStats stats) {
        TextTable table =
                new TextTable()
                        .left("kind", NAME_COLUMNS)
                        .right("parts")
                        .right("offered")
                        .right("makers")
                        .right("least")
                        .right("median")
                        .right("most");
        for (KindLine line : stats.kinds()) {
            table.row(
                    line.kind().word(),
                    Integer.toString(line.parts()),
                    Integer.toString(line.offered()),
                    Integer.toString(line.makers()),
                    price(line.prices(), Prices::least),
                    price(line.prices(), Prices::median),
                    price(line.prices(), Prices::most));
        }
        return table;
    }

    private static String price(Optional<Prices> prices, Function<Prices, BigDecimal> which) {
        return prices.map(which).map(Money::grouped).orElse("-");
    }

    private static TextTable suppliers(CatalogueStats stats) {
        TextTable table =
                new TextTable()
                        .left("supplier", NAME_COLUMNS)
                        .right("offers")
                        .right("stale")
                        .right("sold out")
                        .right("delivery");
        for (SupplierLine line : stats.suppliers()) {
            table.row(
                    line.supplier().name(),
                    Integer.toString(line.offers()),
                    Integer.toString(line.stale()),
                    Integer.toString(line.soldOut()),
                    line.supplier().delivery().grouped());
        }
        return table;
    }

    private static TextTable workloads(CatalogueStats stats) {
        TextTable table =
                new TextTable()
                        .left("workload", NAME_COLUMNS)
                        .left("kind", NAME_COLUMNS)
                        .right("measured")
                        .right("spread");
        for (Workload workload : stats.catalogue().workloads()) {
            table.row(
                    workload.id(),
                    kind(workload),
                    Integer.toString(workload.fitted().n()),
                    spread(workload.fitted()));
        }
        return table;
    }

    private static String spread(Workload.Fitted fitted) {
        return fitted.n() == 0 ? "-" : Rounded.print(0, fitted.sigma() * 100, " %");
    }

    /** What kind of workload it is, as catalogues spell it. */
    static String kind(Workload workload) {
        if (workload instanceof FrameRate) {
            return "frame-rate";
        }
        return workload instanceof Capacity ? "capacity" : "task-time";
    }
}
