package rigbrief.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.Column;
import rigbrief.file.cell.ColumnLister;
import rigbrief.file.cell.CsvTable;
import rigbrief.file.cell.Expectation;
import rigbrief.part.Cells;
import rigbrief.quantity.Money;

/** Reads {@code offers.csv}. */
final class OfferFile {
    /** The file's name in a catalogue folder. */
    static final String NAME = "offers.csv";

    /** Looking for a near id goes through all ids, so it is done for the first faults only. */
    private static final int FAULTS_WITH_NEAREST = 100;

    private final CatalogueHead head;
    private final KindFile parts;
    private final Faults faults;
    private final MoneyForm price;
    private final List<String> suppliers;

    OfferFile(CatalogueHead head, KindFile parts, Faults faults) {
        this.head = head;
        this.parts = parts;
        this.faults = faults;
        this.price = new MoneyForm(head.currencyOrStandIn(), false);
        this.suppliers = head.suppliers().stream().map(Supplier::id).toList();
    }

    /** The columns of the file. */
    static List<Column> columns() {
        ColumnLister lister = new ColumnLister();
        new OfferFile(CatalogueHead.unreadable(), new KindFile(new Faults()), new Faults())
                .row(lister);
        return lister.columns();
    }

    /** All offers, those with faults among them. */
    List<Offer> read(SourceText source) {
        CsvTable table = CsvTable.open(source.file(), source.text(), columns(), faults);
        CellRow.Memo memo = new CellRow.Memo();
        List<Offer> offers = new ArrayList<>();
        while (table.next()) {
            Offer offer = row(CellRow.of(table, memo));
            check(offer, table);
            offers.add(offer);
        }
        return offers;
    }

    private Offer row(Cells cells) {
        String part = cells.text("part");
        String supplier = cells.text("supplier");
        Money amount = cells.parsed("price", price);
        cells.text("currency");
        int stock = cells.whole("stock", 0, 1_000_000);
        int leadDays = cells.whole("lead_days", 0, 365);
        LocalDate asOf = cells.parsed("as_of", Forms::date);
        return new Offer(part, supplier, amount, stock, leadDays, asOf);
    }

    private void check(Offer offer, CsvTable table) {
        if (!offer.part().isEmpty() && !parts.ids().contains(offer.part())) {
            unknownPart(offer.part(), table);
        }
        if (!suppliers.isEmpty()
                && !offer.supplier().isEmpty()
                && !suppliers.contains(offer.supplier())) {
            Expectation one =
                    Expectation.name(offer.supplier(), "a supplier of catalog.yaml", suppliers);
            table.fault("supplier", offer.supplier(), one.text(), one.advice());
        }
        String currency = table.cell("currency");
        if (head.currency().isPresent() && currency != null && !currency.isEmpty()) {
            checkCurrency(currency, head.currency().get().getCurrencyCode(), table);
        }
    }

    private static void checkCurrency(String found, String expected, CsvTable table) {
        if (!found.equals(expected)) {
            table.fault(
                    "currency",
                    found,
                    expected + ", the catalogue's currency",
                    "convert the price, then write " + expected);
        }
    }

    private void unknownPart(String id, CsvTable table) {
        boolean search = faults.count() < FAULTS_WITH_NEAREST;
        List<String> ids = search ? parts.sortedIds() : List.of();
        Expectation part = Expectation.name(id, "the id of a part in one of the part files", ids);
        table.fault("part", id, part.text(), part.advice());
    }
}
