package rigbrief.measurement.fit;

/**
 * What was observed, and what a model says of it: one equation per observation.
 *
 * <p>An equation may depend on few of the parameters; only those are named, so that many
 * observations of many parameters stay small.
 */
public interface Equations {
    /** Number of observations. */
    int count();

    /** Number of parameters. */
    int parameters();

    /**
     * Works out one equation.
     *
     * @param index which, from 0
     * @param at the parameters
     * @param into takes what the model says and its slopes
     */
    void evaluate(int index, double[] at, Line into);

    /**
     * What was observed.
     *
     * @param index which, from 0
     * @return the observation, in the unit of the model's value
     */
    double observed(int index);

    /** A model's value at a point, with its slopes. */
    final class Line {
        private int[] parameters = new int[16];
        private double[] slopes = new double[16];
        private int size;
        private double value;

        /** Begins anew with the model's value. */
        public void begin(double modelled) {
            value = modelled;
            size = 0;
        }

        /** Adds how the value moves with a parameter; a parameter named twice counts twice. */
        public void slope(int parameter, double slope) {
            if (size == slopes.length) {
                parameters = java.util.Arrays.copyOf(parameters, 2 * size);
                slopes = java.util.Arrays.copyOf(slopes, 2 * size);
            }
            parameters[size] = parameter;
            slopes[size] = slope;
            size++;
        }

        double value() {
            return value;
        }

        int size() {
            return size;
        }

        int parameter(int i) {
            return parameters[i];
        }

        double slope(int i) {
            return slopes[i];
        }
    }
}
