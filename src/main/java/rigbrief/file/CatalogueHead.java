package rigbrief.file;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.catalogue.Reference;
import rigbrief.catalogue.Supplier;
import rigbrief.file.tree.Keys;
import rigbrief.part.Cells;
import rigbrief.quantity.Money;

/**
 * What {@code catalog.yaml} says.
 *
 * @param name the catalogue's name
 * @param currency its currency; empty when it could not be read
 * @param asOf its date
 * @param reference conditions under which its figures hold
 * @param suppliers its suppliers; none when they could not be read
 */
record CatalogueHead(
        String name,
        Optional<Currency> currency,
        LocalDate asOf,
        Reference reference,
        List<Supplier> suppliers) {
    private static final Currency STAND_IN = Currency.getInstance("EUR");

    /** What is assumed while the rest of a catalogue with an unreadable head is looked through. */
    static CatalogueHead unreadable() {
        return new CatalogueHead(
                "", Optional.empty(), LocalDate.EPOCH, new Reference(25, 75, 84, 45), List.of());
    }

    /** Reads the file. */
    static CatalogueHead read(Keys keys) {
        String name = keys.cells().text("name");
        Optional<Currency> currency = keys.one("currency", Forms::currency);
        Optional<LocalDate> asOf = keys.one("as-of", Forms::date);
        Reference reference =
                keys.keys("reference").map(CatalogueHead::reference).orElse(unreadable().reference);
        List<Supplier> suppliers = suppliers(keys, currency.orElse(STAND_IN));
        keys.finish();
        return new CatalogueHead(
                name, currency, asOf.orElse(LocalDate.EPOCH), reference, suppliers);
    }

    /** The currency, or another where it could not be read. */
    Currency currencyOrStandIn() {
        return currency.orElse(STAND_IN);
    }

    private static Reference reference(Keys keys) {
        Cells cells = keys.cells();
        Reference usual = unreadable().reference;
        Reference reference =
                new Reference(
                        cells.numberOr("inlet-c", 0, 60, usual.inletC()),
                        cells.numberOr("card-c", 30, 120, usual.cardC()),
                        cells.numberOr("card-limit-c", 40, 125, usual.cardLimitC()),
                        cells.wholeOr("stale-days", 1, 3_650, usual.staleDays()));
        keys.finish();
        return reference;
    }

    private static List<Supplier> suppliers(Keys keys, Currency currency) {
        List<Supplier> suppliers = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (Keys each : keys.listOfKeys("suppliers")) {
            Supplier supplier = supplier(each, currency);
            suppliers.add(supplier);
            if (!supplier.id().isEmpty() && !ids.add(supplier.id())) {
                each.fault("id", "an id used once", "give one of the two another id");
            }
        }
        if (!keys.has("suppliers")) {
            keys.fault("suppliers", "a list of suppliers", "write {id, name, delivery} for each");
        }
        return suppliers;
    }

    private static Supplier supplier(Keys keys, Currency currency) {
        String id = keys.one("id", Forms::id).orElse("");
        String name = keys.cells().text("name");
        Optional<Money> delivery = keys.one("delivery", new MoneyForm(currency, true));
        keys.finish();
        return new Supplier(id, name, delivery.orElse(new Money(BigDecimal.ZERO, currency)));
    }
}
