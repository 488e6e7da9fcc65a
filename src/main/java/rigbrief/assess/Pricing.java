package rigbrief.assess;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/**
 * Prices a build: for every set of suppliers the brief allows, each part from the cheapest of the
 * set, plus one delivery from each; the set that costs least wins.
 *
 * <p>Exact whole minor units throughout. With many suppliers the sets are limited to small ones.
 */
public final class Pricing {
    /**
     * Up to this many suppliers every set is tried; beyond it, sets of at most {@link #SMALL_SET}.
     */
    private static final int ALL_SETS_UP_TO = 8;

    private static final int SMALL_SET = 3;
    private static final Slot[] SLOTS = Slot.values();
    private static final long NONE = Long.MAX_VALUE / 64;

    private final Brief brief;
    private final Offers offers;
    private final int[] sets;
    private final long[] deliveryOfSet;
    private final long sunkMinor;
    private final Settled.Holding[] holdings = new Settled.Holding[SLOTS.length];
    private final Map<Offer[], long[]> minor = new IdentityHashMap<>();

    Pricing(Brief brief, Offers offers, Settled settled) {
        this.brief = brief;
        this.offers = offers;
        this.sunkMinor = settled.sunkMinor();
        settled.holdings().forEach(holding -> holdings[holding.slot().ordinal()] = holding);
        this.sets = sets(offers.suppliers().size(), brief);
        this.deliveryOfSet = new long[sets.length];
        for (int i = 0; i < sets.length; i++) {
            deliveryOfSet[i] = sunkMinor;
            for (int s = 0; s < offers.suppliers().size(); s++) {
                if ((sets[i] >> s & 1) == 1) {
                    deliveryOfSet[i] += offers.suppliers().get(s).delivery().minorUnits();
                }
            }
        }
    }

    /** Sets of suppliers as bit masks, fewest suppliers first; the empty set is not among them. */
    public int[] supplierSets() {
        return sets.clone();
    }

    /**
     * Deliveries from all suppliers of a set, by its index, with what was paid before; in minor
     * units.
     */
    public long deliveryMinor(int set) {
        return deliveryOfSet[set];
    }

    /**
     * What all machines' packs of a part cost when bought within a set, in minor units; empty when
     * the set does not offer it.
     */
    public long[] minorBySet(Part part, int pieces) {
        return unitsBySet(offers.of(part, pieces), pieces * brief.quantity());
    }

    /**
     * What filling a slot costs by set, in minor units: what is still to be bought, what was paid
     * for the part before, or what is lost when another was ordered for the slot.
     *
     * @param part the part; null for an empty slot
     */
    public long[] minorBySet(Slot slot, Part part, int pieces) {
        long[] bySet = new long[sets.length];
        int units = part == null ? 0 : unitsToBuy(slot, part, pieces);
        if (units > 0) {
            bySet = unitsBySet(bought(slot, part, pieces, units), units).clone();
        }
        long settled = settledMinor(slot, part);
        for (int i = 0; i < bySet.length; i++) {
            bySet[i] = bySet[i] == NONE ? NONE : bySet[i] + settled;
        }
        return bySet;
    }

    private long[] unitsBySet(Offer[] bySupplier, int units) {
        return minor.computeIfAbsent(bySupplier, any -> computed(bySupplier, units));
    }

    private long[] computed(Offer[] bySupplier, int units) {
        long[] least = new long[sets.length];
        for (int i = 0; i < sets.length; i++) {
            int s = cheapestIndex(bySupplier, sets[i]);
            least[i] = s < 0 ? NONE : bySupplier[s].price().minorUnits() * units;
        }
        return least;
    }

    /** Packs of a part that all machines together still have to buy for a slot. */
    public int unitsToBuy(Slot slot, Part part, int pieces) {
        Settled.Holding holding = holdings[slot.ordinal()];
        int wanted = pieces * brief.quantity();
        return holding != null && holding.of(part) ? Math.max(0, wanted - holding.units()) : wanted;
    }

    private Offer[] bought(Slot slot, Part part, int pieces, int units) {
        return units == pieces * brief.quantity()
                ? offers.of(part, pieces)
                : offers.ofUnits(part, units);
    }

    /** What was paid for the part in a slot, or is lost on the one that was ordered for it. */
    private long settledMinor(Slot slot, Part part) {
        Settled.Holding holding = holdings[slot.ordinal()];
        if (holding == null) {
            return 0;
        }
        return holding.of(part) ? holding.paidMinor() : holding.lossMinor();
    }

    /** The amount that stands for "not to be had". */
    public static long notToBeHad() {
        return NONE;
    }

    /** Parts and delivery with fees and tax on top, in minor units. */
    public long totalMinor(long partsAndDelivery) {
        long fees = brief.fees().assembly().minorUnits() * brief.quantity();
        return partsAndDelivery + fees + tax(partsAndDelivery + fees);
    }

    /** Whether the part in a slot is the client's own, or was ordered for it before. */
    public boolean kept(Slot slot, Part part) {
        Settled.Holding holding = holdings[slot.ordinal()];
        return holding != null && holding.of(part) || clients(slot, part);
    }

    private boolean clients(Slot slot, Part part) {
        for (Kept kept : brief.keep()) {
            if (kept.slot() == slot && kept.part().id().equals(part.id())) {
                return true;
            }
        }
        return false;
    }

    Cost cost(Build build) {
        List<Slot> unavailable = new ArrayList<>(0);
        Offer[][] offered = new Offer[SLOTS.length][];
        for (Slot slot : SLOTS) {
            int units = unitsToBuy(build, slot);
            if (units > 0) {
                Offer[] bySupplier = bought(slot, build.part(slot), build.pieces(slot), units);
                if (bySupplier.length == 0) {
                    unavailable.add(slot);
                } else {
                    offered[slot.ordinal()] = bySupplier;
                }
            }
        }
        return cost(build, offered, bestSet(build, offered), unavailable);
    }

    private int unitsToBuy(Build build, Slot slot) {
        return build.has(slot) && !clients(slot, build.part(slot))
                ? unitsToBuy(slot, build.part(slot), build.pieces(slot))
                : 0;
    }

    private int bestSet(Build build, Offer[][] offered) {
        long[] sums = null;
        for (Slot slot : SLOTS) {
            if (offered[slot.ordinal()] != null) {
                long[] prices = unitsBySet(offered[slot.ordinal()], unitsToBuy(build, slot));
                sums = sums == null ? deliveryOfSet.clone() : sums;
                for (int i = 0; i < sums.length; i++) {
                    sums[i] += prices[i];
                }
            }
        }
        return sums == null ? -1 : leastOf(sums);
    }

    private static int leastOf(long[] sums) {
        int best = -1;
        for (int i = 0; i < sums.length; i++) {
            if (sums[i] < NONE && (best < 0 || sums[i] < sums[best])) {
                best = i;
            }
        }
        return best;
    }

    private Cost cost(Build build, Offer[][] offered, int set, List<Slot> unavailable) {
        long parts = 0;
        List<Cost.Line> lines = new ArrayList<>(SLOTS.length);
        int used = 0;
        int longest = 0;
        int single = 0;
        // No set offers everything (too few suppliers allowed): each part from its cheapest, and
        // the rules tell.
        int mask = set >= 0 ? sets[set] : -1;
        for (Slot slot : SLOTS) {
            Offer[] bySupplier = offered[slot.ordinal()];
            Settled.Holding holding = holdings[slot.ordinal()];
            if (holding != null) {
                parts += settledMinor(slot, build.has(slot) ? build.part(slot) : null);
                boolean stays = build.has(slot) && holding.of(build.part(slot));
                if (bySupplier == null && stays && holding.supplier().isPresent()) {
                    lines.add(settledLine(holding, build.pieces(slot)));
                }
            }
            if (bySupplier != null) {
                int s = cheapestIndex(bySupplier, mask);
                Offer offer = bySupplier[s];
                int pieces = build.pieces(slot);
                parts += offer.price().minorUnits() * unitsToBuy(build, slot);
                lines.add(
                        new Cost.Line(
                                slot,
                                offer.supplier(),
                                offer.price().minorUnits(),
                                pieces,
                                offer.leadDays()));
                used |= 1 << s;
                longest = Math.max(longest, offer.leadDays());
                single += offerCount(bySupplier) == 1 ? 1 : 0;
            }
        }
        long delivery = sunkMinor + delivery(used);
        long fees = brief.fees().assembly().minorUnits() * brief.quantity();
        long tax = tax(parts + delivery + fees);
        return new Cost(
                parts,
                delivery,
                fees,
                tax,
                parts + delivery + fees + tax,
                lines,
                Integer.bitCount(used),
                longest,
                single,
                unavailable);
    }

    /** A part that is all settled; it waits for nobody. */
    private static Cost.Line settledLine(Settled.Holding holding, int pieces) {
        return new Cost.Line(
                holding.slot(),
                holding.supplier().orElseThrow(),
                holding.paidMinor() / holding.units(),
                pieces,
                0);
    }

    private long delivery(int used) {
        long delivery = 0;
        List<Supplier> suppliers = offers.suppliers();
        for (int s = 0; s < suppliers.size(); s++) {
            if ((used >> s & 1) == 1) {
                delivery += suppliers.get(s).delivery().minorUnits();
            }
        }
        return delivery;
    }

    private long tax(long taxed) {
        int basisPoints = brief.fees().taxBasisPoints();
        if (basisPoints == 0) {
            return 0;
        }
        return BigDecimal.valueOf(taxed)
                .multiply(BigDecimal.valueOf(basisPoints, 4))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static int cheapestIndex(Offer[] bySupplier, int mask) {
        int best = -1;
        for (int s = 0; s < bySupplier.length; s++) {
            if ((mask >> s & 1) == 1
                    && bySupplier[s] != null
                    && (best < 0
                            || bySupplier[s].price().compareTo(bySupplier[best].price()) < 0)) {
                best = s;
            }
        }
        return best;
    }

    private static int offerCount(Offer[] bySupplier) {
        int count = 0;
        for (Offer offer : bySupplier) {
            if (offer != null) {
                count++;
            }
        }
        return count;
    }

    private static int[] sets(int suppliers, Brief brief) {
        int largest = suppliers <= ALL_SETS_UP_TO ? suppliers : SMALL_SET;
        largest = Math.min(largest, brief.buying().atMostSuppliers().orElse(largest));
        List<Integer> sets = new ArrayList<>();
        for (int size = 1; size <= largest; size++) {
            addSets(0, 0, size, suppliers, sets);
        }
        return sets.stream().mapToInt(Integer::intValue).toArray();
    }

    private static void addSets(
            int mask, int from, int missing, int suppliers, List<Integer> sets) {
        if (missing == 0) {
            sets.add(mask);
            return;
        }
        for (int s = from; s <= suppliers - missing; s++) {
            addSets(mask | 1 << s, s + 1, missing - 1, suppliers, sets);
        }
    }
}
