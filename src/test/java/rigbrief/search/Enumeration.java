package rigbrief.search;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Tries every build of a small catalogue, sharing nothing with the search but the rule and goal
 * objects.
 *
 * <p>A rule is asked as soon as all the slots it reads are decided, which cuts off only builds that
 * the same rule would refuse at the end.
 */
public final class Enumeration {
    private final Brief brief;
    private final Catalogue catalogue;
    private final Assessor assessor;
    private final Assessor valuing;
    private final long limitMinor;
    private final boolean firstIsEnough;
    private final List<Slot> order =
            List.of(
                    Slot.PROCESSOR,
                    Slot.BOARD,
                    Slot.MEMORY,
                    Slot.CASE,
                    Slot.GRAPHICS,
                    Slot.COOLER,
                    Slot.WIRELESS,
                    Slot.BRACE,
                    Slot.SYSTEM,
                    Slot.DISPLAY,
                    Slot.DRIVE,
                    Slot.SECOND_DRIVE,
                    Slot.SUPPLY,
                    Slot.FANS,
                    Slot.CABLES);
    private final List<List<Rule>> rulesAt = new ArrayList<>();

    /** Least total, and the most points among builds of that total; -1 when there is no build. */
    public long leastMinor = -1;

    public long pointsOfLeast = -1;

    /** Most points under the ceiling, and the least total among builds of so many. */
    public long mostPoints = -1;

    public long minorOfMost = -1;

    /** Every sound build's points and total, for weighted objectives. */
    public final List<long[]> sound = new ArrayList<>();

    /** Every build under the ceiling. */
    public Enumeration(Brief brief, Catalogue catalogue) {
        this(brief, catalogue, brief.ceiling().minorUnits(), false);
    }

    /**
     * Every build within a limit, or the first one.
     *
     * @param limitMinor most that a build may cost, beside what the brief's own rules say
     * @param firstIsEnough whether to stop at the first sound build
     */
    public Enumeration(Brief brief, Catalogue catalogue, long limitMinor, boolean firstIsEnough) {
        this(brief, brief, catalogue, limitMinor, firstIsEnough);
    }

    /**
     * The builds under one brief, with points by the goals of another: each build is assessed under
     * both.
     */
    public Enumeration(
            Brief brief,
            Brief valued,
            Catalogue catalogue,
            long limitMinor,
            boolean firstIsEnough) {
        this.valuing = new Assessor(valued, catalogue);
        this.limitMinor = limitMinor;
        this.firstIsEnough = firstIsEnough;
        this.brief = brief;
        this.catalogue = catalogue;
        this.assessor = new Assessor(brief, catalogue);
        for (int i = 0; i < order.size(); i++) {
            rulesAt.add(new ArrayList<>());
        }
        for (Rule rule : Rules.ALL) {
            int last = rule.reads().isEmpty() ? order.size() - 1 : 0;
            for (Slot slot : rule.reads()) {
                last = Math.max(last, order.indexOf(slot));
            }
            rulesAt.get(last).add(rule);
        }
        decide(0, Build.empty());
    }

    private void decide(int depth, Build build) {
        if (firstIsEnough && !sound.isEmpty()) {
            return;
        }
        if (depth == order.size()) {
            judge(assessor.assess(build));
            return;
        }
        Slot slot = order.get(depth);
        for (Kept kept : brief.keep()) {
            if (kept.slot() == slot) {
                next(depth, build.with(slot, kept.part(), kept.pieces()));
                return;
            }
        }
        if (!slot.required()) {
            next(depth, build);
        }
        int least = slot == Slot.DISPLAY ? brief.screen().map(s -> s.count()).orElse(1) : 1;
        int most = slot == Slot.DISPLAY ? least : slot.mostPieces();
        for (Part part : catalogue.parts(slot.kind())) {
            for (int pieces = least; pieces <= most; pieces++) {
                next(depth, build.with(slot, part, pieces));
            }
        }
    }

    private void next(int depth, Build build) {
        Assessment it = assessor.assess(build);
        for (Rule rule : rulesAt.get(depth)) {
            if (rule.forbids(rule.check(it))) {
                return;
            }
        }
        decide(depth + 1, build);
    }

    private void judge(Assessment it) {
        long total = it.cost().totalMinor();
        if (total > limitMinor) {
            return;
        }
        long points = 0;
        Assessment value = valuing.assess(it.build());
        for (Goal goal : Goals.ALL) {
            int weight = brief.wishes().weight(goal.info().id());
            points += weight == 0 ? 0 : (long) weight * goal.utility(value);
        }
        sound.add(new long[] {points, total});
        if (leastMinor < 0 || total < leastMinor) {
            leastMinor = total;
            pointsOfLeast = points;
        } else if (total == leastMinor) {
            pointsOfLeast = Math.max(pointsOfLeast, points);
        }
        if (points > mostPoints) {
            mostPoints = points;
            minorOfMost = total;
        } else if (points == mostPoints) {
            minorOfMost = Math.min(minorOfMost, total);
        }
    }
}
