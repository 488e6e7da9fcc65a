package rigbrief.presolve;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.build.Build;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.part.Slot;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Judges what one candidate in place of another does to a build; knows rules and goals, nothing of
 * what is declared about columns.
 */
final class Substitution {
    /** Rules against idle parts: a better part elsewhere may turn these idle, they are left out. */
    private static final Map<String, Slot> IDLE =
            Map.of(
                    "idle-drive", Slot.SECOND_DRIVE,
                    "idle-wireless", Slot.WIRELESS,
                    "idle-brace", Slot.BRACE,
                    "idle-licence", Slot.SYSTEM);

    private final Assessor assessor;

    Substitution(Assessor assessor) {
        this.assessor = assessor;
    }

    /** What a build is worth. */
    record Worth(long points, long totalMinor) {}

    /** The build of some choices. */
    static Build build(Map<Slot, Candidate> choices) {
        Build build = Build.empty();
        for (Candidate candidate : choices.values()) {
            if (!candidate.none()) {
                build = build.with(candidate.slot(), candidate.partOrNull(), candidate.pieces());
            }
        }
        return build;
    }

    /** The worth of a build that keeps every rule; empty for any other. */
    Optional<Worth> worth(Build build) {
        Assessment it = assessor.assess(build);
        return brokenRules(it).isEmpty() ? Optional.of(worth(it)) : Optional.empty();
    }

    /**
     * The worth with another candidate in its slot, idle parts left out; empty when rules break.
     */
    Optional<Worth> with(Map<Slot, Candidate> choices, Candidate other) {
        Map<Slot, Candidate> changed = new EnumMap<>(choices);
        changed.put(other.slot(), other);
        Build build = build(changed);
        for (String rule : brokenRules(assessor.assess(build))) {
            if (IDLE.containsKey(rule)) {
                build = build.without(IDLE.get(rule));
            }
        }
        return worth(build);
    }

    /** The rules that the build with another candidate breaks. */
    List<String> broken(Map<Slot, Candidate> choices, Candidate other) {
        Map<Slot, Candidate> changed = new EnumMap<>(choices);
        changed.put(other.slot(), other);
        return brokenRules(assessor.assess(build(changed)));
    }

    /** Every goal's utility, to tell which one fell. */
    Map<String, Integer> utilities(Map<Slot, Candidate> choices) {
        Map<String, Integer> utilities = new TreeMap<>();
        Assessment it = assessor.assess(build(choices));
        for (Goal goal : Goals.ALL) {
            if (assessor.brief().wishes().weight(goal.info().id()) > 0) {
                utilities.put(goal.info().id(), goal.utility(it));
            }
        }
        return utilities;
    }

    private Worth worth(Assessment it) {
        long points = 0;
        for (Goal goal : Goals.ALL) {
            int weight = assessor.brief().wishes().weight(goal.info().id());
            points += weight == 0 ? 0 : (long) weight * goal.utility(it);
        }
        return new Worth(points, it.cost().totalMinor());
    }

    private static List<String> brokenRules(Assessment it) {
        List<String> broken = new ArrayList<>();
        for (Rule rule : Rules.ALL) {
            if (rule.forbids(rule.check(it))) {
                broken.add(rule.info().id());
            }
        }
        return broken;
    }
}
