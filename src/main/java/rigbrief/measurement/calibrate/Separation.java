package rigbrief.measurement.calibrate;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which rates of parts measurements can tell from the demands of workloads.
 *
 * <p>Workloads and parts that were measured together form groups, linked by measurements that lean
 * on the part. Within a group of several parts their rates differ by what their common workloads
 * say. Where a group has one part alone, a slow part and a hungry workload look the same: its rate
 * has to stay where the catalogue has it.
 */
final class Separation {
    /** A measurement that hangs on a channel by less says little of it. */
    private static final double LEAST_SLOPE = 0.1;

    private final Map<String, String> parents = new HashMap<>();
    private final Map<String, Set<String>> partsByGroup = new LinkedHashMap<>();

    private Separation() {}

    /** The groups of a channel. */
    static Separation of(List<Observation> observations, Channel channel) {
        Separation separation = new Separation();
        Set<String> parts = new LinkedHashSet<>();
        for (Observation each : observations) {
            if (each.speed().works(channel)
                    && Sensitivity.asListed(each.speed(), channel) >= LEAST_SLOPE) {
                // The processor's own graphics take part, at the rate the catalogue has.
                String part = "part " + each.part(channel).orElse(each.processor());
                parts.add(part);
                separation.join("workload " + each.measured().workload(), part);
            }
        }
        for (String part : parts) {
            separation
                    .partsByGroup
                    .computeIfAbsent(separation.root(part), any -> new LinkedHashSet<>())
                    .add(part);
        }
        return separation;
    }

    /** Whether a part is the only one of its group. */
    boolean alone(String part) {
        String node = "part " + part;
        return parents.containsKey(node) && partsByGroup.get(root(node)).size() == 1;
    }

    /** Whether any measurement leans on a part. */
    boolean leanedOn(String part) {
        return parents.containsKey("part " + part);
    }

    private void join(String one, String other) {
        String first = root(one);
        parents.put(first, root(other));
    }

    private String root(String node) {
        String at = node;
        while (!parents.computeIfAbsent(at, self -> self).equals(at)) {
            at = parents.get(at);
        }
        return at;
    }
}
