package rigbrief.search;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Pricing;
import rigbrief.brief.Brief;
import rigbrief.goal.Goal;
import rigbrief.goal.ValueGoal;

/**
 * Bounds the objective of any completion of an unfinished build, over every supplier set.
 *
 * <p>For a set of suppliers money adds up over the slots exactly. For a worth w of money, gains
 * less w times price add up over the open slots as well, so that points are at most K + w (money -
 * base); the least over several worths bounds utility at any spending. Along each of these lines
 * the objective, value included, is greatest at an end or at a peak with a closed form, so only the
 * corners where two lines cross and these peaks are looked at.
 */
final class Bounder {
    private static final double CLOSE = 1e-6;

    private final Problem problem;
    private final Objective objective;
    private final Pricing pricing;
    private final int[] sets;
    private final double[] worth;
    private final OrderOutlook order;
    private final double valueWeight;
    private final double othersMost;
    private final double roundingPoints;
    private final double ceilingMinor;
    private final double taxFactor;
    private final double feesMinor;
    private final Envelope lines;
    private final FirstFigure figure;
    private Excess excess;

    /** Indices of supplier sets that may still deliver the best build. */
    static final class AliveSets {
        private final int[] sets;
        private int count;

        AliveSets(int all) {
            sets = new int[all];
        }

        /** Every set. */
        AliveSets fill() {
            for (int s = 0; s < sets.length; s++) {
                sets[s] = s;
            }
            count = sets.length;
            return this;
        }

        AliveSets copyOf(AliveSets other) {
            System.arraycopy(other.sets, 0, sets, 0, other.count);
            count = other.count;
            return this;
        }

        AliveSets take(int[] some) {
            System.arraycopy(some, 0, sets, 0, some.length);
            count = some.length;
            return this;
        }

        int count() {
            return count;
        }

        int get(int i) {
            return sets[i];
        }
    }

    /** First and second figure that no completion passes. */
    static final class Bound {
        private final double first;
        private final double second;
        private final int set;

        private Bound(double first, double second, int set) {
            this.first = first;
            this.second = second;
            this.set = set;
        }

        double first() {
            return first;
        }

        double second() {
            return second;
        }

        /** Index of the supplier set that allows it; -1 when none can deliver within the limit. */
        int set() {
            return set;
        }
    }

    static final Bound IMPOSSIBLE =
            new Bound(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, -1);

    Bounder(Problem problem, Objective objective, double[] worth) {
        this.problem = problem;
        this.objective = objective;
        this.pricing = problem.assessor().pricing();
        this.sets = pricing.supplierSets();
        this.worth = worth;
        Brief brief = problem.assessor().brief();
        List<Goal> others = new ArrayList<>();
        double value = 0;
        double orderWeight = 0;
        for (Goal goal : problem.goals()) {
            if (goal instanceof ValueGoal) {
                value = problem.weight(goal);
            } else {
                others.add(goal);
                orderWeight =
                        goal.info().id().equals("simple-order")
                                ? problem.weight(goal)
                                : orderWeight;
            }
        }
        this.valueWeight = value * Goal.FULL;
        double most = 0;
        for (Goal goal : others) {
            most += (double) problem.weight(goal) * Goal.FULL;
        }
        this.othersMost = most;
        // Each goal rounds to whole ten-thousandths, at most half of one upwards: value too, which
        // is rounded up as well where all others are met in full.
        this.roundingPoints = 0.5 * (most + valueWeight) / Goal.FULL + 1e-6;
        this.order = new OrderOutlook(problem, orderWeight * Goal.FULL);
        this.ceilingMinor = brief.ceiling().minorUnits();
        this.taxFactor = 1 + brief.fees().taxBasisPoints() / 10_000.0;
        this.feesMinor = (double) brief.fees().assembly().minorUnits() * brief.quantity();
        this.lines = new Envelope(worth.length + 1);
        this.figure =
                new FirstFigure(
                        objective,
                        valueWeight,
                        othersMost,
                        new FirstFigure.Money(taxFactor, feesMinor, ceilingMinor));
    }

    int sets() {
        return sets.length;
    }

    /** From now on the first figure is by how much a front's steps could be passed. */
    void passing(Stairs stairs) {
        excess = new Excess(stairs, lines, figure);
    }

    /**
     * Points that stand whatever fills the open slots.
     *
     * @param it the unfinished build
     * @param coupled most points of the goals that no slot decides alone
     * @param gained points of the decided slots
     */
    double fixed(Unfinished it, double coupled, double gained) {
        return coupled + gained + order.decidedPoints(it) + roundingPoints;
    }

    /**
     * The bound.
     *
     * @param fixed points that stand whatever fills the open slots
     * @param spent price of the decided slots, by set
     * @param leastOpen least price of the open slots, by set
     * @param mostNet most gain less price of the open slots, by worth, by set
     * @param alive supplier sets to look at; those that can't reach the threshold are taken out,
     *     for what is added to the build only lowers a set's bound
     * @param threshold the first figure to reach
     */
    Bound bound(
            double fixed,
            long[] spent,
            long[] leastOpen,
            double[][] mostNet,
            AliveSets alive,
            double threshold) {
        double first = Double.NEGATIVE_INFINITY;
        double second = Double.NEGATIVE_INFINITY;
        int best = -1;
        int left = 0;
        for (int i = 0; i < alive.count; i++) {
            int s = alive.sets[i];
            long base = spent[s] + pricing.deliveryMinor(s);
            long least = base + leastOpen[s];
            if (least < 0 || least >= Pricing.notToBeHad()) {
                continue;
            }
            long total = pricing.totalMinor(least);
            if (total > problem.limitMinor()) {
                continue;
            }
            double points = fixed + order.supplierPoints(Integer.bitCount(sets[s]));
            double one = first(points, base, least, total, mostNet, s, threshold, first);
            if (Math.floor(one + CLOSE) < threshold) {
                continue;
            }
            alive.sets[left++] = s;
            double two = second(points, base, total, mostNet, s);
            if (one > first || (one == first && two > second)) {
                best = one > first ? s : best;
                second = one > first ? two : Math.max(second, two);
                first = one;
            } else {
                second = Math.max(second, two);
            }
        }
        alive.count = left;
        return best < 0 ? IMPOSSIBLE : new Bound(first, second, best);
    }

    private double first(
            double points,
            long base,
            long least,
            long total,
            double[][] mostNet,
            int s,
            double threshold,
            double found) {
        if (objective.perPoint() == 0) {
            return -(double) total * objective.perMinor();
        }
        double most = Math.max(least, mostSpend());
        for (int w = 0; w < worth.length; w++) {
            lines.set(w, points + mostNet[w][s] - worth[w] * base, worth[w]);
        }
        lines.set(worth.length, othersMost + roundingPoints, 0);
        return excess == null
                ? lines.most(least, most, figure)
                : excess.most(least, most, threshold, found);
    }

    private double mostSpend() {
        return (problem.limitMinor() + 1) / taxFactor - feesMinor;
    }

    /**
     * The lines of points over money that bound what was bounded last.
     *
     * @return for each supplier set alive the least that is spent, then the points at no money of
     *     each worth's line
     */
    double[][] lines(
            double fixed, long[] spent, long[] leastOpen, double[][] mostNet, AliveSets alive) {
        double[][] all = new double[alive.count][1 + worth.length];
        for (int i = 0; i < alive.count; i++) {
            int s = alive.sets[i];
            long base = spent[s] + pricing.deliveryMinor(s);
            double points = fixed + order.supplierPoints(Integer.bitCount(sets[s]));
            all[i][0] = base + leastOpen[s];
            for (int w = 0; w < worth.length; w++) {
                all[i][1 + w] = points + mostNet[w][s] - worth[w] * base;
            }
        }
        return all;
    }

    /** Raises what is open on each step of the front to what such lines reach. */
    void raise(double[][] all, long most, long[] gaps) {
        for (double[] line : all) {
            for (int w = 0; w < worth.length; w++) {
                lines.set(w, line[1 + w], worth[w]);
            }
            lines.set(worth.length, othersMost + roundingPoints, 0);
            excess.raise(line[0], Math.max(line[0], mostSpend()), most, gaps);
        }
    }

    private double second(double points, long base, long total, double[][] mostNet, int s) {
        if (objective.perPointBetweenEquals() == 0) {
            return -(double) total * objective.perMinorBetweenEquals();
        }
        double most = mostSpend();
        double others = others(points, base, most, mostNet, s);
        return objective.perPointBetweenEquals()
                * (others + valueWeight * ValueGoal.share(1, total / ceilingMinor));
    }

    /** Most points of all goals but value when at most so much is spent on parts and delivery. */
    private double others(double points, long base, double spend, double[][] mostNet, int s) {
        double least = othersMost + roundingPoints;
        for (int w = 0; w < worth.length; w++) {
            least = Math.min(least, points + mostNet[w][s] + worth[w] * (spend - base));
        }
        return least;
    }
}
