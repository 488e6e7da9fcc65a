package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.build.Build;
import rigbrief.proposal.front.Front;
import rigbrief.proposal.front.Knee;
import rigbrief.search.Standing;

/** Tells a front step by step. */
final class FrontSteps {
    private final Assessor assessor;
    private final Front front;

    FrontSteps(Assessor assessor, Front front) {
        this.assessor = assessor;
        this.front = front;
    }

    /** The points that cost at most so much. */
    List<FrontStep> upTo(long limitMinor) {
        List<Standing> shown = new ArrayList<>();
        for (Standing standing : front.standings()) {
            if (standing.totalMinor() <= limitMinor) {
                shown.add(standing);
            }
        }
        Optional<Integer> knee = Knee.of(shown, Standing::totalMinor, Standing::points);
        List<FrontStep> steps = new ArrayList<>();
        Build before = Build.empty();
        for (int i = 0; i < shown.size(); i++) {
            steps.add(step(i, before, knee.equals(Optional.of(i))));
            before = shown.get(i).build();
        }
        return steps;
    }

    /** The best point that costs at most so much. */
    Optional<FrontStep> bestAt(long limitMinor) {
        int best = -1;
        for (int i = 0; i < front.standings().size(); i++) {
            best = front.standings().get(i).totalMinor() <= limitMinor ? i : best;
        }
        return best < 0 ? Optional.empty() : Optional.of(step(best, Build.empty(), false));
    }

    private FrontStep step(int index, Build before, boolean knee) {
        Standing standing = front.standings().get(index);
        Assessment it = assessor.assess(standing.build());
        double full = Math.max(1, front.mostPoints());
        return new FrontStep(
                standing.totalMinor(),
                standing.points(),
                standing.points() / full,
                front.gapPoints().get(index) / full,
                Rate.of(it),
                it.load().levelDba(),
                PartChange.between(before, standing.build()),
                knee,
                standing.build());
    }
}
