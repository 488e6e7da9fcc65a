package rigbrief.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessor;
import rigbrief.assess.Pricing;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * Finds the second variant of a build whose stock does not reach for all machines of a brief.
 *
 * <p>Of the first variant as many are built as stock allows. In the second the parts that ran short
 * are others, and one more part only where nothing else will do. Among the variants that break no
 * rule, with the stock the first leaves over, the one wins that changes fewest parts, then the one
 * that costs least, then the one of higher utility.
 */
public final class VariantFinder {
    /** Builds judged at most; dearer alternatives are left out beyond that. */
    private static final int MOST_AUDITS = 20_000;

    private final Brief brief;
    private final Catalogue catalogue;
    private final Pricing pricing;

    /** A finder for a brief. */
    public VariantFinder(Brief brief, Catalogue catalogue) {
        this.brief = brief;
        this.catalogue = catalogue;
        this.pricing = new Assessor(brief, catalogue).pricing();
    }

    /**
     * The best mix with a build as its first variant; empty when stock reaches for all machines,
     * for none, or no second variant fits.
     */
    public Optional<Mix> find(Build first) {
        int machines = Buildable.of(first, brief, catalogue).whole();
        if (machines == 0 || machines >= brief.quantity()) {
            return Optional.empty();
        }
        Audit audit = new Auditor(of(machines), catalogue).audit(first);
        if (!audit.fits()) {
            return Optional.empty();
        }
        return new Rest(machines, audit).best();
    }

    /** The brief for some of the machines; the ceiling stays that of all. */
    private Brief of(int machines) {
        return new BriefDraft(brief).quantity(machines).toBrief();
    }

    /** The search for what covers the rest. */
    private final class Rest {
        private final int firstMachines;
        private final Audit first;
        private final int machines;
        private final Catalogue left;
        private final Auditor auditor;
        private final List<Mix> found = new ArrayList<>();

        Rest(int firstMachines, Audit first) {
            this.firstMachines = firstMachines;
            this.first = first;
            this.machines = brief.quantity() - firstMachines;
            this.left = Leftover.of(catalogue, first, firstMachines);
            this.auditor = new Auditor(of(machines), left);
        }

        Optional<Mix> best() {
            Build build = first.build();
            List<Slot> shortOf = auditor.audit(build).cost().unavailable();
            if (!shortOf.isEmpty()) {
                fill(build, shortOf, 0);
                if (found.isEmpty()) {
                    withCompanion(build, shortOf);
                }
            }
            return found.stream()
                    .min(
                            Comparator.comparing((Mix mix) -> mix.changed().size())
                                    .thenComparing(Mix::totalMinor)
                                    .thenComparing(mix -> -mix.second().audit().points()));
        }

        private void fill(Build build, List<Slot> slots, int index) {
            if (index == slots.size()) {
                judge(build);
                return;
            }
            Slot slot = slots.get(index);
            int most = most(slots.size());
            alternatives(slot, build).stream()
                    .limit(most)
                    .forEach(
                            part ->
                                    fill(
                                            build.with(slot, part, build.pieces(slot)),
                                            slots,
                                            index + 1));
        }

        private void withCompanion(Build build, List<Slot> shortOf) {
            for (Slot slot : build.filled().keySet()) {
                if (!shortOf.contains(slot) && !kept(slot)) {
                    List<Slot> slots = new ArrayList<>(shortOf);
                    slots.add(slot);
                    fill(build, slots, 0);
                }
            }
        }

        /** So many alternatives a slot that all combinations stay within the limit. */
        private static int most(int slots) {
            return Math.max(2, (int) Math.floor(Math.pow(MOST_AUDITS, 1.0 / slots)));
        }

        private boolean kept(Slot slot) {
            return brief.keep().stream().anyMatch(kept -> kept.slot() == slot);
        }

        /** Parts of which one supplier has enough, the cheapest first. */
        private List<Part> alternatives(Slot slot, Build build) {
            int wanted = build.pieces(slot) * machines;
            return left.parts(slot.kind()).stream()
                    .filter(part -> !part.id().equals(build.part(slot).id()))
                    .filter(part -> price(part, wanted).isPresent())
                    .sorted(Comparator.comparing(part -> price(part, wanted).orElseThrow()))
                    .toList();
        }

        private Optional<Money> price(Part part, int wanted) {
            return left.offers(part.id()).stream()
                    .filter(offer -> offer.stock() >= wanted)
                    .map(Offer::price)
                    .min(Comparator.naturalOrder());
        }

        private void judge(Build build) {
            Audit audit = auditor.audit(build);
            if (audit.fits()) {
                Mix mix = mix(audit);
                boolean few =
                        brief.buying().atMostSuppliers().isEmpty()
                                || mix.suppliers() <= brief.buying().atMostSuppliers().getAsInt();
                if (few && mix.totalMinor() <= brief.ceiling().minorUnits()) {
                    found.add(mix);
                }
            }
        }

        private Mix mix(Audit second) {
            Set<String> suppliers = new LinkedHashSet<>();
            first.cost().lines().forEach(line -> suppliers.add(line.supplier()));
            second.cost().lines().forEach(line -> suppliers.add(line.supplier()));
            long bought = first.cost().partsMinor() + second.cost().partsMinor();
            long total = pricing.totalMinor(bought + delivery(suppliers));
            return new Mix(
                    share(firstMachines, first, catalogue, total),
                    share(machines, second, left, total),
                    total,
                    suppliers.size());
        }

        private Mix.Share share(int share, Audit audit, Catalogue stock, long total) {
            long others = total - audit.cost().totalMinor();
            Brief own =
                    new BriefDraft(brief)
                            .quantity(share)
                            .ceiling(
                                    Money.ofMinor(
                                            brief.ceiling().minorUnits() - others,
                                            brief.currency()))
                            .toBrief();
            Filing filing = new Filing(own, stock, new Assessor(own, stock));
            return new Mix.Share(share, audit, filing.record(audit.build(), Tier.LEAN));
        }

        private long delivery(Set<String> ids) {
            return catalogue.suppliers().stream()
                    .filter(supplier -> ids.contains(supplier.id()))
                    .map(Supplier::delivery)
                    .mapToLong(Money::minorUnits)
                    .sum();
        }
    }
}
