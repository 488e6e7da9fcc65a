package rigbrief.search;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Case, cooler and fans where only money counts: the cheapest of each are seldom cool and quiet
 * enough together. Beside a pair, once more when the memory's rate is decided, and in a case.
 *
 * <p>Mutable: filled anew whenever what it depends on is decided anew.
 */
final class LeastHousing extends KeptCouple implements Housing {
    private static final int PAIR = OpenSlots.PAIR;

    /** So many cases passed over take as long as one cooler. Measured. */
    private static final int QUICK = 64;

    /** Of so few cases each is asked for whether it will do, since fewer cases leave less else. */
    private static final int FEW = 200;

    private final OpenSlots slots;
    private final SoundOutlook sound;
    private final Rounds rounds;
    private final int supplyLevel;
    private final int caseLevel;
    private final int coolerLevel;
    private final int fansLevel;
    private final int[] sheltering;
    private final int[] cooling;
    private final SlotTable cases;
    private final boolean few;
    private final QuietEnough quietEnough;
    private final LeastCooling beside;
    private final LeastCooling inCase;
    private final Map<Outlook.Pair, Known> known = new IdentityHashMap<>();
    private final BesidePair besidePair;
    private boolean pairKnown;
    private long passedOver;

    private record Known(long[] least, long[] coolersLeft, long[] casesLeft) {}

    LeastHousing(OpenSlots slots, SoundOutlook sound, List<Slot> order, Rounds rounds) {
        super(slots.table(order.indexOf(Slot.CASE)).size(), slots.worth().length, slots.sets());
        this.slots = slots;
        this.sound = sound;
        this.rounds = rounds;
        this.supplyLevel = order.indexOf(Slot.SUPPLY);
        this.caseLevel = order.indexOf(Slot.CASE);
        this.coolerLevel = order.indexOf(Slot.COOLER);
        this.fansLevel = order.indexOf(Slot.FANS);
        this.sheltering = new int[] {caseLevel, coolerLevel, fansLevel};
        this.cooling = new int[] {coolerLevel, fansLevel};
        this.cases = slots.table(caseLevel);
        this.few = cases.size() <= FEW;
        SlotTable coolers = slots.table(coolerLevel);
        SlotTable fans = slots.table(fansLevel);
        this.quietEnough = new QuietEnough(sound, coolers, fans);
        this.beside =
                new LeastCooling(coolers, fans, slots.pairs(), sound, slots.worth(), slots.sets());
        this.inCase =
                new LeastCooling(coolers, fans, slots.pairs(), sound, slots.worth(), slots.sets());
        this.besidePair = new BesidePair(slots.worth().length, slots.sets());
    }

    /** Least prices beside a pair; with one of the cases nothing more is known. */
    private static final class BesidePair extends Couple {
        BesidePair(int worths, int sets) {
            super(worths, sets);
            for (double[] bySet : net) {
                Arrays.fill(bySet, Double.POSITIVE_INFINITY);
            }
        }

        @Override
        long leastWith(int first, int set) {
            return least[set];
        }

        @Override
        double netWith(int first, int w, int set) {
            return Double.POSITIVE_INFINITY;
        }
    }

    @Override
    public int[] slots(int level) {
        if (level > coolerLevel) {
            return NONE;
        }
        if (level > caseLevel) {
            return rounds.seen(level, coolerLevel) >= 0 ? cooling : NONE;
        }
        return pairKnown || rounds.seen(level, caseLevel) >= 0 ? sheltering : NONE;
    }

    @Override
    public Couple couple(int level) {
        if (slots(level).length == 0) {
            return null;
        }
        if (level > caseLevel) {
            return inCase;
        }
        return rounds.seen(level, caseLevel) >= 0 ? this : besidePair;
    }

    @Override
    public boolean knows(Outlook.Pair pair) {
        return known.containsKey(pair);
    }

    @Override
    public void forgetPair() {
        pairKnown = false;
    }

    @Override
    public void pass(int level, Candidate candidate) {}

    @Override
    public void board(int level) {}

    /** Coolers and fans asked for; cases passed over count less. */
    @Override
    public long tried() {
        return beside.asked() + inCase.asked() + passedOver / QUICK;
    }

    @Override
    public boolean reckon(int level, int open, int round, Unfinished unfinished) {
        if (open == caseLevel) {
            return besideKit(level, unfinished);
        }
        if (open == coolerLevel) {
            inCase(level, unfinished);
        }
        return true;
    }

    @Override
    public boolean besidePair(Unfinished unfinished) {
        Known of = known.get(unfinished.pair());
        if (of == null) {
            begin(PAIR, unfinished);
            if (!slots.keep(PAIR, coolerLevel, quietEnough::inTheOpen)) {
                return false;
            }
            long[] left = slots.domain(PAIR, caseLevel).clone();
            Arrays.fill(least, 0); // Nothing is known of supplier sets that are not looked at.
            fill(PAIR, slots.alive(PAIR), left, unfinished);
            of = new Known(least.clone(), slots.domain(PAIR, coolerLevel).clone(), left);
            known.put(unfinished.pair(), of);
        }
        long[] coolersLeft = of.coolersLeft();
        long[] casesLeft = of.casesLeft();
        if (!slots.keep(PAIR, coolerLevel, i -> SlotTable.has(coolersLeft, i))
                || !slots.keep(PAIR, caseLevel, i -> SlotTable.has(casesLeft, i))) {
            return false;
        }
        System.arraycopy(of.least(), 0, besidePair.least, 0, of.least().length);
        pairKnown = true;
        return true;
    }

    /** Once the memory is decided; false when no case will do. */
    private boolean besideKit(int level, Unfinished unfinished) {
        begin(level + 1, unfinished);
        long[] left = slots.domain(level + 1, caseLevel);
        if (fill(level + 1, slots.kept(level + 1), left, unfinished)) {
            slots.refresh(level + 1, caseLevel);
        }
        return !SlotTable.empty(left);
    }

    private void inCase(int level, Unfinished unfinished) {
        begin(level + 1, unfinished);
        inCase.among(
                slots.kept(level + 1),
                slots.domain(level + 1, coolerLevel),
                slots.domain(level + 1, fansLevel));
        inCase.fill(unfinished, quietEnough);
    }

    private void begin(int level, Unfinished unfinished) {
        quietEnough.begin(
                unfinished,
                sound.quietestSupplyDba(
                        unfinished, slots.table(supplyLevel), slots.domain(level, supplyLevel)));
    }

    /** Looks into cases, the cheapest first; whether some case was taken out. */
    private boolean fill(int level, Bounder.AliveSets sets, long[] left, Unfinished unfinished) {
        beside.among(sets, slots.domain(level, coolerLevel), slots.domain(level, fansLevel));
        clear(sets, left);
        long[] inside = new long[sets.count()];
        long[] best = new long[sets.count()];
        Arrays.fill(best, Long.MAX_VALUE);
        for (int k = 0; k < inside.length; k++) {
            inside[k] = beside.leastApart(k);
        }
        for (int c = 0; c < cases.size(); c++) {
            if (SlotTable.has(left, c)) {
                apart(level, sets, c, inside);
            }
        }
        boolean out = false;
        for (int c : sets.count() == 0 ? NONE : cases.byPrice(sets.get(0))) {
            passedOver++;
            boolean cheaper = SlotTable.has(left, c) && cheaper(sets, c, best);
            if (cheaper || (few && SlotTable.has(left, c))) {
                unfinished.decide(cases.candidate(c));
                if (!quietEnough.some()) {
                    left[c >> 6] &= ~(1L << c);
                    out = true;
                } else if (cheaper) {
                    lower(sets, c, best, unfinished);
                }
            }
        }
        unfinished.undo(Slot.CASE);
        for (int k = 0; k < best.length; k++) {
            least[sets.get(k)] = best[k];
            for (double[] bySet : net) {
                bySet[sets.get(k)] = Double.POSITIVE_INFINITY;
            }
        }
        return out;
    }

    private void apart(int level, Bounder.AliveSets sets, int c, long[] inside) {
        long[] minor = cases.candidate(c).minorBySet();
        for (int k = 0; k < inside.length; k++) {
            int s = sets.get(k);
            leastWith(c, k, minor[s] + inside[k]);
            for (int w = 0; w < net.length; w++) {
                double gain = cases.openGain(c) - slots.worth()[w] * minor[s];
                netWith(c, w, k, gain + slots.netApart(level, cooling, w, s));
            }
        }
    }

    private boolean cheaper(Bounder.AliveSets sets, int c, long[] best) {
        for (int k = 0; k < best.length; k++) {
            if (leastWith(c, sets.get(k)) < best[k]) {
                return true;
            }
        }
        return false;
    }

    private void lower(Bounder.AliveSets sets, int c, long[] best, Unfinished unfinished) {
        long[] minor = cases.candidate(c).minorBySet();
        long[] limit = new long[best.length];
        for (int k = 0; k < limit.length; k++) {
            limit[k] = best[k] == Long.MAX_VALUE ? best[k] : best[k] - minor[sets.get(k)];
        }
        beside.lower(unfinished, quietEnough, limit);
        for (int k = 0; k < limit.length; k++) {
            if (limit[k] != Long.MAX_VALUE) {
                long with = minor[sets.get(k)] + limit[k];
                // Either what it costs, or known to be no cheaper than the best so far.
                leastWith(c, k, Math.max(leastWith(c, sets.get(k)), with));
                best[k] = Math.min(best[k], with);
            }
        }
    }
}
