package rigbrief.report;

import java.util.List;
import rigbrief.assembly.order.AlsoNeeded;
import rigbrief.assembly.order.NotOrdered;
import rigbrief.assembly.order.OrderLine;
import rigbrief.assembly.order.OrderList;
import rigbrief.assembly.order.SupplierOrder;
import rigbrief.part.Listing;
import rigbrief.report.page.DocumentSubject;

/**
 * An order list as CSV, one row per part, delivery and thing also needed.
 *
 * <p>Source: RFC 4180 for quoting; lines end with a line feed alone. A cell that a spreadsheet
 * might run as a formula is led by an apostrophe, see {@link #cell}.
 */
public final class OrderListCsv implements Report<DocumentSubject> {
    private static final ReportInfo INFO =
            ReportInfo.text("order-list-csv", "an order list for spreadsheets");

    /** The columns. */
    static final List<String> COLUMNS =
            List.of(
                    "row",
                    "buy-order",
                    "supplier",
                    "supplier-name",
                    "slot",
                    "part",
                    "maker",
                    "model",
                    "maker-number",
                    "gtin",
                    "quantity",
                    "unit-price",
                    "price",
                    "currency",
                    "lead-days",
                    "stock",
                    "remark");

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(DocumentSubject subject, Style style) {
        OrderList list = OrderList.of(subject.filed(), subject.bench());
        String currency = subject.brief().currency().getCurrencyCode();
        StringBuilder csv = new StringBuilder();
        row(csv, COLUMNS);
        for (SupplierOrder order : list.orders()) {
            for (OrderLine line : order.lines()) {
                row(csv, part(order, line, currency));
            }
            row(csv, delivery(order, currency));
        }
        for (NotOrdered other : list.notOrdered()) {
            row(csv, notOrdered(other));
        }
        for (AlsoNeeded need : list.alsoNeeded()) {
            row(csv, needed(need));
        }
        return csv.toString();
    }

    private static List<String> part(SupplierOrder order, OrderLine line, String currency) {
        Listing listing = line.part().listing();
        return List.of(
                "part",
                Integer.toString(line.rank()),
                order.supplier(),
                order.name(),
                line.slot().word(),
                listing.id(),
                listing.maker(),
                listing.model(),
                listing.makerNumber(),
                listing.gtin(),
                Integer.toString(line.quantity()),
                line.unitPrice().plain(),
                line.price().plain(),
                currency,
                Integer.toString(line.leadDays()),
                Integer.toString(line.stock()),
                line.urgency());
    }

    private static List<String> delivery(SupplierOrder order, String currency) {
        return List.of(
                "delivery",
                "",
                order.supplier(),
                order.name(),
                "",
                "",
                "",
                "",
                "",
                "",
                "1",
                order.delivery().plain(),
                order.delivery().plain(),
                currency,
                Integer.toString(order.longestLeadDays()),
                "",
                "");
    }

    private static List<String> notOrdered(NotOrdered other) {
        Listing listing = other.part().listing();
        return List.of(
                "not-ordered",
                "",
                "",
                "",
                other.slot().word(),
                listing.id(),
                listing.maker(),
                listing.model(),
                listing.makerNumber(),
                listing.gtin(),
                Integer.toString(other.quantity()),
                "",
                "",
                "",
                "",
                "",
                other.why());
    }

    private static List<String> needed(AlsoNeeded need) {
        return List.of(
                "also-needed",
                "",
                "",
                "",
                "",
                "",
                "",
                need.item(),
                "",
                "",
                Integer.toString(need.quantity()),
                "",
                "",
                "",
                "",
                "",
                need.need().word() + ": " + need.why());
    }

    private static void row(StringBuilder csv, List<String> cells) {
        csv.append(String.join(",", cells.stream().map(CsvCell::of).toList())).append('\n');
    }
}
