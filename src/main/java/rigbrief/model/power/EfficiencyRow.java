package rigbrief.model.power;

import java.util.OptionalDouble;
import rigbrief.model.Expect;

/**
 * One supply's least efficiency at its test loads, with the loss curve through the lowest three.
 *
 * <p>Formula: straight lines between the points; below them {@link SupplyLoss}.
 *
 * <p>Source: the 80 PLUS programme fixes the points; what lies between is common practice.
 */
final class EfficiencyRow {
    private static final int PERCENT = 100;

    private final double[] loadShares;
    private final double[] efficiencies;
    private final SupplyLoss loss;

    private EfficiencyRow(double[] loadShares, double[] efficiencies) {
        this.loadShares = loadShares;
        this.efficiencies = efficiencies;
        this.loss = SupplyLoss.throughFirstThree(loadShares, efficiencies);
    }

    /** A row of points, alternating load and efficiency, both in percent, loads rising. */
    static EfficiencyRow of(double... loadAndEfficiencyPercent) {
        int points = loadAndEfficiencyPercent.length / 2;
        double[] shares = new double[points];
        double[] efficiencies = new double[points];
        for (int i = 0; i < points; i++) {
            shares[i] = loadAndEfficiencyPercent[2 * i] / PERCENT;
            efficiencies[i] = loadAndEfficiencyPercent[2 * i + 1] / PERCENT;
        }
        return new EfficiencyRow(shares, efficiencies);
    }

    /** The load share of the lowest point. */
    double lowestShare() {
        return loadShares[0];
    }

    /** The loss curve through the lowest three points. */
    SupplyLoss loss() {
        return loss;
    }

    /** The efficiency between the points, or nothing outside them. */
    OptionalDouble at(double loadShare) {
        Expect.notNegative(loadShare, "loadShare");
        boolean said = loadShare >= loadShares[0] && loadShare <= 1;
        return said ? OptionalDouble.of(between(loadShare)) : OptionalDouble.empty();
    }

    /** The efficiency between the points; at the last point's value above it. */
    double between(double loadShare) {
        int last = loadShares.length - 1;
        if (loadShare >= loadShares[last]) {
            return efficiencies[last];
        }
        int i = 1;
        while (loadShares[i] < loadShare) {
            i++;
        }
        double part = (loadShare - loadShares[i - 1]) / (loadShares[i] - loadShares[i - 1]);
        return efficiencies[i - 1] + part * (efficiencies[i] - efficiencies[i - 1]);
    }
}
