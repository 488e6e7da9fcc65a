package rigbrief.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Memory with case and cooler: the rate of memory sets how hard processor and card work, and with
 * it what case and cooler have to carry off. Kits of one rate share their cases and coolers.
 */
final class Housings extends KeptCouple {
    /** Cases with coolers at one memory rate. */
    interface AtRate {
        /** Fills them; what is left of the cases is narrowed to those that will do. */
        void fill(Shelters shelters, int memory, long[] caseLeft);
    }

    private final SlotTable kits;
    private final double[] worth;
    private final Supplier<Shelters> make;
    private final List<Shelters> shelters = new ArrayList<>();
    private final List<long[]> casesLeft = new ArrayList<>();
    private final int[] housing;

    Housings(SlotTable kits, double[] worth, int sets, Supplier<Shelters> make) {
        super(kits.size(), worth.length, sets);
        this.kits = kits;
        this.worth = worth;
        this.make = make;
        this.housing = new int[kits.size()];
    }

    /** Cases with coolers at the rate of a kit. */
    Shelters shelters(int kit) {
        return shelters.get(housing[kit]);
    }

    /** What is left of the cases at the rate of a kit. */
    long[] casesLeft(int kit) {
        return casesLeft.get(housing[kit]);
    }

    /**
     * Fills everything anew.
     *
     * @param alive supplier sets to look at
     * @param kitsLeft kits that are left; those for which no case will do are taken out
     * @param rate memory rate of each kit that is left, in MT/s
     * @param gain points of each kit while its slot is open
     * @param caseLeft what is left of the cases
     * @return whether a kit was taken out
     */
    boolean fill(
            Bounder.AliveSets alive,
            long[] kitsLeft,
            int[] rate,
            double[] gain,
            long[] caseLeft,
            AtRate atRate) {
        clear(alive, kitsLeft);
        Map<Integer, Integer> byRate = new HashMap<>();
        boolean out = false;
        for (int m = 0; m < kits.size(); m++) {
            if (SlotTable.has(kitsLeft, m)) {
                Integer known = byRate.get(rate[m]);
                if (known == null) {
                    known = byRate.size();
                    byRate.put(rate[m], known);
                    fill(known, m, caseLeft, atRate);
                }
                housing[m] = known;
                if (SlotTable.empty(casesLeft.get(known))) {
                    kitsLeft[m >> 6] &= ~(1L << m);
                    out = true;
                } else {
                    take(alive, m, gain[m], shelters.get(known));
                }
            }
        }
        return out;
    }

    private void fill(int index, int kit, long[] caseLeft, AtRate atRate) {
        if (index == shelters.size()) {
            shelters.add(make.get());
            casesLeft.add(caseLeft.clone());
        }
        long[] left = casesLeft.get(index);
        System.arraycopy(caseLeft, 0, left, 0, left.length);
        atRate.fill(shelters.get(index), kit, left);
    }

    private void take(Bounder.AliveSets alive, int m, double gain, Shelters at) {
        long[] minor = kits.candidate(m).minorBySet();
        for (int k = 0; k < alive.count(); k++) {
            int s = alive.get(k);
            leastWith(m, k, minor[s] + at.least(s));
            for (int w = 0; w < worth.length; w++) {
                netWith(m, w, k, gain - worth[w] * minor[s] + at.net(w, s));
            }
        }
        count(alive, m);
    }
}
