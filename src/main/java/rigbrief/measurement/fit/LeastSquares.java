package rigbrief.measurement.fit;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.ConvergenceChecker;
import org.hipparchus.optim.nonlinear.vector.leastsquares.AbstractEvaluation;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Incrementor;

/**
 * Weighted least squares of equations and priors, by the Levenberg-Marquardt method of a library.
 *
 * <p>The library wants every equation as a full row. A small problem is given to it so. Of a large
 * one it gets as many rows as there are shared parameters: with N = J'J = R'R (Cholesky) the rows R
 * and the residuals inv(R')J'r have the same normal equations, and one more residual brings the
 * cost to the same amount. Rotating the rows changes no step of the method, and a row then costs
 * the square of the few parameters it names instead of all.
 *
 * <p>Parameters of groups do not reach the library: wherever it puts the shared ones, each group
 * takes its own best place, and N is what {@link Bordered} leaves of the whole matrix. So the work
 * grows with the cube of the shared parameters and with the number of groups.
 *
 * <p>Source: Golub and Pereyra, "The differentiation of pseudo-inverses and nonlinear least squares
 * problems whose variables separate", 1973, in Kaufman's simpler form of 1975.
 */
final class LeastSquares implements LeastSquaresProblem {
    /**
     * Entries up to which rows are passed whole. Squaring loses digits; what has many rows here has
     * priors as well, which keep N far from singular.
     */
    private static final long MOST_WHOLE = 20_000;

    private static final int MOST_EVALUATIONS = 2_000;

    private static final int MOST_OWN_STEPS = 50;

    /** Groups come this much nearer to their best place than the shared parameters to theirs. */
    private static final double OWN_SHARE = 0.01;

    private static final double LEAST_OWN_STEP = 1e-10;

    private final Equations equations;
    private final Prior[] priors;
    private final double[] rowWeights;
    private final double[] priorWeights;
    private final double[] start;
    private final boolean whole;
    private final Groups groups;

    /** Where the groups' parameters were last; shared ones stand as the library has them. */
    private final double[] at;

    private double ownClose;
    private final Incrementor evaluations = new Incrementor(MOST_EVALUATIONS);
    private final Incrementor iterations = new Incrementor(MOST_EVALUATIONS);

    /**
     * A problem.
     *
     * @param rowWeights weight of each equation's squared residual
     * @param priorWeights weight of each prior's squared distance
     */
    LeastSquares(
            Equations equations,
            Prior[] priors,
            double[] rowWeights,
            double[] priorWeights,
            double[] start) {
        this.equations = equations;
        this.priors = priors;
        this.rowWeights = rowWeights;
        this.priorWeights = priorWeights;
        this.start = start;
        long entries = (long) (equations.count() + priors.length) * priors.length;
        this.whole = entries <= MOST_WHOLE;
        this.groups = Groups.of(equations);
        this.at = start.clone();
    }

    /**
     * Solves it.
     *
     * @param tolerance least change of cost and parameters, relative, that goes on
     */
    double[] solve(double tolerance) {
        ownClose = Math.max(LEAST_OWN_STEP, OWN_SHARE * tolerance);
        RealVector best =
                new LevenbergMarquardtOptimizer()
                        .withCostRelativeTolerance(tolerance)
                        .withParameterRelativeTolerance(tolerance)
                        .optimize(this)
                        .getPoint();
        if (whole) {
            return best.toArray();
        }
        // The last point that the method tried need not be the one it took.
        settled(best);
        return at.clone();
    }

    @Override
    public RealVector getStart() {
        return new ArrayRealVector(whole ? start : chosen(start), false);
    }

    @Override
    public int getObservationSize() {
        return whole ? equations.count() + priors.length : getParameterSize() + 1;
    }

    @Override
    public int getParameterSize() {
        return whole ? priors.length : groups.shared().length;
    }

    private double[] chosen(double[] all) {
        return Arrays.stream(groups.shared()).mapToDouble(j -> all[j]).toArray();
    }

    @Override
    public Evaluation evaluate(RealVector point) {
        return whole ? wholeRows(point) : reducedRows(point);
    }

    private Evaluation wholeRows(RealVector point) {
        double[] at = point.toArray();
        LinearForm form = LinearForm.at(equations, at);
        int rows = form.count();
        double[][] jacobian = new double[rows + at.length][at.length];
        double[] residuals = new double[rows + at.length];
        for (int row = 0; row < rows; row++) {
            double root = Math.sqrt(rowWeights[row]);
            form.addSlopes(row, root, jacobian[row]);
            residuals[row] = root * form.residuals()[row];
        }
        for (int j = 0; j < at.length; j++) {
            double root = Math.sqrt(priorWeights[j]);
            jacobian[rows + j][j] = root;
            residuals[rows + j] = root * (priors[j].centre() - at[j]);
        }
        return new Rows(jacobian, residuals, norm(residuals), point);
    }

    private Evaluation reducedRows(RealVector point) {
        Normal normal = settled(point);
        Bordered.Eliminated left = normal.square().eliminated();
        int size = groups.shared().length;
        double[] residuals = new double[size + 1];
        double explained = left.root().forward(left.right(normal.right()), residuals);
        residuals[size] = Math.sqrt(Math.max(0, normal.cost() - explained));
        return new Rows(left.root().upper(size + 1), residuals, Math.sqrt(normal.cost()), point);
    }

    /** The normal equations with every group at its best place for the shared parameters. */
    private Normal settled(RealVector point) {
        int[] shared = groups.shared();
        for (int i = 0; i < shared.length; i++) {
            at[shared[i]] = point.getEntry(i);
        }
        Normal normal = normal();
        for (int step = 0; step < MOST_OWN_STEPS && groups.count() > 0; step++) {
            double moved = moveOwn(normal);
            if (moved == 0) {
                return normal;
            }
            normal = normal();
            if (moved < ownClose) {
                return normal;
            }
        }
        return normal;
    }

    /** Brings each group a step nearer to its best place; the largest step. */
    private double moveOwn(Normal normal) {
        double most = 0;
        for (int g = 0; g < groups.count(); g++) {
            double[] step = normal.square().ownStep(g, normal.right());
            int[] members = groups.members(g);
            for (int k = 0; k < step.length; k++) {
                at[members[k]] += step[k];
                most = Math.max(most, Math.abs(step[k]));
            }
        }
        return most;
    }

    /** Normal equations at a point: J'J, J'r and the cost r'r. */
    private record Normal(Bordered square, double[] right, double cost) {}

    private Normal normal() {
        LinearForm form = LinearForm.at(equations, at);
        Bordered square = new Bordered(groups);
        double[] right = new double[at.length];
        double cost = 0;
        for (int row = 0; row < form.count(); row++) {
            double residual = form.residuals()[row];
            form.addSquare(row, rowWeights[row], square);
            form.addSlopes(row, rowWeights[row] * residual, right);
            cost += rowWeights[row] * residual * residual;
        }
        for (int j = 0; j < at.length; j++) {
            double distance = priors[j].centre() - at[j];
            square.add(j, j, priorWeights[j]);
            right[j] += priorWeights[j] * distance;
            cost += priorWeights[j] * distance * distance;
        }
        return new Normal(square, right, cost);
    }

    private static double norm(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return Math.sqrt(sum);
    }

    @Override
    public Incrementor getEvaluationCounter() {
        return evaluations;
    }

    @Override
    public Incrementor getIterationCounter() {
        return iterations;
    }

    /** None: the method's own tolerances end it. */
    @Override
    public ConvergenceChecker<Evaluation> getConvergenceChecker() {
        return null;
    }

    private static final class Rows extends AbstractEvaluation {
        private final double[][] jacobian;
        private final double[] residuals;
        private final double cost;
        private final RealVector point;

        Rows(double[][] jacobian, double[] residuals, double cost, RealVector point) {
            super(residuals.length);
            this.jacobian = jacobian;
            this.residuals = residuals;
            this.cost = cost;
            this.point = point;
        }

        @Override
        public RealMatrix getJacobian() {
            return new Array2DRowRealMatrix(jacobian, false);
        }

        @Override
        public RealVector getResiduals() {
            return new ArrayRealVector(residuals, false);
        }

        /** Not by way of the residuals, whose last one is a difference of large numbers. */
        @Override
        public double getCost() {
            return cost;
        }

        @Override
        public RealVector getPoint() {
            return point;
        }
    }
}
