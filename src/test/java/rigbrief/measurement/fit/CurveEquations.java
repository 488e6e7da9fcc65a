package rigbrief.measurement.fit;

import java.util.Arrays;

/** Observations of a curve y = f(x; parameters), slopes by differences. */
record CurveEquations(double[] x, double[] y, int parameters, Curve curve) implements Equations {
    /** A curve. */
    interface Curve {
        double at(double x, double[] parameters);
    }

    @Override
    public int count() {
        return x.length;
    }

    @Override
    public void evaluate(int index, double[] at, Line into) {
        into.begin(curve.at(x[index], at));
        for (int j = 0; j < at.length; j++) {
            double step = Math.max(Math.abs(at[j]), 1e-12) * 1e-5;
            double[] moved = Arrays.copyOf(at, at.length);
            moved[j] = at[j] + step;
            double above = curve.at(x[index], moved);
            moved[j] = at[j] - step;
            into.slope(j, (above - curve.at(x[index], moved)) / (2 * step));
        }
    }

    @Override
    public double observed(int index) {
        return y[index];
    }
}
