package rigbrief.measurement.fit;

import java.util.Arrays;

/**
 * Fits parameters to observations so that a few wrong ones sway little.
 *
 * <p>Formula: least sum of loss(residual / scale) and squared distances from the priors; least
 * squares over and over, each time weighted by the loss's weights at the residuals so far
 * (iteratively reweighted Levenberg-Marquardt); scale = median size of the residuals / 0.6745.
 *
 * <p>Source: Huber, "Robust Statistics", 1981, chapter 7; checked against the robust regression of
 * a reference library and against certified values of the NIST statistical reference datasets.
 */
public final class RobustFit {
    private static final int MOST_ROUNDS = 200;

    /** What only leads on, to another loss or another round, is not needed as closely. */
    private static final double ROUGHLY = 100;

    /** A prior that gives way keeps this share of its weight, or nothing would hold at all. */
    private static final double LEAST_PRIOR_WEIGHT = 0.01;

    private final Equations equations;
    private final Prior[] priors;
    private final double tolerance;
    private final Scatter scatter;
    private final Groups groups;

    /**
     * A fit.
     *
     * @param priors one per parameter; the search starts at their centres
     * @param tolerance change of the residuals between two rounds, relative, that ends the fit
     * @param scatter how much observations are believed to scatter
     * @throws IllegalArgumentException for another number of priors than of parameters, or no
     *     observation
     */
    public RobustFit(Equations equations, Prior[] priors, double tolerance, Scatter scatter) {
        if (priors.length != equations.parameters() || equations.count() == 0) {
            throw new IllegalArgumentException(
                    "fit: found %d observations, %d parameters and %d priors, expected some and equal counts"
                            .formatted(equations.count(), equations.parameters(), priors.length));
        }
        this.equations = equations;
        this.priors = priors.clone();
        this.tolerance = tolerance;
        this.scatter = scatter;
        this.groups = Groups.of(equations);
    }

    /**
     * Fits by a loss.
     *
     * <p>The bisquare starts where the Huber loss ends, since it has more than one end of its own.
     *
     * @return what was found
     */
    public FitResult fit(Loss loss) {
        double[] start = new double[priors.length];
        Arrays.setAll(start, j -> priors[j].centre());
        State squares = new State(start, Loss.SQUARES);
        squares.solve(loss == Loss.SQUARES ? tolerance : ROUGHLY * tolerance);
        State last = squares;
        if (loss != Loss.SQUARES) {
            last = new State(last.at, Loss.HUBER);
            last.iterate(loss == Loss.HUBER ? tolerance : ROUGHLY * tolerance);
        }
        if (loss == Loss.BISQUARE) {
            last = new State(last.at, loss);
            last.iterate(tolerance);
        }
        return last.result();
    }

    /** Where a fit stands. */
    private final class State {
        private final Loss loss;
        private final double[] rowWeights = new double[equations.count()];
        private final double[] lossWeights = new double[equations.count()];
        private final double[] priorWeights = new double[priors.length];
        private double[] at;
        private double scale;
        private int rounds;

        State(double[] start, Loss loss) {
            this.at = start;
            this.loss = loss;
            weigh(residuals());
        }

        private double[] residuals() {
            return LinearForm.at(equations, at).residuals();
        }

        /** Scale, then weights, from residuals and distances so far. */
        private void weigh(double[] residuals) {
            double freedom = Math.max(0, residuals.length - priors.length);
            scale = scatter.with(Scale.of(residuals), scatter.weight() > 0 ? freedom : 1);
            boolean plain = loss == Loss.SQUARES;
            for (int i = 0; i < residuals.length; i++) {
                lossWeights[i] = loss.weight(residuals[i] / scale);
                rowWeights[i] = lossWeights[i] / (scale * scale);
            }
            for (int j = 0; j < priors.length; j++) {
                Prior prior = priors[j];
                double far = (at[j] - prior.centre()) / prior.sigma();
                double weight =
                        prior.yields() && !plain
                                ? Math.max(LEAST_PRIOR_WEIGHT, loss.weight(far))
                                : 1;
                priorWeights[j] = weight * prior.precision();
            }
        }

        void solve(double close) {
            at = new LeastSquares(equations, priors, rowWeights, priorWeights, at).solve(close);
            rounds++;
        }

        void iterate(double close) {
            double[] before = residuals();
            for (int round = 0; round < MOST_ROUNDS; round++) {
                // Weights move between rounds anyway: one step of the method is near enough.
                solve(ROUGHLY * tolerance);
                double[] now = residuals();
                weigh(now);
                if (change(before, now) <= close) {
                    return;
                }
                before = now;
            }
        }

        private double change(double[] before, double[] now) {
            double moved = 0;
            double size = 0;
            for (int i = 0; i < now.length; i++) {
                moved += (now[i] - before[i]) * (now[i] - before[i]);
                size += before[i] * before[i];
            }
            return Math.sqrt(moved / Math.max(Double.MIN_NORMAL, size));
        }

        FitResult result() {
            LinearForm form = LinearForm.at(equations, at);
            weigh(form.residuals());
            return FitResult.of(
                    form, at, loss, scale, scatter, lossWeights, priorWeights, rounds, groups);
        }
    }
}
