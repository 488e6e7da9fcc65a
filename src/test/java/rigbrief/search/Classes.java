package rigbrief.search;

import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidates;
import rigbrief.presolve.PlainCandidates;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;

/**
 * A multiple-choice knapsack under several limits, dressed as a catalogue for the certifier: one
 * item out of each class, most profit.
 *
 * <p>Classes share slots (their items are combined) where there are more of them than slots. Money
 * is what the certifier bounds over all slots at once, so money carries the bound: with multipliers
 * for the limits from linear programming, a choice's price is by how much it falls short of the
 * best of its class once its uses are charged for. Those shortfalls add up to no more than what the
 * linear programme's value lies over any profit that is reached, and that is the ceiling for "at
 * least so much profit". The limits and the profit itself are rules.
 */
final class Classes {
    static final List<Slot> PLACES =
            List.of(
                    Slot.PROCESSOR,
                    Slot.GRAPHICS,
                    Slot.BOARD,
                    Slot.MEMORY,
                    Slot.CASE,
                    Slot.COOLER,
                    Slot.FANS,
                    Slot.DRIVE,
                    Slot.WIRELESS,
                    Slot.SUPPLY,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.CABLES);

    /** Cents that the linear programme's value is spread over. */
    private static final double CENTS = 1e8;

    /** Simplex works to 1e-6, so prices are rounded down and ceilings up by more than that. */
    private static final double CLOSE = 1e-4;

    private static final int HEAVY = 10_000;

    /** A brief that limits mass makes mass count. */
    private static final Brief.SizeNeed WEIGHED =
            new Brief.SizeNeed(
                    OptionalInt.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(Mass.g(1_000_000)));

    /**
     * An item, or several of different classes.
     *
     * @param profit what it brings
     * @param uses what it takes of each limit
     */
    record Item(long profit, long... uses) {
        private Item and(Item other) {
            long[] sums = uses.clone();
            for (int i = 0; i < sums.length; i++) {
                sums[i] += other.uses[i];
            }
            return new Item(profit + other.profit, sums);
        }

        private double net(double[] worth) {
            double net = profit;
            for (int i = 0; i < uses.length; i++) {
                net -= worth[i] * uses[i];
            }
            return net;
        }
    }

    /**
     * What was found.
     *
     * @param profit the most profit; empty when no choice keeps the limits
     * @param complete whether it is proven
     * @param steps steps of all searches together
     * @param bound the linear programme's value, which no profit passes
     */
    record Best(Optional<Long> profit, boolean complete, long steps, double bound) {}

    private final List<List<Item>> classes;
    private final long[] limits;
    private final double[] worth;
    private final double bound;
    private final List<List<Item>> places = new ArrayList<>();

    Classes(List<List<Item>> classes, long... limits) {
        this.classes = classes;
        this.limits = limits;
        double[] dual = dual();
        this.worth = java.util.Arrays.copyOf(dual, limits.length);
        double value = 0;
        for (int i = 0; i < limits.length; i++) {
            value += worth[i] * limits[i];
        }
        for (List<Item> one : classes) {
            value += best(one);
        }
        this.bound = value;
        combine();
    }

    private double best(List<Item> items) {
        return items.stream().mapToDouble(item -> item.net(worth)).max().orElseThrow();
    }

    /**
     * The most profit, by asking for ever more until the certifier proves that there is no more.
     */
    Best solve(long stepLimit) {
        Optional<Long> best = Optional.empty();
        long steps = 0;
        while (true) {
            long wanted = best.map(profit -> profit + 1).orElse(0L);
            Map<String, Item> items = new HashMap<>();
            Certificate found =
                    new Certifier(
                                    problem(wanted, items),
                                    Objective.leastMoney(),
                                    Math.max(1, stepLimit - steps),
                                    () -> false)
                            .untilFirst()
                            .run(Optional.empty());
            steps += found.steps();
            if (found.best().isEmpty()) {
                return new Best(best, found.complete(), steps, bound);
            }
            best = found.best().map(standing -> profit(standing.build(), items));
        }
    }

    /** The multipliers: the dual of the linear programme, which charges for limits and classes. */
    private double[] dual() {
        int variables = limits.length + classes.size();
        List<LinearConstraint> constraints = new ArrayList<>();
        double[] charge = new double[variables];
        for (int i = 0; i < limits.length; i++) {
            charge[i] = limits[i];
            double[] row = new double[variables];
            row[i] = 1;
            constraints.add(new LinearConstraint(row, Relationship.GEQ, 0));
        }
        for (int c = 0; c < classes.size(); c++) {
            charge[limits.length + c] = 1;
            for (Item item : classes.get(c)) {
                double[] row = new double[variables];
                for (int i = 0; i < limits.length; i++) {
                    row[i] = item.uses()[i];
                }
                row[limits.length + c] = 1;
                constraints.add(new LinearConstraint(row, Relationship.GEQ, item.profit()));
            }
        }
        double[] point =
                new SimplexSolver()
                        .optimize(
                                new LinearObjectiveFunction(charge, 0),
                                new LinearConstraintSet(constraints),
                                GoalType.MINIMIZE,
                                new NonNegativeConstraint(false))
                        .getPoint();
        for (int i = 0; i < limits.length; i++) {
            point[i] = Math.max(0, point[i]);
        }
        return point;
    }

    /** Deals the classes out to the slots in turn. */
    private void combine() {
        for (int c = 0; c < classes.size(); c++) {
            if (c < PLACES.size()) {
                places.add(classes.get(c));
            } else {
                List<Item> both = new ArrayList<>();
                for (Item a : places.get(c % PLACES.size())) {
                    for (Item b : classes.get(c)) {
                        both.add(a.and(b));
                    }
                }
                places.set(c % PLACES.size(), both);
            }
        }
        while (places.size() < PLACES.size()) {
            places.add(List.of(new Item(0, new long[limits.length])));
        }
    }

    /** Finding a choice with at least so much profit. */
    private Problem problem(long wanted, Map<String, Item> items) {
        CatalogueFixture catalogue = aCatalogue();
        Map<Slot, List<Part>> parts = new EnumMap<>(Slot.class);
        double shortfall = bound - wanted;
        double scale = CENTS / bound;
        long room = 0;
        for (int place = 0; place < PLACES.size(); place++) {
            Slot slot = PLACES.get(place);
            List<Item> choices = new ArrayList<>(places.get(place));
            choices.sort(Comparator.comparingDouble(item -> -item.net(worth)));
            List<Part> list = new ArrayList<>();
            long last = -1;
            for (Item item : choices) {
                String id = slot.word() + "-" + list.size();
                // What costs more weighs less, so that no part stands in for another.
                Part part = Knapsack.fixture(slot).id(id).massG(HEAVY - list.size()).make();
                list.add(part);
                items.put(id, item);
                double falls = choices.get(0).net(worth) - item.net(worth) - CLOSE;
                last = Math.max(last + 1, (long) Math.floor(falls * scale));
                catalogue
                        .part(part)
                        .offer(id, KESTREL, BigDecimal.valueOf(last, 2).toPlainString());
            }
            room += list.size();
            parts.put(slot, list);
        }
        Assessor assessor =
                new Assessor(
                        aBrief().ceiling("100000000.00").size(WEIGHED).make(), catalogue.make());
        List<Rule> rules = new ArrayList<>();
        for (int i = 0; i < limits.length; i++) {
            rules.add(new Limit(items, i));
        }
        rules.add(new Enough(items, wanted));
        Candidates candidates = PlainCandidates.of(assessor, parts);
        long ceiling = (long) Math.ceil((shortfall + CLOSE) * scale) + room;
        return new Problem(
                assessor, candidates, rules, List.of(), Math.max(0, ceiling), new SharedTables());
    }

    private static long profit(Build build, Map<String, Item> items) {
        return build.filled().values().stream()
                .mapToLong(part -> items.get(part.id()).profit())
                .sum();
    }

    /** What the decided slots give, and the open ones at best. */
    private abstract class Optimistic implements Rule {
        private final Map<String, Item> items;
        private final String id;
        private final Map<Slot, Long> best = new EnumMap<>(Slot.class);

        Optimistic(String id, Map<String, Item> items) {
            this.id = id;
            this.items = items;
        }

        abstract long figure(Item item);

        abstract long better(long a, long b);

        long sum(Assessment it) {
            long sum = 0;
            for (int place = 0; place < PLACES.size(); place++) {
                Slot slot = PLACES.get(place);
                int at = place;
                sum +=
                        it.build().has(slot)
                                ? figure(items.get(it.build().part(slot).id()))
                                : best.computeIfAbsent(
                                        slot,
                                        any ->
                                                places.get(at).stream()
                                                        .map(this::figure)
                                                        .reduce(this::better)
                                                        .orElseThrow());
            }
            return sum;
        }

        @Override
        public RuleInfo info() {
            return new RuleInfo(id, "It is kept", Unit.PIECE, Source.brief("limits"));
        }

        @Override
        public Set<Slot> reads() {
            return EnumSet.copyOf(PLACES);
        }

        @Override
        public Set<Slot> onlyWorsenedBy() {
            Set<Slot> rest = EnumSet.copyOf(PLACES);
            rest.remove(Slot.PROCESSOR);
            return rest;
        }
    }

    /** No more of a limit is taken than there is. */
    private final class Limit extends Optimistic {
        private final int index;

        Limit(Map<String, Item> items, int index) {
            super("limit-" + index, items);
            this.index = index;
        }

        @Override
        long figure(Item item) {
            return item.uses()[index];
        }

        @Override
        long better(long a, long b) {
            return Math.min(a, b);
        }

        @Override
        public Finding check(Assessment it) {
            return Finding.atMost(sum(it), limits[index], Unit.PIECE, () -> "too much");
        }
    }

    /** The profit is what is asked for at least. */
    private final class Enough extends Optimistic {
        private final long wanted;

        Enough(Map<String, Item> items, long wanted) {
            super("enough", items);
            this.wanted = wanted;
        }

        @Override
        long figure(Item item) {
            return item.profit();
        }

        @Override
        long better(long a, long b) {
            return Math.max(a, b);
        }

        @Override
        public Finding check(Assessment it) {
            return Finding.require(sum(it) >= wanted, () -> "too little");
        }
    }
}
