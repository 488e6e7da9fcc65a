package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Settled;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Tries every build of a small catalogue and keeps the one that disturbs a filed build least; money
 * is reckoned anew, supplier set by supplier set.
 *
 * <p>A branch is left when what is decided already disturbs more than the best build found.
 */
final class EveryBuild {
    private static final List<Slot> ORDER =
            List.of(
                    Slot.PROCESSOR,
                    Slot.BOARD,
                    Slot.MEMORY,
                    Slot.CASE,
                    Slot.GRAPHICS,
                    Slot.COOLER,
                    Slot.WIRELESS,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.DISPLAY,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.SUPPLY,
                    Slot.FANS,
                    Slot.CABLES);

    private final Brief brief;
    private final Catalogue catalogue;
    private final Build filed;
    private final Settled settled;
    private final long[] weightMinor;
    private final Assessor assessor;
    private final List<List<Rule>> rulesAt = new ArrayList<>();

    /**
     * Disturbance, changed slots, total and points of the least change; null when there is none.
     */
    long[] least;

    /** The build itself. */
    Build leastBuild;

    /** How many sound builds were seen. */
    int sound;

    /**
     * Tries them.
     *
     * @param weightMinor by slot, the weight of giving up what is here
     */
    EveryBuild(Brief brief, Catalogue catalogue, Build filed, Settled settled, long[] weightMinor) {
        this.brief = brief;
        this.catalogue = catalogue;
        this.filed = filed;
        this.settled = settled;
        this.weightMinor = weightMinor;
        this.assessor = new Assessor(brief, catalogue, settled);
        for (int i = 0; i < ORDER.size(); i++) {
            rulesAt.add(new ArrayList<>());
        }
        for (Rule rule : Rules.ALL) {
            int last = rule.reads().isEmpty() ? ORDER.size() - 1 : 0;
            for (Slot slot : rule.reads()) {
                last = Math.max(last, ORDER.indexOf(slot));
            }
            rulesAt.get(last).add(rule);
        }
        decide(0, Build.empty(), 0, 0);
    }

    private void decide(int depth, Build build, long disturbance, long changes) {
        boolean worse =
                least != null
                        && (disturbance > least[0]
                                || (disturbance == least[0] && changes > least[1]));
        if (worse) {
            return;
        }
        if (depth == ORDER.size()) {
            judge(assessor.assess(build), disturbance, changes);
            return;
        }
        Slot slot = ORDER.get(depth);
        for (Kept kept : brief.keep()) {
            if (kept.slot() == slot) {
                next(depth, build.with(slot, kept.part(), kept.pieces()), disturbance, changes);
                return;
            }
        }
        if (!slot.required()) {
            next(depth, build, disturbance, changes);
        }
        int least = slot == Slot.DISPLAY ? brief.screen().map(s -> s.count()).orElse(1) : 1;
        int most = slot == Slot.DISPLAY ? least : slot.mostPieces();
        for (Part part : catalogue.parts(slot.kind())) {
            for (int pieces = least; pieces <= most; pieces++) {
                next(depth, build.with(slot, part, pieces), disturbance, changes);
            }
        }
    }

    private void next(int depth, Build build, long disturbance, long changes) {
        Slot slot = ORDER.get(depth);
        boolean same =
                build.has(slot) == filed.has(slot)
                        && (!build.has(slot)
                                || build.part(slot).id().equals(filed.part(slot).id())
                                        && build.pieces(slot) == filed.pieces(slot));
        Assessment it = assessor.assess(build);
        for (Rule rule : rulesAt.get(depth)) {
            if (rule.forbids(rule.check(it))) {
                return;
            }
        }
        decide(
                depth + 1,
                build,
                disturbance + (same ? 0 : weightMinor[slot.ordinal()]),
                changes + (same ? 0 : 1));
    }

    private void judge(Assessment it, long disturbance, long changes) {
        sound++;
        long total = total(it.build());
        if (total != it.cost().totalMinor()) {
            throw new AssertionError(
                    "reckoned anew %d, found %d for %s"
                            .formatted(total, it.cost().totalMinor(), it.build()));
        }
        long points = 0;
        for (Goal goal : Goals.ALL) {
            int weight = brief.wishes().weight(goal.info().id());
            points += weight == 0 ? 0 : (long) weight * goal.utility(it);
        }
        long[] found = {disturbance, changes, total, points};
        if (least == null || precedes(found, least)) {
            least = found;
            leastBuild = it.build();
        }
    }

    private static boolean precedes(long[] one, long[] other) {
        for (int i = 0; i < 3; i++) {
            if (one[i] != other[i]) {
                return one[i] < other[i];
            }
        }
        return one[3] > other[3];
    }

    /** Everything, for one machine: what is settled, and the rest from the cheapest suppliers. */
    private long total(Build build) {
        long settledMinor = settled.sunkMinor();
        List<Part> wanted = new ArrayList<>();
        List<Integer> units = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            Part part = build.has(slot) ? build.part(slot) : null;
            int missing = build.pieces(slot);
            for (Settled.Holding holding : settled.holdings()) {
                if (holding.slot() == slot) {
                    boolean used = part != null && part.id().equals(holding.part().id());
                    settledMinor += used ? holding.paidMinor() : holding.lossMinor();
                    missing -= used ? holding.units() : 0;
                }
            }
            boolean kept = brief.keep().stream().anyMatch(it -> it.slot() == slot);
            if (part != null && missing > 0 && !kept) {
                wanted.add(part);
                units.add(missing);
            }
        }
        long untaxed = settledMinor + cheapest(wanted, units);
        untaxed += brief.fees().assembly().minorUnits();
        return untaxed + Math.round(untaxed * brief.fees().taxBasisPoints() / 10_000.0);
    }

    private long cheapest(List<Part> wanted, List<Integer> units) {
        long best = wanted.isEmpty() ? 0 : Long.MAX_VALUE;
        List<Supplier> suppliers = catalogue.suppliers();
        int most = brief.buying().atMostSuppliers().orElse(suppliers.size());
        for (int set = 1; set < 1 << suppliers.size(); set++) {
            if (Integer.bitCount(set) > most) {
                continue;
            }
            long sum = 0;
            for (int s = 0; s < suppliers.size(); s++) {
                sum += (set >> s & 1) == 1 ? suppliers.get(s).delivery().minorUnits() : 0;
            }
            for (int i = 0; i < wanted.size() && sum < Long.MAX_VALUE; i++) {
                long price = price(wanted.get(i), units.get(i), set);
                sum = price < 0 ? Long.MAX_VALUE : sum + price * units.get(i);
            }
            best = Math.min(best, sum);
        }
        return best;
    }

    private long price(Part part, int units, int set) {
        long price = -1;
        for (Offer offer : catalogue.offers(part.id())) {
            boolean allowed =
                    brief.buying().suppliers().isEmpty()
                            || brief.buying().suppliers().contains(offer.supplier());
            boolean soon =
                    brief.buying().withinDays().isEmpty()
                            || offer.leadDays() <= brief.buying().withinDays().getAsInt();
            int s = 0;
            while (!catalogue.suppliers().get(s).id().equals(offer.supplier())) {
                s++;
            }
            if (allowed && soon && (set >> s & 1) == 1 && offer.stock() >= units) {
                long minor = offer.price().minorUnits();
                price = price < 0 ? minor : Math.min(price, minor);
            }
        }
        return price;
    }
}
