package rigbrief.measurement.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Straight problems solved in one go by a library's orthogonal decomposition. */
class LeastSquaresTest {
    private static final int PARAMETERS = 60;
    private static final int NAMED = 5;

    /** Equations of a few parameters each, as measurements have them. */
    private record Sparse(int[][] named, double[][] slopes, double[] y) implements Equations {
        static Sparse of(int count, Random random) {
            int[][] named = new int[count][NAMED];
            double[][] slopes = new double[count][NAMED];
            double[] y = new double[count];
            for (int i = 0; i < count; i++) {
                for (int k = 0; k < NAMED; k++) {
                    named[i][k] = random.nextInt(PARAMETERS);
                    slopes[i][k] = random.nextGaussian();
                }
                y[i] = random.nextGaussian();
            }
            return new Sparse(named, slopes, y);
        }

        @Override
        public int count() {
            return y.length;
        }

        @Override
        public int parameters() {
            return PARAMETERS;
        }

        @Override
        public void evaluate(int index, double[] at, Line into) {
            double value = 0;
            for (int k = 0; k < NAMED; k++) {
                value += slopes[index][k] * at[named[index][k]];
            }
            into.begin(value);
            for (int k = 0; k < NAMED; k++) {
                into.slope(named[index][k], slopes[index][k]);
            }
        }

        @Override
        public double observed(int index) {
            return y[index];
        }
    }

    /** The smaller count goes to the method row by row, the larger one reduced. */
    @ParameterizedTest
    @ValueSource(ints = {100, 2_000})
    void few_and_many_rows_are_solved_as_by_orthogonal_decomposition(int count) {
        Random random = new Random(count);
        Sparse equations = Sparse.of(count, random);
        Prior[] priors = new Prior[PARAMETERS];
        double[] priorWeights = new double[PARAMETERS];
        for (int j = 0; j < PARAMETERS; j++) {
            priors[j] = Prior.normal(random.nextGaussian(), 0.5 + random.nextDouble());
            priorWeights[j] = priors[j].precision();
        }
        double[] rowWeights = new double[count];
        Arrays.setAll(rowWeights, i -> random.nextDouble());

        double[] solved =
                new LeastSquares(equations, priors, rowWeights, priorWeights, start(priors))
                        .solve(1e-14);

        double[] expected = orthogonal(equations, priors, rowWeights, priorWeights);
        for (int j = 0; j < PARAMETERS; j++) {
            assertThat(solved[j]).isCloseTo(expected[j], within(1e-9));
        }
    }

    private static double[] start(Prior[] priors) {
        return Arrays.stream(priors).mapToDouble(Prior::centre).toArray();
    }

    private static double[] orthogonal(
            Sparse it, Prior[] priors, double[] rowWeights, double[] priorWeights) {
        double[][] rows = new double[it.count() + PARAMETERS][PARAMETERS];
        double[] right = new double[rows.length];
        for (int i = 0; i < it.count(); i++) {
            for (int k = 0; k < NAMED; k++) {
                rows[i][it.named()[i][k]] += Math.sqrt(rowWeights[i]) * it.slopes()[i][k];
            }
            right[i] = Math.sqrt(rowWeights[i]) * it.y()[i];
        }
        for (int j = 0; j < PARAMETERS; j++) {
            rows[it.count() + j][j] = Math.sqrt(priorWeights[j]);
            right[it.count() + j] = Math.sqrt(priorWeights[j]) * priors[j].centre();
        }
        return new QRDecomposition(new Array2DRowRealMatrix(rows, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }
}
