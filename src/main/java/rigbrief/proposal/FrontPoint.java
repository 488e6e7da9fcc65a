package rigbrief.proposal;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;

/**
 * One build that no other is both cheaper and better than.
 *
 * @param totalMinor what it costs, in minor units
 * @param utility its utility, 0 to 1
 * @param build the build
 */
public record FrontPoint(long totalMinor, double utility, Build build) {
    /** Ids of its parts, in slot order. */
    public List<String> parts() {
        List<String> parts = new ArrayList<>();
        build.filled().forEach((slot, part) -> parts.add(part.id()));
        return List.copyOf(parts);
    }
}
