package rigbrief.search;

import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.build.Build;
import rigbrief.goal.Goal;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Candidates;
import rigbrief.rule.Finding;
import rigbrief.rule.Rule;

/**
 * One search: what may fill each slot, what every build must keep, and what the client values.
 *
 * <p>Confined to one thread, as its assessor is.
 *
 * @param assessor the assessor
 * @param candidates what may fill each slot
 * @param rules rules every build must keep
 * @param goals goals with a weight above 0
 * @param limitMinor most that a build may cost, in minor units
 * @param tables what all searches of one space use
 */
public record Problem(
        Assessor assessor,
        Candidates candidates,
        List<Rule> rules,
        List<Goal> goals,
        long limitMinor,
        SharedTables tables) {
    private static final Slot[] SLOTS = Slot.values();

    public Problem {
        rules = List.copyOf(rules);
        goals = List.copyOf(goals);
    }

    /** The weight of a goal in this brief. */
    public int weight(Goal goal) {
        return assessor.brief().wishes().weight(goal.info().id());
    }

    /** The build that one candidate per slot makes. */
    public Build build(List<Candidate> choices) {
        Part[] parts = new Part[SLOTS.length];
        int[] pieces = new int[SLOTS.length];
        for (Candidate choice : choices) {
            parts[choice.slot().ordinal()] = choice.partOrNull();
            pieces[choice.slot().ordinal()] = choice.pieces();
        }
        return Build.of(parts, pieces);
    }

    /** By how much one rule is broken; rules about parts that are missing are not asked. */
    public static long excess(Rule rule, Assessment it) {
        if (!askable(rule, it.build())) {
            return 0;
        }
        Finding finding = rule.check(it);
        return rule.forbids(finding) ? Math.max(1, finding.excess()) : 0;
    }

    /** Whether every required slot that a rule reads is filled. */
    public static boolean askable(Rule rule, Build build) {
        for (Slot slot : rule.reads()) {
            if (slot.required() && !build.has(slot)) {
                return false;
            }
        }
        return true;
    }

    /** By how many minor units a build is over the limit. */
    public long overLimit(Assessment it) {
        return Math.max(0, it.cost().totalMinor() - limitMinor);
    }

    /** Utility in points. */
    public long points(Assessment it) {
        long points = 0;
        for (Goal goal : goals) {
            points += (long) weight(goal) * goal.utility(it);
        }
        return points;
    }

    /** The points of a build with full utility in every goal. */
    public long mostPoints() {
        long most = 0;
        for (Goal goal : goals) {
            most += (long) weight(goal) * Goal.FULL;
        }
        return most;
    }

    /** A complete build's standing; the utility of a broken one counts as 0. */
    public Standing standing(List<Candidate> choices) {
        Build build = build(choices);
        Assessment it = assessor.assess(build);
        long excess = overLimit(it);
        for (Rule rule : rules) {
            excess += excess(rule, it);
        }
        return new Standing(
                choices, build, excess, excess == 0 ? points(it) : 0, it.cost().totalMinor());
    }

    /**
     * The same, but the first broken rule ends it, and so does money when it alone shows that a
     * build can't beat another.
     *
     * @param rival a sound build to beat; null for none
     * @return null for a broken build or one that is beaten
     */
    Standing soundStanding(Candidate[] choices, Standing rival, Objective objective) {
        List<Candidate> list = List.of(choices);
        Build build = build(list);
        Assessment it = assessor.assess(build);
        long total = it.cost().totalMinor();
        boolean hopeless =
                rival != null
                        && objective.first(mostPoints(), total)
                                < objective.first(rival.points(), rival.totalMinor());
        if (hopeless || total > limitMinor) {
            return null;
        }
        for (Rule rule : rules) {
            if (rule.forbids(rule.check(it))) {
                return null;
            }
        }
        return new Standing(list, build, 0, points(it), total);
    }
}
