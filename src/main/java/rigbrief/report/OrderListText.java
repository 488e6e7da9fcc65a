package rigbrief.report;

import java.util.Locale;
import rigbrief.assembly.order.AlsoNeeded;
import rigbrief.assembly.order.NotOrdered;
import rigbrief.assembly.order.OrderLine;
import rigbrief.assembly.order.OrderList;
import rigbrief.assembly.order.SupplierOrder;
import rigbrief.quantity.Money;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Words;

/** An order list in plain text, one section per supplier. */
public final class OrderListText implements Report<DocumentSubject> {
    private static final ReportInfo INFO =
            ReportInfo.text("order-list-text", "an order list for people");
    private static final int PART_COLUMNS = 34;
    private static final int NUMBER_COLUMNS = 16;
    private static final int KIND_COLUMNS = 6;
    private static final int ITEM_COLUMNS = 34;
    private static final int WHY_COLUMNS = 46;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(DocumentSubject subject, Style style) {
        return write(subject, style, Words.of(Locale.ENGLISH));
    }

    /** The same in the reader's language. */
    public String write(DocumentSubject subject, Style style, Words words) {
        OrderList list = OrderList.of(subject.filed(), subject.bench(words.texts()));
        return new Writing(new TextPage(style), subject, list, words).document();
    }

    private record Writing(TextPage page, DocumentSubject subject, OrderList list, Words words) {

        String document() {
            page.chapter(words.text("orders.head"), words.money(list.total()));
            page.paragraph(0, head());
            if (list.orders().isEmpty()) {
                page.blank().paragraph(0, words.text("orders.nothing"));
            }
            list.orders().forEach(this::order);
            totals();
            others();
            alsoNeeded();
            return page.blank().toString();
        }

        private String head() {
            int machines = subject.brief().quantity();
            return words.text(
                    "orders.text.head",
                    subject.brief().client(),
                    machines,
                    subject.catalogue().asOf().toString());
        }

        private void order(SupplierOrder order) {
            page.section(order.name());
            TextTable table =
                    new TextTable()
                            .right(words.text("column.no"))
                            .left(words.text("column.part"), PART_COLUMNS)
                            .left(words.text("column.number"), NUMBER_COLUMNS)
                            .right(words.text("column.qty"))
                            .right(words.text("column.each"))
                            .right(words.text("column.price"));
            for (OrderLine line : order.lines()) {
                table.remarked(
                        remark(line),
                        Integer.toString(line.rank()),
                        line.part().name(),
                        dash(line.part().listing().makerNumber()),
                        Integer.toString(line.quantity()),
                        words.texts().amount(line.unitPrice()),
                        words.texts().amount(line.price()));
            }
            page.table(table);
            page.hanging(
                    "  ",
                    words.text(
                            "orders.text.sum",
                            words.texts().amount(order.parts()),
                            words.texts().amount(order.delivery()),
                            order.total(),
                            words.text("count.day", order.longestLeadDays())));
        }

        private String remark(OrderLine line) {
            String gtin = line.part().listing().gtin();
            return words.text("slot.lower." + line.slot().word())
                    + ", "
                    + words.text("count.day", line.leadDays())
                    + (line.urgency(words.texts()).isEmpty()
                            ? ""
                            : ", " + line.urgency(words.texts()))
                    + (gtin.isEmpty() ? "" : ", GTIN " + gtin);
        }

        private void totals() {
            page.section(words.text("orders.together"));
            TextTable table = new TextTable().left("", ITEM_COLUMNS).right(currency());
            row(table, words.text("orders.low.parts"), list.parts());
            row(table, words.text("orders.low.delivery"), list.delivery());
            list.whole()
                    .ifPresentOrElse(
                            whole -> {
                                row(table, words.text("orders.low.assembly"), whole.fees());
                                row(table, words.text("orders.low.tax"), whole.tax());
                                row(table, words.text("orders.low.all-in"), whole.total());
                            },
                            () -> row(table, words.text("orders.low.still"), list.total()));
            page.table(table);
        }

        private void row(TextTable table, String name, Money amount) {
            table.row(name, words.texts().amount(amount));
        }

        private String currency() {
            return subject.brief().currency().getCurrencyCode();
        }

        private void others() {
            if (list.notOrdered().isEmpty()) {
                return;
            }
            page.section(words.text("orders.others"));
            for (NotOrdered other : list.notOrdered()) {
                page.hanging(
                        "  ",
                        "%s%s (%s): %s"
                                .formatted(
                                        other.quantity() > 1 ? other.quantity() + " x " : "",
                                        other.part().name(),
                                        words.text("slot.lower." + other.slot().word()),
                                        other.why()));
            }
        }

        private void alsoNeeded() {
            page.section(words.text("orders.needed"));
            page.paragraph(2, words.text("orders.needed.how"));
            TextTable table =
                    new TextTable()
                            .left("", KIND_COLUMNS)
                            .right(words.text("column.qty"))
                            .left(words.text("column.item"), ITEM_COLUMNS)
                            .left(words.text("column.why"), WHY_COLUMNS);
            for (AlsoNeeded need : list.alsoNeeded()) {
                table.row(
                        need.need().word(words.texts()),
                        Integer.toString(need.quantity()),
                        need.item(),
                        need.why());
            }
            page.table(table);
        }

        private static String dash(String text) {
            return text.isEmpty() ? "-" : text;
        }
    }
}
