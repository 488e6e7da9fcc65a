package rigbrief.assembly.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.assembly.Bench;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * What to order, from whom, in which order, and what else a first boot needs.
 *
 * <p>Prices and suppliers are those of the build's cost: today's offers within the brief's terms.
 * Bought first is what takes longest; of what takes equally long, what only one supplier offers,
 * then what is nearly sold out.
 *
 * @param orders one per supplier, the one with the most pressing part first
 * @param notOrdered parts of which nothing or not all is ordered now, in slot order
 * @param alsoNeeded what the catalogue doesn't have
 * @param parts price of all parts to order
 * @param delivery price of all deliveries
 * @param whole what everything costs with fees and tax; empty when part of it was ordered before
 */
public record OrderList(
        List<SupplierOrder> orders,
        List<NotOrdered> notOrdered,
        List<AlsoNeeded> alsoNeeded,
        Money parts,
        Money delivery,
        Optional<Whole> whole) {
    public OrderList {
        orders = List.copyOf(orders);
        notOrdered = List.copyOf(notOrdered);
        alsoNeeded = List.copyOf(alsoNeeded);
    }

    private static final Comparator<OrderLine> PRESSING =
            Comparator.comparingInt(OrderLine::leadDays)
                    .reversed()
                    .thenComparing(OrderLine::singleOffer, Comparator.reverseOrder())
                    .thenComparing(OrderLine::lowStock, Comparator.reverseOrder())
                    .thenComparing(OrderLine::slot);

    /**
     * What is charged beside the order.
     *
     * @param fees assembly
     * @param tax tax on all of it
     * @param total everything
     */
    public record Whole(Money fees, Money tax, Money total) {}

    /**
     * The order list of a filed build, judged by a brief.
     *
     * @throws IllegalArgumentException when a required slot is empty
     */
    public static OrderList of(BuildRecord filed, Brief brief, Catalogue catalogue) {
        return of(filed, Bench.of(brief, catalogue, filed.build()));
    }

    /** The order list of a filed build that is judged already. */
    public static OrderList of(BuildRecord filed, Bench bench) {
        Brief brief = bench.brief();
        Cost cost = bench.it().cost();
        List<OrderLine> lines = new ArrayList<>();
        for (Cost.Line line : cost.lines()) {
            int wanted = wanted(filed, line.slot(), line.pieces() * brief.quantity());
            if (wanted > 0) {
                lines.add(line(bench, line, wanted));
            }
        }
        lines.sort(PRESSING);
        for (int i = 0; i < lines.size(); i++) {
            lines.set(i, lines.get(i).ranked(i + 1));
        }
        List<SupplierOrder> orders = bySupplier(lines, bench.it().catalogue());
        Money none = Money.zero(brief.currency());
        return new OrderList(
                orders,
                notOrdered(bench, filed),
                FirstBootNeeds.of(bench),
                orders.stream().map(SupplierOrder::parts).reduce(none, Money::plus),
                orders.stream().map(SupplierOrder::delivery).reduce(none, Money::plus),
                begun(filed) ? Optional.empty() : Optional.of(whole(cost, brief)));
    }

    /** All lines, in the order in which to buy. */
    public List<OrderLine> lines() {
        return orders.stream()
                .flatMap(order -> order.lines().stream())
                .sorted(Comparator.comparingInt(OrderLine::rank))
                .toList();
    }

    /** Parts and delivery. */
    public Money total() {
        return parts.plus(delivery);
    }

    /** Packs of a slot's part that are still to be ordered, out of those the machines need. */
    private static int wanted(BuildRecord filed, Slot slot, int all) {
        return filed.line(slot)
                .filter(line -> !line.units().isEmpty() || line.state() != PartState.WANTED)
                .map(line -> count(line, filed.machines(), PartState.WANTED))
                .orElse(all);
    }

    private static int count(BuildLine line, int machines, PartState state) {
        int count = 0;
        for (Units units : line.units(machines)) {
            count += units.state() == state ? units.count() : 0;
        }
        return count;
    }

    private static boolean begun(BuildRecord filed) {
        return filed.lines().stream()
                .filter(line -> !line.kept())
                .flatMap(line -> line.units(filed.machines()).stream())
                .anyMatch(units -> units.state() != PartState.WANTED);
    }

    private static OrderLine line(Bench bench, Cost.Line line, int quantity) {
        Part part = bench.build().part(line.slot());
        int suppliers = 0;
        int stock = 0;
        for (Offer offer : bench.it().offers().of(part, line.pieces())) {
            if (offer != null) {
                suppliers++;
                stock = offer.supplier().equals(line.supplier()) ? offer.stock() : stock;
            }
        }
        return new OrderLine(
                0,
                line.slot(),
                part,
                line.supplier(),
                quantity,
                Money.ofMinor(line.unitMinor(), bench.brief().currency()),
                line.leadDays(),
                stock,
                suppliers);
    }

    private static List<SupplierOrder> bySupplier(List<OrderLine> lines, Catalogue catalogue) {
        Map<String, List<OrderLine>> bySupplier = new LinkedHashMap<>();
        for (OrderLine line : lines) {
            bySupplier.computeIfAbsent(line.supplier(), id -> new ArrayList<>()).add(line);
        }
        List<SupplierOrder> orders = new ArrayList<>();
        for (Map.Entry<String, List<OrderLine>> order : bySupplier.entrySet()) {
            Money parts =
                    order.getValue().stream()
                            .map(OrderLine::price)
                            .reduce(Money::plus)
                            .orElseThrow();
            Supplier supplier = supplier(order.getKey(), catalogue);
            orders.add(
                    new SupplierOrder(
                            supplier.id(),
                            supplier.name(),
                            order.getValue(),
                            parts,
                            supplier.delivery(),
                            order.getValue().stream()
                                    .mapToInt(OrderLine::leadDays)
                                    .max()
                                    .orElse(0)));
        }
        return orders;
    }

    private static Supplier supplier(String id, Catalogue catalogue) {
        return catalogue.suppliers().stream()
                .filter(supplier -> supplier.id().equals(id))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalStateException(
                                        "found an offer of %s, expected one of the catalogue's suppliers; add it"
                                                .formatted(id)));
    }

    private static List<NotOrdered> notOrdered(Bench bench, BuildRecord filed) {
        List<NotOrdered> others = new ArrayList<>();
        for (BuildLine line : filed.lines()) {
            Slot slot = line.slot();
            int all = line.pieces() * bench.brief().quantity();
            if (bench.it().cost().unavailable().contains(slot)) {
                others.add(new NotOrdered(slot, line.part(), all, "nobody offers it now"));
            } else if (kept(bench, slot)) {
                others.add(new NotOrdered(slot, line.part(), all, "the client's own"));
            } else {
                for (Units units : line.units(filed.machines())) {
                    if (units.state() != PartState.WANTED) {
                        others.add(new NotOrdered(slot, line.part(), units.count(), state(units)));
                    }
                }
            }
        }
        return others;
    }

    private static String state(Units units) {
        return units.state().word() + units.since().map(day -> " " + day).orElse("");
    }

    private static boolean kept(Bench bench, Slot slot) {
        return bench.it().cost().lines().stream().noneMatch(line -> line.slot() == slot);
    }

    private static Whole whole(Cost cost, Brief brief) {
        return new Whole(
                Money.ofMinor(cost.feesMinor(), brief.currency()),
                Money.ofMinor(cost.taxMinor(), brief.currency()),
                Money.ofMinor(cost.totalMinor(), brief.currency()));
    }
}
