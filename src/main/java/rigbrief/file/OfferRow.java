package rigbrief.file;

import java.time.LocalDate;
import java.util.Currency;
import rigbrief.catalogue.Offer;
import rigbrief.file.cell.CsvTable;
import rigbrief.part.Cells;
import rigbrief.quantity.Money;

/** Reads one offer. */
final class OfferRow {
    private final Currency currency;
    private final MoneyForm price;

    OfferRow(Currency currency) {
        this.currency = currency;
        this.price = new MoneyForm(currency, false);
    }

    Offer read(Cells cells) {
        String part = cells.text("part");
        String supplier = cells.text("supplier");
        Money amount = cells.parsed("price", price);
        cells.text("currency");
        int stock = cells.whole("stock", 0, 1_000_000);
        int leadDays = cells.whole("lead_days", 0, 365);
        LocalDate asOf = cells.parsed("as_of", Forms::date);
        return new Offer(part, supplier, amount, stock, leadDays, asOf);
    }

    /** Reports an offer in another currency. */
    void checkCurrency(CsvTable table) {
        String found = table.cell("currency");
        String expected = currency.getCurrencyCode();
        if (found != null && !found.isEmpty() && !found.equals(expected)) {
            table.fault(
                    "currency",
                    found,
                    expected + ", the catalogue's currency",
                    "convert the price, then write " + expected);
        }
    }
}
