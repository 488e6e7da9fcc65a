package rigbrief.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import rigbrief.assess.MachineRates.Picture;
import rigbrief.part.Graphics;
import rigbrief.presolve.Candidate;

/**
 * Cards that are looked at together: no machine with one of them beats one with a card as fast in
 * everything as the fastest, as cheap as the cheapest.
 *
 * <p>A tree of ever smaller groups of ever more alike cards, halved where they differ most, as in a
 * k-d tree (Bentley 1975). A branch is made only when somebody asks for it, so that a catalogue
 * with thousands of cards costs no more than what is looked into.
 */
final class CardGroup {
    private final SlotTable cards;
    private final double[] worth;
    private final int[] members;
    private final long[] minor;
    private final double[][] net;
    private final Picture ideal;
    private final Picture worst;
    private final double boardPowerW;
    private final boolean none;
    private CardGroup[] halves;

    /**
     * All cards that are left.
     *
     * @param left bit set of indices, at least one of them
     */
    static CardGroup of(SlotTable cards, long[] left, double[] worth, int sets) {
        int[] members =
                IntStream.range(0, cards.size()).filter(i -> SlotTable.has(left, i)).toArray();
        return new CardGroup(cards, members, worth, sets);
    }

    private CardGroup(SlotTable cards, int[] members, double[] worth, int sets) {
        this.cards = cards;
        this.members = members;
        this.worth = worth;
        this.minor = new long[sets];
        this.net = new double[worth.length][sets];
        Arrays.fill(minor, Long.MAX_VALUE);
        for (double[] bySet : net) {
            Arrays.fill(bySet, Double.NEGATIVE_INFINITY);
        }
        boolean empty = false;
        Picture best = null;
        Picture least = null;
        double watts = Double.MAX_VALUE;
        for (int i : members) {
            Candidate card = cards.candidate(i);
            empty |= card.none();
            if (!card.none()) {
                Picture own = picture(i);
                best = best == null ? own : best.atLeast(own);
                least = least == null ? own : least.atMost(own);
                watts = Math.min(watts, ((Graphics) card.partOrNull()).boardPowerW());
            }
            for (int s = 0; s < sets; s++) {
                long price = card.minorBySet()[s];
                minor[s] = Math.min(minor[s], price);
                for (int w = 0; w < worth.length; w++) {
                    net[w][s] = Math.max(net[w][s], cards.openGain(i) - worth[w] * price);
                }
            }
        }
        this.none = empty;
        this.ideal = best;
        this.worst = least;
        this.boardPowerW = watts;
    }

    private Picture picture(int index) {
        return Picture.of((Graphics) cards.candidate(index).partOrNull());
    }

    /** Number of cards, no card counting as one. */
    int size() {
        return members.length;
    }

    /** The only one. */
    Candidate single() {
        return cards.candidate(members[0]);
    }

    /** Index of the first one. */
    int first() {
        return members[0];
    }

    /** Least price of any, by supplier set. */
    long[] minor() {
        return minor;
    }

    /** Most net gain of any, by worth and supplier set. */
    double[][] net() {
        return net;
    }

    /** Whether to go without a card is among them. */
    boolean none() {
        return none;
    }

    /** As fast in everything as the fastest of them; null where there is no card among them. */
    Picture ideal() {
        return ideal;
    }

    /** As slow in everything as the slowest of them; null where there is no card among them. */
    Picture worst() {
        return worst;
    }

    /** Least board power of any of them, in W. */
    double boardPowerW() {
        return boardPowerW;
    }

    /** Two smaller groups. */
    CardGroup[] halves() {
        if (halves == null) {
            int[] sorted = none ? noneFirst() : byWhatDiffersMost();
            int middle = none ? 1 : sorted.length / 2;
            halves =
                    new CardGroup[] {
                        group(Arrays.copyOfRange(sorted, 0, middle)),
                        group(Arrays.copyOfRange(sorted, middle, sorted.length))
                    };
        }
        return halves;
    }

    /** All groups that a card is in, the largest first. */
    List<CardGroup> towards(Candidate card) {
        List<CardGroup> groups = new ArrayList<>();
        CardGroup group = this;
        while (group.size() > 1) {
            groups.add(group);
            CardGroup[] split = group.halves();
            group = split[0].holds(card) ? split[0] : split[1];
        }
        return groups;
    }

    private boolean holds(Candidate card) {
        return Arrays.binarySearch(members, card.index()) >= 0;
    }

    private CardGroup group(int[] some) {
        Arrays.sort(some);
        return new CardGroup(cards, some, worth, minor.length);
    }

    private int[] noneFirst() {
        return sorted(i -> cards.candidate(i).none() ? 0 : 1);
    }

    private int[] byWhatDiffersMost() {
        IntToDoubleFunction most = this::leastMinor;
        double widest = 0;
        for (IntToDoubleFunction trait : traits()) {
            double[] values = Arrays.stream(members).mapToDouble(trait).sorted().toArray();
            double width = Math.log((values[values.length - 1] + 1) / (values[0] + 1));
            if (width > widest) {
                widest = width;
                most = trait;
            }
        }
        return sorted(most);
    }

    private IntToDoubleFunction[] traits() {
        return new IntToDoubleFunction[] {
            this::leastMinor,
            i -> picture(i).tflops() * 100,
            i -> picture(i).bandwidthGbs(),
            i -> picture(i).rayRate() * 100,
            i -> picture(i).vramGb(),
        };
    }

    private double leastMinor(int index) {
        return Arrays.stream(cards.candidate(index).minorBySet()).min().orElse(0);
    }

    private int[] sorted(IntToDoubleFunction key) {
        return Arrays.stream(members)
                .boxed()
                .sorted(
                        Comparator.<Integer>comparingDouble(key::applyAsDouble)
                                .thenComparingInt(i -> i))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
