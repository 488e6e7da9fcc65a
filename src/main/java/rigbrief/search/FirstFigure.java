package rigbrief.search;

import rigbrief.goal.ValueGoal;

/**
 * An objective's first figure with so many points of all goals but value, for so much spent on
 * parts and delivery, in minor units.
 *
 * @param objective the objective
 * @param valueWeight points of full value
 * @param othersMost points of all other goals fully met
 * @param money what is paid on top, and what there is
 */
record FirstFigure(Objective objective, double valueWeight, double othersMost, Money money)
        implements Envelope.Figure {
    private static final double ROUNDING_MINOR = 0.5;

    /**
     * What spending comes to.
     *
     * @param taxFactor total for one minor unit spent, fees included
     * @param feesMinor fees before tax, in minor units
     * @param ceilingMinor the ceiling, in minor units
     */
    record Money(double taxFactor, double feesMinor, double ceilingMinor) {
        double total(double spend) {
            return taxFactor * (spend + feesMinor);
        }

        /** What is left for parts and delivery of a total. */
        double spend(double totalMinor) {
            return totalMinor / taxFactor - feesMinor;
        }
    }

    @Override
    public double of(double others, double spend) {
        double points = objective.perPoint() * (others + value(others, spend));
        return objective.perMinor() == 0
                ? points
                : points - objective.perMinor() * (money.total(spend) - ROUNDING_MINOR);
    }

    private double value(double others, double spend) {
        if (valueWeight == 0) {
            return 0;
        }
        double share = othersMost == 0 ? 1 : others / othersMost;
        return valueWeight * ValueGoal.share(share, money.total(spend) / money.ceilingMinor());
    }

    /**
     * Along points P = a + b x, value W (P / M) / (P / M + k (x + f)) changes by W (k / M) (b f -
     * a) / (r + s x)^2 per minor unit, r + s x being the divisor: where that is a gain it shrinks
     * with x, and the figure peaks where it no longer makes up for what is paid.
     */
    @Override
    public double peak(double atNothing, double perMinor) {
        double straight =
                objective.perPoint() * perMinor - objective.perMinor() * money.taxFactor();
        if (straight >= 0) {
            return Double.NaN;
        }
        double k = money.taxFactor() / money.ceilingMinor();
        double gain =
                objective.perPoint()
                        * valueWeight
                        * (k / othersMost)
                        * (perMinor * money.feesMinor() - atNothing);
        if (!(gain > 0)) {
            return Double.NaN;
        }
        double divisor = Math.sqrt(gain / -straight);
        return (divisor - atNothing / othersMost - k * money.feesMinor())
                / (perMinor / othersMost + k);
    }
}
