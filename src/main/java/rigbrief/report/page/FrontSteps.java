package rigbrief.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;

/**
 * The steps of the slider: every proposal, and between them as many points of the front as a hand
 * can tell apart.
 */
final class FrontSteps {
    /** More steps than this are neither read nor felt; common practice. */
    private static final int MOST = 24;

    private FrontSteps() {}

    /** Cheapest first; empty where there is nothing to slide between. */
    static List<FrontPoint> of(Proposals answer) {
        List<FrontPoint> steps = new ArrayList<>();
        for (Proposal proposal : answer.proposals()) {
            steps.add(
                    new FrontPoint(
                            proposal.audit().cost().totalMinor(),
                            proposal.audit().utility(),
                            proposal.record().build()));
        }
        if (steps.size() < 2) {
            return List.of();
        }
        long leastApart = apart(steps);
        for (FrontPoint point : answer.front()) {
            if (steps.size() < MOST && belongs(point, steps, leastApart)) {
                steps.add(point);
            }
        }
        steps.sort(Comparator.comparingLong(FrontPoint::totalMinor));
        return List.copyOf(steps);
    }

    private static long apart(List<FrontPoint> tiers) {
        long span = tiers.get(tiers.size() - 1).totalMinor() - tiers.get(0).totalMinor();
        return span / MOST;
    }

    /** Far enough in money from every step, and as the steps are: dearer is better. */
    private static boolean belongs(FrontPoint point, List<FrontPoint> steps, long leastApart) {
        for (FrontPoint step : steps) {
            long dearerMinor = point.totalMinor() - step.totalMinor();
            boolean near = Math.abs(dearerMinor) < Math.max(1, leastApart);
            boolean idle = dearerMinor > 0 == point.utility() <= step.utility();
            if (near || idle) {
                return false;
            }
        }
        return true;
    }
}
