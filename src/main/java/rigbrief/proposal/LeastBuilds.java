package rigbrief.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.quantity.Money;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Certificate;
import rigbrief.search.Objective;
import rigbrief.search.SearchSpace;
import rigbrief.search.TwoStage;

/**
 * The build of least money, delivery aside, for so many like machines from some suppliers.
 *
 * <p>More machines leave fewer offers with stock enough, so the price of one machine never falls as
 * their number grows, and a build stays the cheapest for as many as its own offers reach: most
 * numbers need no search of their own.
 */
final class LeastBuilds {
    /**
     * An offer, by what makes it the only one of its kind.
     *
     * @param part id of the part
     * @param supplier id of the supplier
     */
    record Source(String part, String supplier) {}

    /**
     * What may be bought.
     *
     * @param suppliers ids of the suppliers
     * @param mostPieces how many packs of an offer a machine may have at most, where that is
     *     limited
     */
    record Terms(Set<String> suppliers, Map<Source, Integer> mostPieces) {
        Terms {
            suppliers = Set.copyOf(suppliers);
            mostPieces = Map.copyOf(mostPieces);
        }

        /** The same with fewer packs of an offer than so many. */
        Terms under(Source source, int pieces) {
            Map<Source, Integer> less = new HashMap<>(mostPieces);
            less.put(source, pieces - 1);
            return new Terms(suppliers, less);
        }
    }

    /**
     * A build.
     *
     * @param build its parts
     * @param pieces packs of each offer in one machine, in slot order of their first slots
     * @param eachMinor the parts of one machine, in minor units
     * @param upTo for so many machines it is the cheapest too
     */
    record Least(Build build, Map<Source, Integer> pieces, long eachMinor, int upTo) {}

    private final Brief brief;
    private final Catalogue catalogue;
    private final SearchLimits limits;
    private final Map<Terms, TreeMap<Integer, Optional<Least>>> known = new HashMap<>();
    private int searches;
    private boolean complete = true;

    LeastBuilds(Brief brief, Catalogue catalogue, SearchLimits limits) {
        this.brief = new BriefDraft(brief).overrunBasisPoints(0).toBrief();
        this.catalogue = catalogue;
        this.limits = limits;
    }

    /** How often the certifier was asked. */
    int searches() {
        return searches;
    }

    /** Whether it always came to its end. */
    boolean complete() {
        return complete;
    }

    /** The cheapest build for so many machines; empty when there is none. */
    Optional<Least> of(Terms terms, int machines) {
        TreeMap<Integer, Optional<Least>> from =
                known.computeIfAbsent(terms, any -> new TreeMap<>());
        Map.Entry<Integer, Optional<Least>> before = from.floorEntry(machines);
        boolean holds =
                before != null && before.getValue().map(it -> it.upTo() >= machines).orElse(true);
        if (holds) {
            return before.getValue();
        }
        Optional<Least> least = search(terms, machines);
        from.put(machines, least);
        return least;
    }

    private Optional<Least> search(Terms terms, int machines) {
        searches++;
        Brief asked =
                new BriefDraft(brief)
                        .quantity(machines)
                        .buying(
                                new Brief.Buying(
                                        List.copyOf(terms.suppliers()),
                                        brief.buying().atMostSuppliers(),
                                        brief.buying().withinDays()))
                        .toBrief();
        SearchSpace space = SearchSpace.of(asked, stocked(terms, machines));
        if (space.candidates().impossible()) {
            return Optional.empty();
        }
        Certificate certificate =
                new TwoStage(limits.seed(), limits.moves(), limits.steps(), () -> false)
                        .best(space.within(CeilingRule.limitMinor(asked)), Objective.leastMoney());
        complete &= certificate.complete();
        return certificate
                .best()
                .map(
                        standing ->
                                least(
                                        standing.build(),
                                        space.assessor().assess(standing.build()).cost()));
    }

    private Least least(Build build, Cost cost) {
        Map<Source, Integer> pieces = new java.util.LinkedHashMap<>();
        long each = 0;
        for (Cost.Line line : cost.lines()) {
            each += line.unitMinor() * line.pieces();
            Source source = new Source(build.part(line.slot()).id(), line.supplier());
            pieces.merge(source, line.pieces(), Integer::sum);
        }
        int upTo = Integer.MAX_VALUE;
        for (Map.Entry<Source, Integer> entry : pieces.entrySet()) {
            upTo = Math.min(upTo, stock(entry.getKey()) / entry.getValue());
        }
        return new Least(build, pieces, each, upTo);
    }

    /** What a supplier has of a part. */
    int stock(Source source) {
        return catalogue.offers(source.part()).stream()
                .filter(offer -> offer.supplier().equals(source.supplier()))
                .mapToInt(Offer::stock)
                .max()
                .orElse(0);
    }

    /** The catalogue without deliveries, in which offers last for the packs that are allowed. */
    private Catalogue stocked(Terms terms, int machines) {
        return with(
                catalogue,
                supplier ->
                        new Supplier(
                                supplier.id(), supplier.name(), Money.zero(catalogue.currency())),
                offer -> {
                    Integer most =
                            terms.mostPieces().get(new Source(offer.part(), offer.supplier()));
                    return most == null ? offer : holding(offer, most * machines);
                });
    }

    /** A catalogue in which each part that a build buys has the one offer it was chosen with. */
    static Catalogue only(Catalogue catalogue, Set<Source> sources) {
        Set<String> bought = new java.util.HashSet<>();
        sources.forEach(source -> bought.add(source.part()));
        return with(
                catalogue,
                UnaryOperator.identity(),
                offer ->
                        bought.contains(offer.part())
                                        && !sources.contains(
                                                new Source(offer.part(), offer.supplier()))
                                ? holding(offer, 0)
                                : offer);
    }

    private static Offer holding(Offer offer, int most) {
        return new Offer(
                offer.part(),
                offer.supplier(),
                offer.price(),
                Math.min(offer.stock(), most),
                offer.leadDays(),
                offer.asOf());
    }

    private static Catalogue with(
            Catalogue catalogue, UnaryOperator<Supplier> supplier, UnaryOperator<Offer> change) {
        List<Part> parts = new ArrayList<>();
        List<Offer> offers = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (Part part : catalogue.parts(kind)) {
                parts.add(part);
                catalogue.offers(part.id()).forEach(offer -> offers.add(change.apply(offer)));
            }
        }
        return new Catalogue(
                catalogue.name(),
                catalogue.currency(),
                catalogue.asOf(),
                catalogue.digest(),
                catalogue.reference(),
                catalogue.suppliers().stream().map(supplier).toList(),
                parts,
                offers,
                catalogue.workloads());
    }
}
