package rigbrief.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What choices of case fans do for a case; of each two the quieter is also the weaker one. */
public final class CaseAirs {
    /** More would bound a little closer and take longer than that saves. Measured. */
    private static final int MOST = 6;

    private final List<ClimateModel.Breath> best = new ArrayList<>();
    private final ClimateModel.Breath own;
    private final double othersW;
    private final boolean exhaustsProcessor;

    /**
     * The airs of a case.
     *
     * @param bare a build with the case and a cooler, without any fans added
     * @param choices builds that differ from it in their case fans alone
     */
    public CaseAirs(Assessment bare, List<Assessment> choices) {
        own = ClimateModel.breath(bare);
        othersW = Foresight.othersW(bare.build(), true);
        exhaustsProcessor = ClimateModel.exhaustsOwnHeat(bare);
        List<ClimateModel.Breath> all = new ArrayList<>();
        for (Assessment choice : choices) {
            all.add(ClimateModel.breath(choice));
        }
        all.sort(
                Comparator.comparingDouble(ClimateModel.Breath::levelDba)
                        .thenComparingDouble(breath -> -breath.flowM3h()));
        for (ClimateModel.Breath breath : all) {
            if (best.isEmpty() || breath.flowM3h() > best.get(best.size() - 1).flowM3h()) {
                best.add(breath);
            }
        }
        thin();
    }

    /** Neighbours are merged into one as quiet as the quietest and as strong as the strongest. */
    private void thin() {
        List<ClimateModel.Breath> all = List.copyOf(best);
        best.clear();
        int groups = Math.min(MOST, all.size());
        for (int group = 0; group < groups; group++) {
            int first = group * all.size() / groups;
            int last = (group + 1) * all.size() / groups - 1;
            best.add(new ClimateModel.Breath(all.get(last).flowM3h(), all.get(first).levelDba()));
        }
    }

    /** The choices of which none is both quieter and stronger than another. */
    List<ClimateModel.Breath> best() {
        return best;
    }

    /** The fans of the case alone. */
    ClimateModel.Breath own() {
        return own;
    }

    /** Least heat set free in the case beside a processor and a card, in W. */
    double heatW(double processorW, double cardW) {
        return cardW + othersW + (exhaustsProcessor ? 0 : processorW);
    }
}
