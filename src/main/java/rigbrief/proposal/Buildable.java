package rigbrief.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * How many machines of a build can be built with the stock of today: what is on offer from the
 * suppliers a brief allows, no later and from no more of them than it allows, beside what has been
 * ordered or is here already.
 *
 * @param wanted machines the brief asks for
 * @param whole machines when each part comes from one supplier
 * @param split machines when the order of a part may be split between suppliers
 * @param limits the parts that allow no more machines than {@code split}, in slot order; empty when
 *     there is enough of everything
 */
public record Buildable(int wanted, int whole, int split, List<Limit> limits) {
    public Buildable {
        limits = List.copyOf(limits);
    }

    /**
     * A part that limits how many machines there can be.
     *
     * @param slot its first slot
     * @param part the part
     * @param pieces pieces of it in one machine, of all slots together
     * @param have units that have been ordered or are here
     * @param stock units on offer, all suppliers that may be used together
     */
    public record Limit(Slot slot, Part part, int pieces, int have, int stock) {}

    /**
     * What a count of machines is worked out from: one part.
     *
     * @param part the part
     * @param pieces pieces of it in one machine, of all slots together
     * @param have units that have been ordered or are here
     * @param stock units on offer, of all suppliers together or of the one that has most
     */
    public record Stock(Part part, int pieces, int have, int stock) {}

    /**
     * The stock of every part, under the set of suppliers with which most machines can be built.
     *
     * @param split whether orders may be split between suppliers
     */
    public static List<Stock> stocks(
            BuildRecord filed, Brief brief, Catalogue catalogue, boolean split) {
        List<Need> needs = together(needs(filed));
        Set<String> best = Set.of();
        int most = -1;
        for (Set<String> suppliers : supplierSets(brief, catalogue)) {
            int machines = machines(needs, suppliers, brief, catalogue, brief.quantity(), split);
            if (machines > most) {
                most = machines;
                best = suppliers;
            }
        }
        List<Stock> stocks = new ArrayList<>();
        for (Need need : needs) {
            int stock = stock(need.part(), best, brief, catalogue, split);
            stocks.add(new Stock(need.part(), need.pieces(), need.have(), stock));
        }
        return stocks;
    }

    /** What a part needs and has. */
    private record Need(Slot slot, Part part, int pieces, int have) {
        Need plus(int morePieces, int moreHave) {
            return new Need(slot, part, pieces + morePieces, have + moreHave);
        }

        int machines(int stock) {
            return (have + stock) / pieces;
        }
    }

    /** For a build of which nothing has been ordered. */
    public static Buildable of(Build build, Brief brief, Catalogue catalogue) {
        List<Need> needs = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) -> {
                            if (!kept(brief, slot, part)) {
                                needs.add(new Need(slot, part, build.pieces(slot), 0));
                            }
                        });
        return of(needs, brief, catalogue);
    }

    /** For a filed build, with what has been ordered of it. */
    public static Buildable of(BuildRecord filed, Brief brief, Catalogue catalogue) {
        return of(needs(filed), brief, catalogue);
    }

    private static List<Need> needs(BuildRecord filed) {
        List<Need> needs = new ArrayList<>();
        for (BuildLine line : filed.lines()) {
            if (!line.kept()) {
                int have =
                        line.units(filed.machines()).stream()
                                .filter(units -> units.state().promised())
                                .mapToInt(Units::count)
                                .sum();
                needs.add(new Need(line.slot(), line.part(), line.pieces(), have));
            }
        }
        return needs;
    }

    private static boolean kept(Brief brief, Slot slot, Part part) {
        for (Kept kept : brief.keep()) {
            if (kept.slot() == slot && kept.part().id().equals(part.id())) {
                return true;
            }
        }
        return false;
    }

    private static Buildable of(List<Need> bySlot, Brief brief, Catalogue catalogue) {
        List<Need> needs = together(bySlot);
        int wanted = brief.quantity();
        int whole = 0;
        int split = -1;
        Set<String> best = Set.of();
        for (Set<String> suppliers : supplierSets(brief, catalogue)) {
            int machines = machines(needs, suppliers, brief, catalogue, wanted, true);
            if (machines > split) {
                split = machines;
                best = suppliers;
            }
            whole = Math.max(whole, machines(needs, suppliers, brief, catalogue, wanted, false));
        }
        return new Buildable(wanted, whole, split, limits(needs, best, split, brief, catalogue));
    }

    /** A part in two slots has one stock. */
    private static List<Need> together(List<Need> bySlot) {
        Map<String, Need> byPart = new LinkedHashMap<>();
        for (Need need : bySlot) {
            byPart.merge(need.part().id(), need, (a, b) -> a.plus(b.pieces(), b.have()));
        }
        return List.copyOf(byPart.values());
    }

    private static int machines(
            List<Need> needs,
            Set<String> suppliers,
            Brief brief,
            Catalogue catalogue,
            int wanted,
            boolean split) {
        int least = wanted;
        for (Need need : needs) {
            int stock = stock(need.part(), suppliers, brief, catalogue, split);
            least = Math.min(least, need.machines(stock));
        }
        return least;
    }

    /** Units on offer: of all suppliers together, or of the one that has most. */
    private static int stock(
            Part part, Set<String> suppliers, Brief brief, Catalogue catalogue, boolean split) {
        int sum = 0;
        int most = 0;
        for (Offer offer : catalogue.offers(part.id())) {
            boolean soonEnough =
                    brief.buying().withinDays().isEmpty()
                            || offer.leadDays() <= brief.buying().withinDays().getAsInt();
            if (soonEnough && suppliers.contains(offer.supplier())) {
                sum += offer.stock();
                most = Math.max(most, offer.stock());
            }
        }
        return split ? sum : most;
    }

    private static List<Limit> limits(
            List<Need> needs,
            Set<String> suppliers,
            int machines,
            Brief brief,
            Catalogue catalogue) {
        List<Limit> limits = new ArrayList<>();
        for (Need need : needs) {
            int stock = stock(need.part(), suppliers, brief, catalogue, true);
            if (machines < brief.quantity() && need.machines(stock) == machines) {
                limits.add(new Limit(need.slot(), need.part(), need.pieces(), need.have(), stock));
            }
        }
        limits.sort(Comparator.comparing(Limit::slot));
        return limits;
    }

    /** The largest sets of suppliers that the brief allows. */
    private static List<Set<String>> supplierSets(Brief brief, Catalogue catalogue) {
        List<String> allowed =
                catalogue.suppliers().stream()
                        .map(Supplier::id)
                        .filter(
                                id ->
                                        brief.buying().suppliers().isEmpty()
                                                || brief.buying().suppliers().contains(id))
                        .toList();
        int most =
                Math.min(allowed.size(), brief.buying().atMostSuppliers().orElse(allowed.size()));
        List<Set<String>> sets = new ArrayList<>();
        add(new TreeSet<>(), 0, most, allowed, sets);
        return sets;
    }

    private static void add(
            Set<String> set, int from, int missing, List<String> allowed, List<Set<String>> sets) {
        if (missing == 0) {
            sets.add(new TreeSet<>(set));
            return;
        }
        for (int i = from; i <= allowed.size() - missing; i++) {
            set.add(allowed.get(i));
            add(set, i + 1, missing - 1, allowed, sets);
            set.remove(allowed.get(i));
        }
    }

    /** How many of the wanted machines today's stock does not reach for. */
    public int missing() {
        return wanted - split;
    }
}
