package rigbrief.measurement.fit;

/**
 * What a fit found, how sure of it it is, and what sways it.
 *
 * <p>Formulas: covariance = inverse of (J'J / v + priors' precisions), v = k^2 S / m^2 with S = sum
 * of squared weighted residuals / (n - p), m and k mean and correction of the loss's influence
 * slopes; p = effective number of parameters, the trace of that inverse times J'J / v. Leverage of
 * an observation = share of its own modelled value that it decides itself, with the weights the fit
 * ended with. Left out: residual / (1 - leverage), exact for a straight model with those weights.
 *
 * <p>Source: Huber, "Robust Statistics", 1981, section 7.6 (variance); Cook and Weisberg,
 * "Residuals and Influence in Regression", 1982 (leverage, distance); checked against the summary
 * of a reference library's robust regression.
 */
public final class FitResult {
    /** Variance and effective parameters hang on each other; so many rounds at most. */
    private static final int SETTLING = 20;

    private static final double SETTLED = 0.01;

    private final LinearForm form;
    private final double[] at;
    private final double scale;
    private final Scatter scatter;
    private final double[] lossWeights;
    private final int rounds;
    private final BorderedInverse covariance;
    private final BorderedInverse working;
    private double spread;
    private double effectiveParameters;

    private FitResult(
            LinearForm form,
            double[] at,
            Loss loss,
            double scale,
            Scatter scatter,
            double[] lossWeights,
            double[] priorWeights,
            int rounds,
            Groups groups) {
        this.form = form;
        this.at = at;
        this.scale = scale;
        this.scatter = scatter;
        this.lossWeights = lossWeights;
        this.rounds = rounds;
        this.covariance = covariance(loss, priorWeights, groups);
        this.working = working(priorWeights, groups);
    }

    static FitResult of(
            LinearForm form,
            double[] at,
            Loss loss,
            double scale,
            Scatter scatter,
            double[] lossWeights,
            double[] priorWeights,
            int rounds,
            Groups groups) {
        return new FitResult(
                form, at, loss, scale, scatter, lossWeights, priorWeights, rounds, groups);
    }

    private BorderedInverse covariance(Loss loss, double[] priorWeights, Groups groups) {
        int size = at.length;
        Bordered square = new Bordered(groups);
        for (int row = 0; row < form.count(); row++) {
            form.addSquare(row, 1, square);
        }
        boolean opinions = false;
        for (double weight : priorWeights) {
            opinions |= weight > 0;
        }
        effectiveParameters = opinions ? Math.min(size, form.count() / 2.0) : size;
        BorderedInverse inverse = null;
        double change = Double.POSITIVE_INFINITY;
        for (int i = 0; i < SETTLING && change > SETTLED; i++) {
            double before = effectiveParameters;
            double variance = variance(loss);
            inverse = square.scaled(1 / variance, priorWeights).eliminated().inverse();
            effectiveParameters = opinions ? inverse.traceOfProduct(square) / variance : size;
            change = Math.abs(effectiveParameters - before);
        }
        return inverse;
    }

    /** The variance that least squares would have to have for the same certainty. */
    private double variance(Loss loss) {
        int count = form.count();
        double squares = 0;
        double slopes = 0;
        double slopeSquares = 0;
        for (int i = 0; i < count; i++) {
            double weighted = lossWeights[i] * form.residuals()[i];
            double slope = loss.influenceSlope(form.residuals()[i] / scale);
            squares += weighted * weighted;
            slopes += slope;
            slopeSquares += slope * slope;
        }
        double mean = slopes / count;
        double slopeVariance = (slopeSquares - count * mean * mean) / Math.max(1, count - 1);
        double correction = 1 + effectiveParameters * slopeVariance / (count * mean * mean);
        double freedom = Math.max(scatter.weight() > 0 ? 0 : 1, count - effectiveParameters);
        double found = Math.sqrt(squares / Math.max(1, freedom)) * correction / mean;
        spread = scatter.with(found, freedom);
        return Math.max(spread * spread, Double.MIN_NORMAL);
    }

    private BorderedInverse working(double[] priorWeights, Groups groups) {
        Bordered square = new Bordered(groups);
        for (int row = 0; row < form.count(); row++) {
            form.addSquare(row, lossWeights[row] / (scale * scale), square);
        }
        return square.scaled(1, priorWeights).eliminated().inverse();
    }

    /** A parameter. */
    public double parameter(int index) {
        return at[index];
    }

    /** Standard error of a parameter. */
    public double error(int index) {
        return Math.sqrt(covariance.at(index, index));
    }

    /** Covariance of two parameters. */
    public double covariance(int one, int other) {
        return covariance.at(one, other);
    }

    /** Effective number of parameters: those that the observations decide, not the priors. */
    public double effectiveParameters() {
        return effectiveParameters;
    }

    /** Observations beyond the effective number of parameters, believed ones among them. */
    public double freedom() {
        return Math.max(1, form.count() - effectiveParameters + scatter.weight());
    }

    /** Spread of single observations around the model, in their unit. */
    public double spread() {
        return spread;
    }

    /** Median size of the residuals / 0.6745, the unit in which the loss weighs them. */
    public double scale() {
        return scale;
    }

    /** Times least squares was solved with other weights. */
    public int rounds() {
        return rounds;
    }

    /** Observed less modelled. */
    public double residual(int observation) {
        return form.residuals()[observation];
    }

    /** Weight that the loss left an observation, 0 to 1. */
    public double weight(int observation) {
        return lossWeights[observation];
    }

    /** Share of its own modelled value that an observation decides, 0 to 1. */
    public double leverage(int observation) {
        double share =
                form.between(observation, working, observation)
                        * lossWeights[observation]
                        / (scale * scale);
        return Math.min(1, share);
    }

    /** How far all modelled values move without an observation, against what is uncertain. */
    public double cookDistance(int observation) {
        double leverage = leverage(observation);
        double residual = residual(observation) / scale;
        double left = Math.max(1e-9, 1 - leverage);
        return lossWeights[observation]
                * residual
                * residual
                * leverage
                / (left * left * Math.max(1, effectiveParameters));
    }

    /** Observed less modelled, had the observation been left out of the fit. */
    public double residualLeftOut(int observation) {
        return residual(observation) / Math.max(1e-9, 1 - leverage(observation));
    }

    /**
     * Observed less modelled, had all of a group been left out of the fit.
     *
     * @param group observations, each once
     * @return residuals in the group's order
     */
    public double[] residualsLeftOut(int[] group) {
        int size = group.length;
        double[][] rest = new double[size][size];
        double[] right = new double[size];
        for (int i = 0; i < size; i++) {
            double rootI = Math.sqrt(lossWeights[group[i]]) / scale;
            for (int j = 0; j <= i; j++) {
                double rootJ = Math.sqrt(lossWeights[group[j]]) / scale;
                double share = rootI * rootJ * form.between(group[i], working, group[j]);
                rest[i][j] = (i == j ? 1 : 0) - share;
                rest[j][i] = rest[i][j];
            }
        }
        // Unweighted r_out = r + X C X'W (I - H)^-1 r, written so that a weight of 0 divides
        // nothing.
        for (int i = 0; i < size; i++) {
            right[i] = Math.sqrt(lossWeights[group[i]]) * residual(group[i]);
        }
        double[][] inverse = new Cholesky(rest).inverse();
        double[] lifted = new double[size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                lifted[i] += inverse[i][j] * right[j];
            }
        }
        double[] out = new double[size];
        for (int i = 0; i < size; i++) {
            out[i] = residual(group[i]);
            for (int j = 0; j < size; j++) {
                double rootJ = Math.sqrt(lossWeights[group[j]]);
                out[i] +=
                        form.between(group[i], working, group[j])
                                * rootJ
                                / (scale * scale)
                                * lifted[j];
            }
        }
        return out;
    }
}
