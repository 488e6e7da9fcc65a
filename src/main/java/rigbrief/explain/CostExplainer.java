package rigbrief.explain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Cost;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/** Explains what an order costs. */
final class CostExplainer implements Explainer {
    private static final String SOURCE = "exact decimal arithmetic on the catalogue's offers";

    @Override
    public boolean needsWholeBuild() {
        return false;
    }

    @Override
    public List<Topic> topics(Assessment it) {
        return List.of(
                new Topic("cost.parts", "Parts", () -> parts(it)),
                new Topic("cost.delivery", "Delivery", () -> delivery(it)),
                new Topic("cost.fees", "Assembly fees", () -> fees(it)),
                new Topic("cost.tax", "Tax", () -> tax(it)),
                new Topic("cost.total", "Total", () -> total(it)),
                new Topic("cost.suppliers", "Suppliers", () -> suppliers(it)),
                new Topic("cost.days", "Days until all is here", () -> days(it)));
    }

    private static Explanation parts(Assessment it) {
        Derivation how =
                new Derivation(
                        "cost.parts",
                        "Parts",
                        "sum of price x packs x machines over the bought parts, from the set of"
                                + " suppliers that makes the total least",
                        SOURCE);
        how.fact("machines", it.brief().quantity(), "", "brief, quantity");
        List<Object> values = new ArrayList<>();
        StringBuilder template = new StringBuilder();
        for (Cost.Line line : it.cost().lines()) {
            BigDecimal price = money(it, line.unitMinor());
            how.fact(
                    line.slot().word() + " " + it.build().part(line.slot()).id(),
                    price,
                    code(it),
                    "catalogue, offer of " + line.supplier());
            template.append(template.isEmpty() ? "" : " + ").append("{} x {} x {}");
            values.add(price);
            values.add(line.pieces());
            values.add(it.brief().quantity());
        }
        for (Slot slot : it.cost().unavailable()) {
            how.remark("nobody offers the " + slot.word() + "; it is not in the sum");
        }
        return how.gives(
                money(it, it.cost().partsMinor()),
                code(it),
                template.isEmpty() ? "0" : template.toString(),
                values.toArray());
    }

    private static Explanation delivery(Assessment it) {
        Derivation how =
                new Derivation(
                        "cost.delivery",
                        "Delivery",
                        "one delivery from each supplier used",
                        SOURCE);
        Set<String> used = new LinkedHashSet<>();
        it.cost().lines().forEach(line -> used.add(line.supplier()));
        List<Object> values = new ArrayList<>();
        for (Supplier supplier : it.offers().suppliers()) {
            if (used.contains(supplier.id())) {
                BigDecimal amount = supplier.delivery().amount();
                how.fact(
                        "delivery from " + supplier.id(),
                        amount,
                        code(it),
                        "catalogue, catalog.yaml");
                values.add(amount);
            }
        }
        String template = String.join(" + ", values.stream().map(any -> "{}").toList());
        return how.gives(
                money(it, it.cost().deliveryMinor()),
                code(it),
                template.isEmpty() ? "0" : template,
                values.toArray());
    }

    private static Explanation fees(Assessment it) {
        Derivation how =
                new Derivation("cost.fees", "Assembly fees", "assembly x machines", SOURCE);
        BigDecimal assembly = it.brief().fees().assembly().amount();
        how.fact("assembly", assembly, code(it), "brief, fees, assembly");
        how.fact("machines", it.brief().quantity(), "", "brief, quantity");
        return how.gives(
                money(it, it.cost().feesMinor()),
                code(it),
                "{} x {}",
                assembly,
                it.brief().quantity());
    }

    private static Explanation tax(Assessment it) {
        Derivation how =
                new Derivation(
                        "cost.tax",
                        "Tax",
                        "(parts + delivery + fees) x rate, half up to the smallest coin",
                        SOURCE);
        Cost cost = it.cost();
        BigDecimal percent = BigDecimal.valueOf(it.brief().fees().taxBasisPoints(), 2);
        amounts(how, it);
        how.fact("tax rate", percent, "%", "brief, fees, tax");
        return how.gives(
                money(it, cost.taxMinor()),
                code(it),
                "({} + {} + {}) x {} / 100",
                money(it, cost.partsMinor()),
                money(it, cost.deliveryMinor()),
                money(it, cost.feesMinor()),
                percent);
    }

    private static Explanation total(Assessment it) {
        Derivation how =
                new Derivation("cost.total", "Total", "parts + delivery + fees + tax", SOURCE);
        Cost cost = it.cost();
        amounts(how, it);
        how.fact("tax", money(it, cost.taxMinor()), code(it), "number cost.tax");
        return how.gives(
                money(it, cost.totalMinor()),
                code(it),
                "{} + {} + {} + {}",
                money(it, cost.partsMinor()),
                money(it, cost.deliveryMinor()),
                money(it, cost.feesMinor()),
                money(it, cost.taxMinor()));
    }

    private static Explanation suppliers(Assessment it) {
        Derivation how =
                new Derivation(
                        "cost.suppliers",
                        "Suppliers",
                        "suppliers of the set that makes the total least",
                        SOURCE);
        Set<String> used = new LinkedHashSet<>();
        it.cost().lines().forEach(line -> used.add(line.supplier()));
        used.forEach(id -> how.fact("supplier", id, "", "catalogue, offers"));
        String sum = String.join(" + ", Collections.nCopies(used.size(), "1"));
        return how.gives(it.cost().suppliers(), 0, "", sum.isEmpty() ? "0" : sum);
    }

    private static Explanation days(Assessment it) {
        Derivation how =
                new Derivation(
                        "cost.days",
                        "Days until all is here",
                        "the longest lead time of the offers used",
                        SOURCE);
        List<Object> days = new ArrayList<>();
        for (Cost.Line line : it.cost().lines()) {
            String id = it.build().part(line.slot()).id();
            how.fact(id, line.leadDays(), "days", "catalogue, offer of " + line.supplier());
            days.add(line.leadDays());
        }
        String all = String.join(", ", Collections.nCopies(days.size(), "{}"));
        return how.gives(
                it.cost().longestLeadDays(),
                0,
                "days",
                days.isEmpty() ? "0" : "max(" + all + ")",
                days.toArray());
    }

    private static void amounts(Derivation how, Assessment it) {
        Cost cost = it.cost();
        how.fact("parts", money(it, cost.partsMinor()), code(it), "number cost.parts");
        how.fact("delivery", money(it, cost.deliveryMinor()), code(it), "number cost.delivery");
        how.fact("fees", money(it, cost.feesMinor()), code(it), "number cost.fees");
    }

    private static BigDecimal money(Assessment it, long minor) {
        return Money.ofMinor(minor, it.brief().currency()).amount();
    }

    private static String code(Assessment it) {
        return it.brief().currency().getCurrencyCode();
    }
}
