package rigbrief.measurement.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Straight problems solved in one go by a library's orthogonal decomposition. */
class LeastSquaresTest {
    private static final int PARAMETERS = 60;
    private static final int NAMED = 5;
    private static final int GROUPS = 6;

    /** Equations of a few parameters each, as measurements have them. */
    private record Sparse(int[][] named, double[][] slopes, double[] y, int[] groups)
            implements Equations {
        static Sparse of(int count, Random random, int[] groups) {
            int[][] named = new int[count][NAMED];
            double[][] slopes = new double[count][NAMED];
            double[] y = new double[count];
            for (int i = 0; i < count; i++) {
                int own = random.nextInt(GROUPS);
                for (int k = 0; k < NAMED; k++) {
                    named[i][k] = parameter(random, own, groups);
                    slopes[i][k] = random.nextGaussian();
                }
                y[i] = random.nextGaussian();
            }
            return new Sparse(named, slopes, y, groups);
        }

        /** Any parameter but those of another group. */
        private static int parameter(Random random, int own, int[] groups) {
            int any = random.nextInt(PARAMETERS);
            while (groups[any] != SHARED && groups[any] != own) {
                any = random.nextInt(PARAMETERS);
            }
            return any;
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
        check(Sparse.of(count, random, shared()), random);
    }

    /** Parameters of a group meet in no equation with those of another. */
    @Test
    void groups_are_solved_as_by_orthogonal_decomposition() {
        int[] groups = shared();
        for (int j = 0; j < PARAMETERS; j += 3) {
            groups[j] = j / 3 % GROUPS;
        }
        Random random = new Random(7);

        check(Sparse.of(2_000, random, groups), random);
    }

    private static int[] shared() {
        int[] groups = new int[PARAMETERS];
        Arrays.fill(groups, Equations.SHARED);
        return groups;
    }

    @Test
    void an_equation_of_two_groups_is_refused() {
        Bordered square = new Bordered(Groups.of(twoGroups()));

        assertThatThrownBy(() -> square.add(0, 1, 1)).hasMessageContaining("two groups");
    }

    private static Sparse twoGroups() {
        int[] groups = shared();
        groups[0] = 0;
        groups[1] = 1;
        return new Sparse(new int[1][NAMED], new double[1][NAMED], new double[1], groups);
    }

    private static void check(Sparse equations, Random random) {
        int count = equations.count();
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
