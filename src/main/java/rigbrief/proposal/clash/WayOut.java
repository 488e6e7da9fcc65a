package rigbrief.proposal.clash;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.build.Build;

/**
 * A way out of a clash: what gives way, and a real build that then meets everything else.
 *
 * @param changes what gives way; one need, or two
 * @param totalMinor what the build costs, in minor units
 * @param proven whether no other build that meets the rest, and these values, costs less
 * @param build the build
 * @param brief the brief that it meets
 */
public record WayOut(
        List<Change> changes, long totalMinor, boolean proven, Build build, Brief brief) {
    public WayOut {
        changes = List.copyOf(changes);
    }
}
