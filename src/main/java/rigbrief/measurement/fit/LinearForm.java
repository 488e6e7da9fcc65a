package rigbrief.measurement.fit;

import rigbrief.measurement.fit.Equations.Line;

/**
 * The equations at one point: residuals, and slopes row by row.
 *
 * <p>Residual = observed - modelled; slopes are those of the modelled value.
 */
final class LinearForm {
    private final int parameters;
    private final double[] residuals;
    private final int[] starts;
    private int[] index;
    private double[] slopes;

    private LinearForm(int count, int parameters) {
        this.parameters = parameters;
        this.residuals = new double[count];
        this.starts = new int[count + 1];
        this.index = new int[8 * count];
        this.slopes = new double[8 * count];
    }

    static LinearForm at(Equations equations, double[] point) {
        LinearForm form = new LinearForm(equations.count(), equations.parameters());
        Line line = new Line();
        int filled = 0;
        for (int row = 0; row < equations.count(); row++) {
            equations.evaluate(row, point, line);
            form.residuals[row] = equations.observed(row) - line.value();
            form.room(filled + line.size());
            for (int i = 0; i < line.size(); i++) {
                form.index[filled] = line.parameter(i);
                form.slopes[filled] = line.slope(i);
                filled++;
            }
            form.starts[row + 1] = filled;
        }
        return form;
    }

    private void room(int needed) {
        if (needed > index.length) {
            int size = Math.max(needed, 2 * index.length);
            index = java.util.Arrays.copyOf(index, size);
            slopes = java.util.Arrays.copyOf(slopes, size);
        }
    }

    int count() {
        return residuals.length;
    }

    int parameters() {
        return parameters;
    }

    double[] residuals() {
        return residuals;
    }

    /** Adds a row's outer product of slopes, times a factor, to a symmetric matrix. */
    void addSquare(int row, double factor, Bordered to) {
        for (int i = starts[row]; i < starts[row + 1]; i++) {
            double slope = factor * slopes[i];
            for (int j = starts[row]; j < starts[row + 1]; j++) {
                to.add(index[i], index[j], slope * slopes[j]);
            }
        }
    }

    /** Adds a row's slopes, times a factor, to a vector. */
    void addSlopes(int row, double factor, double[] to) {
        for (int i = starts[row]; i < starts[row + 1]; i++) {
            to[index[i]] += factor * slopes[i];
        }
    }

    /** A row's slopes on both sides of a symmetric matrix: variance where that is a covariance. */
    double between(int row, BorderedInverse matrix, int other) {
        double sum = 0;
        for (int i = starts[row]; i < starts[row + 1]; i++) {
            double inner = 0;
            for (int j = starts[other]; j < starts[other + 1]; j++) {
                inner += matrix.at(index[i], index[j]) * slopes[j];
            }
            sum += slopes[i] * inner;
        }
        return sum;
    }
}
