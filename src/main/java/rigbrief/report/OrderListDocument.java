package rigbrief.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.assembly.order.AlsoNeeded;
import rigbrief.assembly.order.NotOrdered;
import rigbrief.assembly.order.OrderLine;
import rigbrief.assembly.order.OrderList;
import rigbrief.assembly.order.SupplierOrder;
import rigbrief.quantity.Money;
import rigbrief.report.page.Document;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Page;
import rigbrief.report.page.Words;

/** The order list as a document: a table per supplier, and what else a first boot needs. */
public final class OrderListDocument implements Document {
    @Override
    public String word() {
        return "orders";
    }

    @Override
    public Page page(DocumentSubject subject, Words words) {
        OrderList list = OrderList.of(subject.filed(), subject.bench());
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("plate", BenchWords.plate(subject, words));
        model.put("currency", subject.brief().currency().getCurrencyCode());
        model.put("orders", list.orders().stream().map(one -> order(one, words)).toList());
        model.put("totals", totals(list, words));
        model.put("others", list.notOrdered().stream().map(OrderListDocument::other).toList());
        model.put("needs", list.alsoNeeded().stream().map(OrderListDocument::need).toList());
        return Page.still("orders.ftlh", "Order list", model);
    }

    @Override
    public String text(DocumentSubject subject, Words words) {
        return new OrderListText().write(subject, Style.PLAIN);
    }

    @Override
    public boolean wholeMachine() {
        return true;
    }

    @Override
    public Optional<String> csv(DocumentSubject subject) {
        return Optional.of(new OrderListCsv().write(subject, Style.PLAIN));
    }

    /**
     * A supplier's table.
     *
     * @param id a name for the place on the page
     * @param name the supplier
     * @param rows number, part, maker's number and GTIN, days, what presses, quantity, each, price
     * @param parts price of the parts
     * @param delivery price of the delivery
     * @param total both
     * @param days until the last part is here
     */
    public record Table(
            String id,
            String name,
            List<List<String>> rows,
            String parts,
            String delivery,
            String total,
            String days) {}

    private static Table order(SupplierOrder order, Words words) {
        List<List<String>> rows = new ArrayList<>();
        for (OrderLine line : order.lines()) {
            rows.add(
                    List.of(
                            Integer.toString(line.rank()),
                            line.part().name(),
                            numbers(line),
                            AssessmentText.counted(line.leadDays(), "day"),
                            line.urgency(),
                            Integer.toString(line.quantity()),
                            amount(line.unitPrice(), words),
                            amount(line.price(), words)));
        }
        return new Table(
                "order-" + order.supplier(),
                order.name(),
                rows,
                amount(order.parts(), words),
                amount(order.delivery(), words),
                amount(order.total(), words),
                AssessmentText.counted(order.longestLeadDays(), "day"));
    }

    private static String numbers(OrderLine line) {
        List<String> numbers = new ArrayList<>();
        numbers.add(line.slot().word());
        if (!line.part().listing().makerNumber().isEmpty()) {
            numbers.add("maker’s number " + line.part().listing().makerNumber());
        }
        if (!line.part().listing().gtin().isEmpty()) {
            numbers.add("GTIN " + line.part().listing().gtin());
        }
        return String.join(", ", numbers);
    }

    private static List<List<String>> totals(OrderList list, Words words) {
        List<List<String>> totals = new ArrayList<>();
        totals.add(List.of("Parts", amount(list.parts(), words)));
        totals.add(List.of("Delivery", amount(list.delivery(), words)));
        list.whole()
                .ifPresentOrElse(
                        whole -> {
                            totals.add(List.of("Assembly", amount(whole.fees(), words)));
                            totals.add(List.of("Tax", amount(whole.tax(), words)));
                            totals.add(List.of("All in", amount(whole.total(), words)));
                        },
                        () -> totals.add(List.of("Still to order", amount(list.total(), words))));
        return totals;
    }

    private static List<String> other(NotOrdered other) {
        return List.of(
                (other.quantity() > 1 ? other.quantity() + " x " : "") + other.part().name(),
                other.slot().word(),
                other.why());
    }

    private static List<String> need(AlsoNeeded need) {
        return List.of(
                need.need().word(), Integer.toString(need.quantity()), need.item(), need.why());
    }

    private static String amount(Money money, Words words) {
        return words.amount(money.minorUnits(), money.currency());
    }
}
