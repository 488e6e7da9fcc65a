package rigbrief.proposal.clash;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BooleanSupplier;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.solve.Answer;
import rigbrief.proposal.solve.SideBySide;
import rigbrief.proposal.solve.Solving;
import rigbrief.wording.Phrase;

/**
 * The clash among a brief's needs.
 *
 * @param constraints the needs that the sets speak of
 * @param sets clashing sets and corrections, by index of the constraints
 * @param minimal whether every member of every clashing set was proven necessary
 * @param fitReasons rules of fit that are part of the first clashes, in sentences
 * @param waysOut what can give way
 */
public record NeedClash(
        List<Need> constraints,
        ClashSets sets,
        boolean minimal,
        List<Phrase> fitReasons,
        List<WayOut> waysOut) {
    /** More sets than these tell nobody anything. */
    private static final int MOST_SETS = 6;

    /** The rules of fit are looked for behind so many sets. */
    private static final int MOST_REASONED = 2;

    private static final int MOST_WAYS = 6;
    private static final int MOST_CHANGES = 2;

    /** Clashes are between few needs or none: most questions are answered in far fewer steps. */
    private static final int STEP_DIVISOR = 3;

    public NeedClash {
        constraints = List.copyOf(constraints);
        fitReasons = List.copyOf(fitReasons);
        waysOut = List.copyOf(waysOut);
    }

    /** The clash of a brief that no build meets. */
    public static NeedClash find(
            Brief brief, Catalogue catalogue, long steps, BooleanSupplier stop) {
        Needs needs = Needs.of(brief, catalogue);
        Solving solving = new Solving(catalogue, Math.max(1, steps / STEP_DIVISOR), stop);
        NeedOracle oracle = new NeedOracle(needs, solving);
        List<Integer> places = places(needs, oracle);
        List<Need> constraints = new ArrayList<>();
        places.forEach(place -> constraints.add(needs.musts().get(place)));
        ClashSets sets =
                ClashSets.of(
                        places.size(),
                        kept -> oracle.apply(widened(needs, places, kept)),
                        MOST_SETS);
        boolean minimal = minimal(needs, places, sets, oracle);
        List<BitSet> corrections = small(sets.corrections());
        List<Phrase> reasons = reasons(needs, places, sets, solving);
        List<WayOut> ways =
                new WaysOut(needs, constraints, solving).of(corrections, oracle.builds());
        return new NeedClash(constraints, sets, minimal, reasons, ways);
    }

    /** What the job is stays out of it, unless the job alone is already impossible. */
    private static List<Integer> places(Needs needs, NeedOracle oracle) {
        List<Integer> places = new ArrayList<>();
        BitSet terms = new BitSet();
        for (int i = 0; i < needs.musts().size(); i++) {
            if (needs.musts().get(i).kind() == Need.Kind.TERM) {
                terms.set(i);
            } else {
                places.add(i);
            }
        }
        return oracle.apply(terms) == Answer.NO ? QuickXplain.members(needs.all()) : places;
    }

    private static List<Phrase> reasons(
            Needs needs, List<Integer> places, ClashSets sets, Solving solving) {
        FitReasons fit = new FitReasons(solving.catalogue());
        List<BitSet> first =
                sets.conflicts().subList(0, Math.min(MOST_REASONED, sets.conflicts().size()));
        List<Phrase> all = new ArrayList<>();
        SideBySide.map(first, set -> fit.of(needs.keeping(widened(needs, places, set))))
                .forEach(all::addAll);
        return all.stream().distinct().toList();
    }

    private static BitSet widened(Needs needs, List<Integer> places, BitSet kept) {
        BitSet all = needs.all();
        for (int i = 0; i < places.size(); i++) {
            all.set(places.get(i), kept.get(i));
        }
        return all;
    }

    private static boolean minimal(
            Needs needs, List<Integer> places, ClashSets sets, NeedOracle oracle) {
        for (BitSet set : sets.conflicts()) {
            for (int member : QuickXplain.members(set)) {
                BitSet without = (BitSet) set.clone();
                without.clear(member);
                if (oracle.apply(widened(needs, places, without)) != Answer.YES) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<BitSet> small(List<BitSet> corrections) {
        int fewest = corrections.isEmpty() ? 0 : corrections.get(0).cardinality();
        return corrections.stream()
                .filter(one -> !one.isEmpty())
                .filter(one -> one.cardinality() <= Math.max(fewest, MOST_CHANGES))
                .limit(MOST_WAYS)
                .toList();
    }

    /** The needs of a set as a client would say them. */
    public List<Phrase> names(BitSet set) {
        return QuickXplain.members(set).stream().map(i -> constraints.get(i).phrase()).toList();
    }
}
