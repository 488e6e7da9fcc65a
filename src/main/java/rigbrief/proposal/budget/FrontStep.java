package rigbrief.proposal.budget;

import java.util.List;
import rigbrief.build.Build;

/**
 * One point of the front, and the step that leads to it.
 *
 * @param totalMinor what the build costs, in minor units
 * @param points its utility in points
 * @param utility its utility, 0 to 1
 * @param gap how much more utility at most a build that costs less than the next point could have
 * @param rates what it promises of each workload
 * @param noiseDba level at the seat under load, in dB(A)
 * @param changes what differs from the point before; everything is new in the first one
 * @param knee whether it is the knee
 * @param build the build
 */
public record FrontStep(
        long totalMinor,
        long points,
        double utility,
        double gap,
        List<Rate> rates,
        double noiseDba,
        List<PartChange> changes,
        boolean knee,
        Build build) {
    public FrontStep {
        rates = List.copyOf(rates);
        changes = List.copyOf(changes);
    }
}
