package rigbrief.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.Column;
import rigbrief.file.cell.ColumnLister;
import rigbrief.file.cell.CsvTable;
import rigbrief.file.cell.Expectation;

/** Reads {@code offers.csv}. */
final class OfferFile {
    /** The file's name in a catalogue folder. */
    static final String NAME = "offers.csv";

    /** Looking for a near id goes through all ids, so it is done for the first faults only. */
    private static final int FAULTS_WITH_NEAREST = 100;

    private final CatalogueHead head;
    private final KindFile parts;
    private final Faults faults;
    private final OfferRow form;
    private final List<String> suppliers;

    OfferFile(CatalogueHead head, KindFile parts, Faults faults) {
        this.head = head;
        this.parts = parts;
        this.faults = faults;
        this.form = new OfferRow(head.currencyOrStandIn());
        this.suppliers = head.suppliers().stream().map(Supplier::id).toList();
    }

    /** The columns of the file. */
    static List<Column> columns() {
        ColumnLister lister = new ColumnLister();
        new OfferRow(CatalogueHead.unreadable().currencyOrStandIn()).read(lister);
        return lister.columns();
    }

    /** All offers, those with faults among them. */
    List<Offer> read(SourceText source) {
        CsvTable table = CsvTable.open(source.file(), source.text(), columns(), faults);
        CellRow.Memo memo = new CellRow.Memo();
        List<Offer> offers = new ArrayList<>();
        while (table.next()) {
            Offer offer = form.read(CellRow.of(table, memo));
            Optional<String> part = parts.met(offer.part());
            check(offer, part.isPresent(), table);
            offers.add(part.map(offer::of).orElse(offer));
        }
        return offers;
    }

    private void check(Offer offer, boolean known, CsvTable table) {
        if (!offer.part().isEmpty() && !known) {
            unknownPart(offer.part(), table);
        }
        if (!suppliers.isEmpty()
                && !offer.supplier().isEmpty()
                && !suppliers.contains(offer.supplier())) {
            Expectation one =
                    Expectation.name(offer.supplier(), "a supplier of catalog.yaml", suppliers);
            table.fault("supplier", offer.supplier(), one.text(), one.advice());
        }
        if (head.currency().isPresent()) {
            form.checkCurrency(table);
        }
    }

    private void unknownPart(String id, CsvTable table) {
        boolean search = faults.count() < FAULTS_WITH_NEAREST;
        List<String> ids = search ? parts.sortedIds() : List.of();
        Expectation part = Expectation.name(id, "the id of a part in one of the part files", ids);
        table.fault("part", id, part.text(), part.advice());
    }
}
