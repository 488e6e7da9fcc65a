package rigbrief.measurement.fit;

/**
 * The triangular root of a symmetric positive matrix: N = L L'.
 *
 * <p>A pivot that rounding has brought to nought is lifted to a share of its diagonal, so that what
 * nothing was observed of stays where it is rather than failing the rest.
 */
final class Cholesky {
    private static final double LEAST_PIVOT = 1e-14;

    private final double[][] lower;

    Cholesky(double[][] matrix) {
        int size = matrix.length;
        lower = new double[size][];
        for (int i = 0; i < size; i++) {
            lower[i] = new double[i + 1];
            for (int j = 0; j < i; j++) {
                lower[i][j] = (matrix[i][j] - dot(lower[i], lower[j], j)) / lower[j][j];
            }
            double diagonal = matrix[i][i];
            double pivot = diagonal - dot(lower[i], lower[i], i);
            lower[i][i] = Math.sqrt(Math.max(pivot, Math.max(LEAST_PIVOT * diagonal, 1e-300)));
        }
    }

    private static double dot(double[] a, double[] b, int length) {
        double sum = 0;
        for (int k = 0; k < length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    /** Solves L x = b into the beginning of x; the squared norm of x. */
    double forward(double[] b, double[] x) {
        double square = 0;
        for (int i = 0; i < lower.length; i++) {
            x[i] = (b[i] - dot(lower[i], x, i)) / lower[i][i];
            square += x[i] * x[i];
        }
        return square;
    }

    /** L' in as many rows as asked, those beyond its own empty. */
    double[][] upper(int rows) {
        double[][] upper = new double[rows][lower.length];
        for (int i = 0; i < lower.length; i++) {
            for (int j = 0; j <= i; j++) {
                upper[j][i] = lower[i][j];
            }
        }
        return upper;
    }

    /** The matrix's inverse. */
    double[][] inverse() {
        int size = lower.length;
        double[][] rootInverse = new double[size][size];
        for (int column = 0; column < size; column++) {
            // Column of inv(L), kept as a row, so that all loops run along rows.
            double[] x = rootInverse[column];
            x[column] = 1 / lower[column][column];
            for (int i = column + 1; i < size; i++) {
                double sum = 0;
                for (int k = column; k < i; k++) {
                    sum += lower[i][k] * x[k];
                }
                x[i] = -sum / lower[i][i];
            }
        }
        double[][] inverse = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = i; k < size; k++) {
                    sum += rootInverse[i][k] * rootInverse[j][k];
                }
                inverse[i][j] = sum;
                inverse[j][i] = sum;
            }
        }
        return inverse;
    }
}
