package rigbrief.report;

import rigbrief.assembly.order.AlsoNeeded;
import rigbrief.assembly.order.NotOrdered;
import rigbrief.assembly.order.OrderLine;
import rigbrief.assembly.order.OrderList;
import rigbrief.assembly.order.SupplierOrder;
import rigbrief.quantity.Money;
import rigbrief.report.page.DocumentSubject;

/** An order list in plain text, one section per supplier. */
public final class OrderListText implements Report<DocumentSubject> {
    private static final ReportInfo INFO =
            ReportInfo.text("order-list-text", "an order list for people");
    private static final int PART_COLUMNS = 34;
    private static final int NUMBER_COLUMNS = 16;
    private static final int ITEM_COLUMNS = 34;
    private static final int WHY_COLUMNS = 46;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(DocumentSubject subject, Style style) {
        OrderList list = OrderList.of(subject.filed(), subject.bench());
        return new Writing(new TextPage(style), subject, list).document();
    }

    private record Writing(TextPage page, DocumentSubject subject, OrderList list) {

        String document() {
            page.chapter("ORDER LIST", list.total().toString());
            page.paragraph(0, head());
            if (list.orders().isEmpty()) {
                page.blank().paragraph(0, "Nothing is left to order.");
            }
            list.orders().forEach(this::order);
            totals();
            others();
            alsoNeeded();
            return page.blank().toString();
        }

        private String head() {
            int machines = subject.brief().quantity();
            return "For %s, %s. Prices and stock of %s. Buy in the order of the numbers: what takes longest first, then what only one supplier has, then what is nearly sold out."
                    .formatted(
                            subject.brief().client(),
                            machines == 1 ? "one machine" : machines + " machines",
                            subject.catalogue().asOf());
        }

        private void order(SupplierOrder order) {
            page.section(order.name());
            TextTable table =
                    new TextTable()
                            .right("no.")
                            .left("part", PART_COLUMNS)
                            .left("maker's number", NUMBER_COLUMNS)
                            .right("qty")
                            .right("each")
                            .right("price");
            for (OrderLine line : order.lines()) {
                table.remarked(
                        remark(line),
                        Integer.toString(line.rank()),
                        line.part().name(),
                        dash(line.part().listing().makerNumber()),
                        Integer.toString(line.quantity()),
                        line.unitPrice().plain(),
                        line.price().plain());
            }
            page.table(table);
            page.hanging(
                    "  ",
                    "Parts %s + delivery %s = %s; all here within %s."
                            .formatted(
                                    order.parts().plain(),
                                    order.delivery().plain(),
                                    order.total(),
                                    AssessmentText.counted(order.longestLeadDays(), "day")));
        }

        private static String remark(OrderLine line) {
            String gtin = line.part().listing().gtin();
            return line.slot().word()
                    + ", "
                    + AssessmentText.counted(line.leadDays(), "day")
                    + (line.urgency().isEmpty() ? "" : ", " + line.urgency())
                    + (gtin.isEmpty() ? "" : ", GTIN " + gtin);
        }

        private void totals() {
            page.section("Together");
            TextTable table = new TextTable().left("", ITEM_COLUMNS).right(currency());
            row(table, "parts", list.parts());
            row(table, "delivery", list.delivery());
            list.whole()
                    .ifPresentOrElse(
                            whole -> {
                                row(table, "assembly", whole.fees());
                                row(table, "tax", whole.tax());
                                row(table, "all in", whole.total());
                            },
                            () -> row(table, "still to order", list.total()));
            page.table(table);
        }

        private static void row(TextTable table, String name, Money amount) {
            table.row(name, amount.plain());
        }

        private String currency() {
            return subject.brief().currency().getCurrencyCode();
        }

        private void others() {
            if (list.notOrdered().isEmpty()) {
                return;
            }
            page.section("Not to be ordered now");
            for (NotOrdered other : list.notOrdered()) {
                page.hanging(
                        "  ",
                        "%s%s (%s): %s"
                                .formatted(
                                        other.quantity() > 1 ? other.quantity() + " x " : "",
                                        other.part().name(),
                                        other.slot().word(),
                                        other.why()));
            }
        }

        private void alsoNeeded() {
            page.section("Also needed, not in the catalogue");
            page.paragraph(
                    2,
                    "Buy: nothing above brings it. Check: usually in a box or at hand, but no data sheet"
                            + " says so.");
            TextTable table =
                    new TextTable()
                            .left("", "check".length())
                            .right("qty")
                            .left("item", ITEM_COLUMNS)
                            .left("why", WHY_COLUMNS);
            for (AlsoNeeded need : list.alsoNeeded()) {
                table.row(
                        need.need().word(),
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
