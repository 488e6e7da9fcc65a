package rigbrief.measurement.fit;

/**
 * A symmetric positive matrix in which parameters of two groups never meet: small blocks along the
 * diagonal, one for each group, and a border of shared parameters.
 *
 * <p>Formula: with A the shared block, D the groups' and B between them, the groups are eliminated
 * by the Schur complement A - B' inv(D) B. Its size is that of the shared parameters alone.
 *
 * <p>Source: Golub and Van Loan, "Matrix Computations", 1996, section 3.2; checked against a
 * library's decomposition of the full matrix.
 */
final class Bordered {
    private final Groups groups;
    private final double[][] shared;

    /** By group and place: its row of the group's block. */
    private final double[][][] own;

    /** By group and place: its row of the border. */
    private final double[][][] border;

    Bordered(Groups groups) {
        this.groups = groups;
        int common = groups.shared().length;
        shared = new double[common][common];
        own = new double[groups.count()][][];
        border = new double[groups.count()][][];
        for (int g = 0; g < own.length; g++) {
            int size = groups.members(g).length;
            own[g] = new double[size][size];
            border[g] = new double[size][common];
        }
    }

    /**
     * Adds to an entry; whoever adds to (i, j) adds to (j, i) as well.
     *
     * @throws IllegalArgumentException for parameters of two groups
     */
    void add(int i, int j, double amount) {
        int one = groups.of(i);
        int other = groups.of(j);
        if (one == Equations.SHARED) {
            if (other == Equations.SHARED) {
                shared[groups.place(i)][groups.place(j)] += amount;
            }
        } else if (other == Equations.SHARED) {
            border[one][groups.place(i)][groups.place(j)] += amount;
        } else if (one == other) {
            own[one][groups.place(i)][groups.place(j)] += amount;
        } else {
            throw new IllegalArgumentException(
                    "equation: found parameters %d and %d of two groups, expected one group at most"
                            .formatted(i, j));
        }
    }

    double at(int i, int j) {
        int one = groups.of(i);
        int other = groups.of(j);
        if (one == Equations.SHARED) {
            return other == Equations.SHARED
                    ? shared[groups.place(i)][groups.place(j)]
                    : border[other][groups.place(j)][groups.place(i)];
        }
        if (other == Equations.SHARED) {
            return border[one][groups.place(i)][groups.place(j)];
        }
        return one == other ? own[one][groups.place(i)][groups.place(j)] : 0;
    }

    /** This matrix times a factor, with a diagonal added. */
    Bordered scaled(double factor, double[] diagonal) {
        Bordered sum = new Bordered(groups);
        scale(shared, factor, sum.shared);
        for (int g = 0; g < own.length; g++) {
            scale(own[g], factor, sum.own[g]);
            scale(border[g], factor, sum.border[g]);
        }
        for (int j = 0; j < diagonal.length; j++) {
            sum.add(j, j, diagonal[j]);
        }
        return sum;
    }

    private static void scale(double[][] from, double factor, double[][] to) {
        for (int i = 0; i < from.length; i++) {
            for (int j = 0; j < from[i].length; j++) {
                to[i][j] = factor * from[i][j];
            }
        }
    }

    /** Solution of a group's own block for its part of a right-hand side, by place. */
    double[] ownStep(int group, double[] right) {
        int[] members = groups.members(group);
        double[][] inverse = new Cholesky(own[group]).inverse();
        double[] step = new double[members.length];
        for (int k = 0; k < step.length; k++) {
            for (int l = 0; l < step.length; l++) {
                step[k] += inverse[k][l] * right[members[l]];
            }
        }
        return step;
    }

    /** The groups eliminated. */
    Eliminated eliminated() {
        return new Eliminated();
    }

    /** The matrix with its groups eliminated: what is left for the shared parameters. */
    final class Eliminated {
        private final Cholesky[] blocks = new Cholesky[own.length];

        /** By group and place: row of inv(D) B. */
        private final double[][][] solved = new double[own.length][][];

        private final Cholesky root;

        private Eliminated() {
            double[][] left = new double[shared.length][];
            for (int i = 0; i < left.length; i++) {
                left[i] = shared[i].clone();
            }
            for (int g = 0; g < own.length; g++) {
                blocks[g] = new Cholesky(own[g]);
                solved[g] = times(blocks[g].inverse(), border[g]);
                subtract(border[g], solved[g], left);
            }
            root = new Cholesky(left);
        }

        /** The triangular root of the Schur complement. */
        Cholesky root() {
            return root;
        }

        /** A right-hand side's shared part after the elimination, by place. */
        double[] right(double[] right) {
            double[] left = new double[shared.length];
            for (int i = 0; i < left.length; i++) {
                left[i] = right[groups.shared()[i]];
            }
            for (int g = 0; g < own.length; g++) {
                int[] members = groups.members(g);
                for (int k = 0; k < members.length; k++) {
                    double amount = right[members[k]];
                    double[] line = solved[g][k];
                    for (int i = 0; i < left.length; i++) {
                        left[i] -= line[i] * amount;
                    }
                }
            }
            return left;
        }

        /** The whole matrix's inverse. */
        BorderedInverse inverse() {
            double[][][] blockInverses = new double[own.length][][];
            for (int g = 0; g < own.length; g++) {
                blockInverses[g] = blocks[g].inverse();
            }
            return new BorderedInverse(groups, root.inverse(), solved, blockInverses);
        }

        /** Takes one' x other away, symmetric as inv(D) is. */
        private static void subtract(double[][] one, double[][] other, double[][] from) {
            for (int k = 0; k < one.length; k++) {
                double[] right = other[k];
                for (int i = 0; i < right.length; i++) {
                    double amount = one[k][i];
                    if (amount != 0) {
                        double[] line = from[i];
                        for (int j = 0; j < right.length; j++) {
                            line[j] -= amount * right[j];
                        }
                    }
                }
            }
        }
    }

    static double[][] times(double[][] square, double[][] rows) {
        double[][] product = new double[square.length][];
        for (int i = 0; i < square.length; i++) {
            product[i] = new double[rows[i].length];
            for (int k = 0; k < square.length; k++) {
                for (int j = 0; j < product[i].length; j++) {
                    product[i][j] += square[i][k] * rows[k][j];
                }
            }
        }
        return product;
    }
}
