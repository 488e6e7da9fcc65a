package rigbrief.proposal.front;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.goal.Goal;
import rigbrief.goal.ValueGoal;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;
import rigbrief.search.Archive;
import rigbrief.search.Problem;
import rigbrief.search.Standing;

/**
 * Judges builds near known ones, each once: money first, then the rules about few slots, then
 * whether the goals that are quickly known leave it a chance, then everything.
 */
final class Judge {
    /** Goals that need neither heat nor noise nor power. */
    private static final Set<String> QUICK =
            Set.of("workloads", "upgrade-room", "look", "lifetime", "simple-order");

    /** A rule about more slots than these is asked last. */
    private static final int FEW_SLOTS = 5;

    private final Problem problem;
    private final Archive archive;
    private final List<Rule> quickRules = new ArrayList<>();
    private final List<Rule> slowRules = new ArrayList<>();
    private final Set<Long> seen = new HashSet<>();
    private final long valueWeight;
    private final long othersWeight;
    private final double ceilingMinor;

    Judge(Problem problem, Archive archive) {
        this.problem = problem;
        this.archive = archive;
        List<Rule> rules = new ArrayList<>(problem.rules());
        rules.sort(Comparator.comparingInt(rule -> rule.reads().size()));
        for (Rule rule : rules) {
            (rule.reads().size() <= FEW_SLOTS ? quickRules : slowRules).add(rule);
        }
        long value = 0;
        long others = 0;
        for (Goal goal : problem.goals()) {
            int weight = problem.weight(goal);
            if (goal instanceof ValueGoal) {
                value += weight;
            } else {
                others += weight;
            }
        }
        this.valueWeight = value;
        this.othersWeight = others;
        this.ceilingMinor = problem.assessor().brief().ceiling().minorUnits();
    }

    /** The standing of a build; null for one that is broken, hopeless, or was judged before. */
    Standing of(List<Candidate> choices) {
        if (!seen.add(fingerprint(choices))) {
            return null;
        }
        Build build = problem.build(choices);
        Assessment it = problem.assessor().assess(build);
        long totalMinor = it.cost().totalMinor();
        if (totalMinor > problem.limitMinor() || !kept(quickRules, it)) {
            return null;
        }
        if (archive.pointsAt(totalMinor) >= most(it, totalMinor) || !kept(slowRules, it)) {
            return null;
        }
        return new Standing(choices, build, 0, problem.points(it), totalMinor);
    }

    private static boolean kept(List<Rule> rules, Assessment it) {
        for (Rule rule : rules) {
            if (rule.forbids(rule.check(it))) {
                return false;
            }
        }
        return true;
    }

    /** Points if every goal that takes long were fully met. */
    private long most(Assessment it, long totalMinor) {
        long points = 0;
        for (Goal goal : problem.goals()) {
            if (!(goal instanceof ValueGoal)) {
                boolean quick = QUICK.contains(goal.info().id());
                points += (long) problem.weight(goal) * (quick ? goal.utility(it) : Goal.FULL);
            }
        }
        double share = othersWeight == 0 ? 1 : points / ((double) othersWeight * Goal.FULL);
        double value = ValueGoal.share(share, totalMinor / ceilingMinor);
        return points + (long) Math.ceil(valueWeight * (value * Goal.FULL + 1));
    }

    /** Two builds with the same one are taken for the same; with 64 bits that is never seen. */
    private static long fingerprint(List<Candidate> choices) {
        long mixed = 0;
        for (int i = 0; i < Slot.values().length; i++) {
            mixed = (mixed ^ choices.get(i).index() + 1) * 0x9E3779B97F4A7C15L;
            mixed ^= mixed >>> 29;
        }
        return mixed;
    }
}
