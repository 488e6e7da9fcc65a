package rigbrief.proposal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessor;
import rigbrief.assess.Pricing;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Supplier;
import rigbrief.proposal.LeastBuilds.Least;
import rigbrief.proposal.LeastBuilds.Source;
import rigbrief.proposal.LeastBuilds.Terms;
import rigbrief.quantity.Money;

/**
 * Finds the order in two variants that costs least, for a brief that allows them where no build can
 * be had for all machines.
 *
 * <p>Every set of suppliers and every way to share the machines out is looked at, the cheapest
 * bound first, until none can beat the best mix found. Once both are settled the two variants have
 * nothing to do with each other, but for an offer that both take more of than there is: then one of
 * them takes fewer packs of it, and each case is looked at (conflict-based search: G. Sharon, R.
 * Stern, A. Felner and N. Sturtevant, Artificial Intelligence 219, 2015). So the mix is proven to
 * be the cheapest, unless the limits ended a search.
 */
public final class VariantProposer {
    /** Up to so many suppliers all sets of them are looked at, beyond that small ones. */
    private static final int ALL_SETS = 8;

    private static final int SMALL_SET = 3;

    /** Searches at most. */
    private static final int MOST_SEARCHES = 600;

    private final SearchLimits limits;

    /** A proposer that searches no harder than the limits say. */
    public VariantProposer(SearchLimits limits) {
        this.limits = limits;
    }

    /** The cheapest mix; empty when the brief allows none, is for one machine, or there is none. */
    public Optional<Mix> propose(Brief brief, Catalogue catalogue) {
        if (!brief.buying().variants() || brief.quantity() < 2) {
            return Optional.empty();
        }
        return new Finding(brief, catalogue).best();
    }

    /** Two variants. */
    private record Two(int machines, Least first, int others, Least second, long minor) {
        Set<String> suppliers() {
            Set<String> all = new LinkedHashSet<>();
            first.pieces().keySet().forEach(source -> all.add(source.supplier()));
            second.pieces().keySet().forEach(source -> all.add(source.supplier()));
            return all;
        }
    }

    private final class Finding {
        private final Brief brief;
        private final Catalogue catalogue;
        private final LeastBuilds builds;
        private final Pricing pricing;
        private Two best;
        private boolean complete = true;

        Finding(Brief brief, Catalogue catalogue) {
            this.brief = brief;
            this.catalogue = catalogue;
            this.builds = new LeastBuilds(brief, catalogue, limits);
            this.pricing = new Assessor(brief, catalogue).pricing();
        }

        Optional<Mix> best() {
            List<Case> cases = new ArrayList<>();
            for (Set<String> suppliers : sets()) {
                cases(suppliers, cases);
            }
            cases.sort(Comparator.comparingLong(Case::boundMinor));
            for (Case one : cases) {
                if (beaten(one.boundMinor())) {
                    break;
                }
                share(new Terms(one.suppliers(), Map.of()), one.first(), one.suppliers());
            }
            return Optional.ofNullable(best).map(this::mix);
        }

        private List<String> allowed() {
            List<String> allowed = new ArrayList<>();
            for (Supplier supplier : catalogue.suppliers()) {
                boolean may =
                        brief.buying().suppliers().isEmpty()
                                || brief.buying().suppliers().contains(supplier.id());
                if (may) {
                    allowed.add(supplier.id());
                }
            }
            return allowed;
        }

        /** Sets of suppliers, those whose deliveries cost least first. */
        private List<Set<String>> sets() {
            List<String> allowed = allowed();
            int most = brief.buying().atMostSuppliers().orElse(allowed.size());
            int size = allowed.size() <= ALL_SETS ? most : Math.min(most, SMALL_SET);
            List<Set<String>> sets = new ArrayList<>();
            grow(allowed, 0, new ArrayDeque<>(), size, sets);
            sets.sort(Comparator.comparingLong(this::deliveryMinor));
            return sets;
        }

        private void grow(
                List<String> from, int next, Deque<String> set, int size, List<Set<String>> sets) {
            for (int i = next; i < from.size() && set.size() < size; i++) {
                set.addLast(from.get(i));
                sets.add(new LinkedHashSet<>(set));
                grow(from, i + 1, set, size, sets);
                set.removeLast();
            }
        }

        private long deliveryMinor(Set<String> ids) {
            return catalogue.suppliers().stream()
                    .filter(supplier -> ids.contains(supplier.id()))
                    .mapToLong(supplier -> supplier.delivery().minorUnits())
                    .sum();
        }

        /** Every way to share the machines out with a set of suppliers, while it has builds. */
        private void cases(Set<String> suppliers, List<Case> cases) {
            Terms terms = new Terms(suppliers, Map.of());
            int all = brief.quantity();
            for (int first = (all + 1) / 2; first < all; first++) {
                if (builds.searches() >= MOST_SEARCHES) {
                    complete = false;
                    return;
                }
                Optional<Least> one = builds.of(terms, first);
                Optional<Least> other = builds.of(terms, all - first);
                if (one.isEmpty() || other.isEmpty()) {
                    // More machines leave no more builds than fewer.
                    return;
                }
                cases.add(
                        new Case(
                                suppliers,
                                first,
                                minor(one.get(), other.get(), first) + deliveryMinor(suppliers)));
            }
        }

        private boolean beaten(long minor) {
            return best != null && minor >= best.minor();
        }

        private long minor(Least one, Least other, int first) {
            return first * one.eachMinor() + (brief.quantity() - first) * other.eachMinor();
        }

        /** Suppliers, machines of the first variant, and what no such mix is cheaper than. */
        private record Case(Set<String> suppliers, int first, long boundMinor) {}

        /** The two variants' terms, which part as they get in each other's way. */
        private record Node(Terms one, Terms other) {}

        /** Looks at one way to share the machines out among a set of suppliers. */
        private void share(Terms terms, int first, Set<String> suppliers) {
            int others = brief.quantity() - first;
            Deque<Node> open = new ArrayDeque<>(List.of(new Node(terms, terms)));
            while (!open.isEmpty()) {
                Node node = open.pop();
                if (builds.searches() >= MOST_SEARCHES) {
                    complete = false;
                    return;
                }
                Optional<Least> one = builds.of(node.one(), first);
                Optional<Least> other = builds.of(node.other(), others);
                if (one.isEmpty() || other.isEmpty()) {
                    continue;
                }
                long minor = minor(one.get(), other.get(), first);
                if (beaten(minor + deliveryMinor(suppliers))) {
                    continue;
                }
                Optional<Source> fought = fought(one.get(), first, other.get(), others);
                if (fought.isEmpty()) {
                    keep(new Two(first, one.get(), others, other.get(), minor));
                    continue;
                }
                Source source = fought.get();
                int ours = one.get().pieces().get(source);
                int theirs = other.get().pieces().get(source);
                open.push(new Node(node.one(), node.other().under(source, theirs)));
                open.push(new Node(node.one().under(source, ours), node.other()));
            }
        }

        /** An offer of which the two together take more than there is. */
        private Optional<Source> fought(Least one, int first, Least other, int others) {
            for (Map.Entry<Source, Integer> taken : one.pieces().entrySet()) {
                Integer theirs = other.pieces().get(taken.getKey());
                if (theirs != null
                        && (long) taken.getValue() * first + (long) theirs * others
                                > builds.stock(taken.getKey())) {
                    return Optional.of(taken.getKey());
                }
            }
            return Optional.empty();
        }

        private void keep(Two two) {
            Two whole =
                    new Two(
                            two.machines(),
                            two.first(),
                            two.others(),
                            two.second(),
                            two.minor() + deliveryMinor(two.suppliers()));
            boolean affordable = pricing.totalMinor(whole.minor()) <= brief.ceiling().minorUnits();
            if (affordable && !beaten(whole.minor())) {
                best = whole;
            }
        }

        private Mix mix(Two two) {
            long total = pricing.totalMinor(two.minor());
            return new Mix(
                    share(two.machines(), two.first(), total),
                    share(two.others(), two.second(), total),
                    total,
                    two.suppliers().size(),
                    complete && builds.complete() && allowed().size() <= ALL_SETS);
        }

        private Mix.Share share(int machines, Least least, long total) {
            Catalogue chosen = LeastBuilds.only(catalogue, least.pieces().keySet());
            Brief some = new BriefDraft(brief).quantity(machines).toBrief();
            Audit audit = new Auditor(some, chosen).audit(least.build());
            if (!audit.fits()) {
                throw new IllegalStateException(
                        "the search found a variant that the judge refuses: " + audit.findings());
            }
            long others = total - audit.cost().totalMinor();
            Brief own =
                    new BriefDraft(some)
                            .ceiling(
                                    Money.ofMinor(
                                            brief.ceiling().minorUnits() - others,
                                            brief.currency()))
                            .toBrief();
            Filing filing = new Filing(own, chosen, new Assessor(own, chosen));
            return new Mix.Share(machines, audit, filing.record(least.build(), Tier.LEAN));
        }
    }
}
