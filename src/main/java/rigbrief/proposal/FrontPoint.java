package rigbrief.proposal;

import java.util.List;

/**
 * One build that no other is both cheaper and better than.
 *
 * @param totalMinor what it costs, in minor units
 * @param utility its utility, 0 to 1
 * @param parts ids of its parts, in slot order
 */
public record FrontPoint(long totalMinor, double utility, List<String> parts) {
    public FrontPoint {
        parts = List.copyOf(parts);
    }
}
