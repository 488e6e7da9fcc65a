package rigbrief.presolve;

import java.util.ArrayList;
import java.util.List;
import rigbrief.part.Fact;
import rigbrief.part.Tally;
import rigbrief.quantity.Quantity;

/**
 * What the rules, models and goals read of a candidate, sorted by direction.
 *
 * <p>A column of which it is not sure in which direction it is better is declared alike: slower,
 * never wrong. What no rule, model or goal reads is left out; the monotonicity test tries those
 * columns too, so that whoever begins to read one is told.
 */
final class Traits {
    private final List<Object> alike = new ArrayList<>();
    private final List<Object> alikeForGoals = new ArrayList<>();
    private final List<Double> more = new ArrayList<>();
    private final List<Double> moreForGoals = new ArrayList<>();
    private double[] moreArray;
    private double[] moreForGoalsArray;

    /** Must be equal for one candidate to stand in for another. */
    Traits alike(Object value) {
        alike.add(value);
        return this;
    }

    /** Must be equal where goals count. */
    Traits alikeForGoals(Object value) {
        alikeForGoals.add(value);
        return this;
    }

    /** More is at least as good for every rule and model. */
    Traits more(double value) {
        more.add(value);
        return this;
    }

    /** Less is at least as good for every rule and model. */
    Traits less(double value) {
        return more(-value);
    }

    /** More is at least as good for every goal. */
    Traits moreForGoals(double value) {
        moreForGoals.add(value);
        return this;
    }

    /**
     * A data-sheet figure of which more is as good; candidates with and without it don't compare.
     */
    Traits more(Fact<? extends Quantity> fact) {
        alike(fact.stated());
        return more(fact.stated() ? ((Fact.Stated<? extends Quantity>) fact).value().amount() : 0);
    }

    /** A data-sheet figure of which less is as good. */
    Traits less(Fact<? extends Quantity> fact) {
        alike(fact.stated());
        return less(fact.stated() ? ((Fact.Stated<? extends Quantity>) fact).value().amount() : 0);
    }

    /** Counts of which more are as good, each by itself. */
    <E extends Enum<E>> Traits more(Fact<Tally<E>> fact, E[] things) {
        alike(fact.stated());
        for (E thing : things) {
            more(fact.stated() ? ((Fact.Stated<Tally<E>>) fact).value().of(thing) : 0);
        }
        return this;
    }

    Object group() {
        return alike;
    }

    /** Whether this is at least as good as another of the same group for every rule and model. */
    boolean coversRules(Traits other) {
        return atLeast(more(), other.more());
    }

    /** Whether this is at least as good as another of the same group for every goal. */
    boolean coversGoals(Traits other) {
        return alikeForGoals.equals(other.alikeForGoals)
                && atLeast(moreForGoals(), other.moreForGoals());
    }

    private double[] more() {
        moreArray = moreArray == null ? array(more) : moreArray;
        return moreArray;
    }

    private double[] moreForGoals() {
        moreForGoalsArray = moreForGoalsArray == null ? array(moreForGoals) : moreForGoalsArray;
        return moreForGoalsArray;
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static boolean atLeast(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            if (one[i] < other[i]) {
                return false;
            }
        }
        return true;
    }
}
