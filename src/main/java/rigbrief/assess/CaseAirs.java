package rigbrief.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What choices of case fans do for a case; of each two the quieter is also the weaker one. */
public final class CaseAirs {
    /** More would bound a little closer and take longer than that saves. Measured. */
    private static final int MOST = 6;

    private final List<ClimateModel.Breath> best = new ArrayList<>();

    /** The airs of some builds that differ in their case fans alone. */
    public CaseAirs(List<Assessment> choices) {
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
}
