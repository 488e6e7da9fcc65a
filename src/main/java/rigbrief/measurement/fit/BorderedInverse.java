package rigbrief.measurement.fit;

/**
 * The inverse of a {@link Bordered} matrix, of which entries between two groups are worked out when
 * they are asked for.
 *
 * <p>Formula: with S the inverse of the Schur complement and G = inv(D) B, the shared block is S,
 * the border -G S, the groups' inv(D) + G S G'.
 */
final class BorderedInverse {
    private final Groups groups;
    private final double[][] shared;
    private final double[][][] solved;

    /** By group and place: row of G S. */
    private final double[][][] border;

    private final double[][][] own;

    BorderedInverse(
            Groups groups, double[][] shared, double[][][] solved, double[][][] blockInverses) {
        this.groups = groups;
        this.shared = shared;
        this.solved = solved;
        this.border = new double[solved.length][][];
        this.own = new double[solved.length][][];
        for (int g = 0; g < solved.length; g++) {
            int size = solved[g].length;
            border[g] = new double[size][];
            for (int k = 0; k < size; k++) {
                border[g][k] = sharedTimes(solved[g][k]);
            }
            own[g] = new double[size][size];
            for (int k = 0; k < size; k++) {
                for (int l = 0; l < size; l++) {
                    own[g][k][l] = blockInverses[g][k][l] + dot(border[g][k], solved[g][l]);
                }
            }
        }
    }

    private double[] sharedTimes(double[] row) {
        double[] product = new double[row.length];
        for (int i = 0; i < row.length; i++) {
            double amount = row[i];
            if (amount != 0) {
                double[] line = shared[i];
                for (int j = 0; j < row.length; j++) {
                    product[j] += amount * line[j];
                }
            }
        }
        return product;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    /** An entry. */
    double at(int i, int j) {
        int one = groups.of(i);
        int other = groups.of(j);
        if (one == Equations.SHARED) {
            return other == Equations.SHARED
                    ? shared[groups.place(i)][groups.place(j)]
                    : -border[other][groups.place(j)][groups.place(i)];
        }
        double[] line = border[one][groups.place(i)];
        if (other == Equations.SHARED) {
            return -line[groups.place(j)];
        }
        return one == other
                ? own[one][groups.place(i)][groups.place(j)]
                : dot(line, solved[other][groups.place(j)]);
    }

    /** Sum of the products of all entries with those of a matrix of the same groups. */
    double traceOfProduct(Bordered with) {
        double trace = 0;
        int[] common = groups.shared();
        for (int i : common) {
            for (int j : common) {
                trace += at(i, j) * with.at(i, j);
            }
        }
        for (int g = 0; g < groups.count(); g++) {
            for (int i : groups.members(g)) {
                for (int j : groups.members(g)) {
                    trace += at(i, j) * with.at(i, j);
                }
                for (int j : common) {
                    trace += 2 * at(i, j) * with.at(i, j);
                }
            }
        }
        return trace;
    }
}
