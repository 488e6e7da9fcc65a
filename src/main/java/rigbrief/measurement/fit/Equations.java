package rigbrief.measurement.fit;

/**
 * What was observed, and what a model says of it: one equation per observation.
 *
 * <p>An equation may depend on few of the parameters; only those are named, so that many
 * observations of many parameters stay small.
 */
public interface Equations {
    /** The group of a parameter that any equation may name. */
    int SHARED = -1;

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

    /**
     * Which parameters belong to a part of the equations alone, as those of one machine do.
     *
     * <p>An equation may name shared parameters and those of one group, never of two. Groups of few
     * parameters make a large fit quick; the answer does not depend on them.
     *
     * @return by parameter: a number from 0, or {@link #SHARED}; without groups all are shared
     */
    default int[] groups() {
        int[] groups = new int[parameters()];
        java.util.Arrays.fill(groups, SHARED);
        return groups;
    }

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

        /** The model's value. */
        public double value() {
            return value;
        }

        /** Number of slopes named. */
        public int size() {
            return size;
        }

        /** Parameter of a slope. */
        public int parameter(int i) {
            return parameters[i];
        }

        /** A slope. */
        public double slope(int i) {
            return slopes[i];
        }
    }
}
