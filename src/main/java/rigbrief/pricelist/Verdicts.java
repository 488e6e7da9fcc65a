package rigbrief.pricelist;

import java.util.Map;
import java.util.Set;

/**
 * What the builder has said of single lines of a price list.
 *
 * @param parts which part a line is, by line
 * @param right lines that are right though they look suspicious
 * @param skipped lines that are left out
 */
public record Verdicts(Map<Integer, String> parts, Set<Integer> right, Set<Integer> skipped) {
    /** Nothing was said. */
    public static final Verdicts NONE = new Verdicts(Map.of(), Set.of(), Set.of());

    /** Whether a line that looks suspicious has been called right. */
    boolean accepted(int line) {
        return right.contains(line);
    }
}
