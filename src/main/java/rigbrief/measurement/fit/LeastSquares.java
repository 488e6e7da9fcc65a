package rigbrief.measurement.fit;

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
 * one it gets as many rows as there are parameters: with N = J'J = R'R (Cholesky) the rows R and
 * the residuals inv(R')J'r have the same normal equations, and one more residual brings the cost to
 * the same amount. Rotating the rows changes no step of the method, and a row then costs the square
 * of the few parameters it names instead of all.
 */
final class LeastSquares implements LeastSquaresProblem {
    /**
     * Entries up to which rows are passed whole. Squaring loses digits; what has many rows here has
     * priors as well, which keep N far from singular.
     */
    private static final long MOST_WHOLE = 20_000;

    private static final int MOST_EVALUATIONS = 2_000;

    private final Equations equations;
    private final Prior[] priors;
    private final double[] rowWeights;
    private final double[] priorWeights;
    private final double[] start;
    private final boolean whole;
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
    }

    /**
     * Solves it.
     *
     * @param tolerance least change of cost and parameters, relative, that goes on
     */
    double[] solve(double tolerance) {
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(tolerance)
                .withParameterRelativeTolerance(tolerance)
                .optimize(this)
                .getPoint()
                .toArray();
    }

    @Override
    public RealVector getStart() {
        return new ArrayRealVector(start, false);
    }

    @Override
    public int getObservationSize() {
        return whole ? equations.count() + priors.length : priors.length + 1;
    }

    @Override
    public int getParameterSize() {
        return priors.length;
    }

    @Override
    public Evaluation evaluate(RealVector point) {
        double[] at = point.toArray();
        LinearForm form = LinearForm.at(equations, at);
        return whole ? wholeRows(form, at, point) : reducedRows(form, at, point);
    }

    private Evaluation wholeRows(LinearForm form, double[] at, RealVector point) {
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

    private Evaluation reducedRows(LinearForm form, double[] at, RealVector point) {
        int size = at.length;
        double[][] square = new double[size][size];
        double[] right = new double[size];
        double cost = 0;
        for (int row = 0; row < form.count(); row++) {
            double residual = form.residuals()[row];
            form.addSquare(row, rowWeights[row], square);
            form.addSlopes(row, rowWeights[row] * residual, right);
            cost += rowWeights[row] * residual * residual;
        }
        for (int j = 0; j < size; j++) {
            double distance = priors[j].centre() - at[j];
            square[j][j] += priorWeights[j];
            right[j] += priorWeights[j] * distance;
            cost += priorWeights[j] * distance * distance;
        }
        Cholesky root = new Cholesky(square);
        double[] residuals = new double[size + 1];
        double explained = root.forward(right, residuals);
        residuals[size] = Math.sqrt(Math.max(0, cost - explained));
        return new Rows(root.upper(size + 1), residuals, Math.sqrt(cost), point);
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
