package rigbrief.measurement.fit;

/**
 * How much a residual weighs, by its size in units of the scale.
 *
 * <p>Source: Huber, "Robust estimation of a location parameter", Annals of Mathematical Statistics
 * 35, 1964; Beaton and Tukey, Technometrics 16, 1974. The constants give 95 % of the efficiency of
 * least squares where errors are normal (Holland and Welsch, 1977; from memory).
 */
public enum Loss {
    /** Every residual by its square: plain least squares. */
    SQUARES {
        @Override
        public double weight(double u) {
            return 1;
        }

        @Override
        double influenceSlope(double u) {
            return 1;
        }
    },
    /** By its square up to 1.345, by its size beyond. */
    HUBER {
        @Override
        public double weight(double u) {
            double size = Math.abs(u);
            return size <= HUBER_BEND ? 1 : HUBER_BEND / size;
        }

        @Override
        double influenceSlope(double u) {
            return Math.abs(u) <= HUBER_BEND ? 1 : 0;
        }
    },
    /** Ever less, and beyond 4.685 not at all. */
    BISQUARE {
        @Override
        public double weight(double u) {
            double share = u / BISQUARE_END;
            double rest = 1 - share * share;
            return rest > 0 ? rest * rest : 0;
        }

        @Override
        double influenceSlope(double u) {
            double square = u / BISQUARE_END * (u / BISQUARE_END);
            return square < 1 ? (1 - square) * (1 - 5 * square) : 0;
        }
    };

    private static final double HUBER_BEND = 1.345;
    private static final double BISQUARE_END = 4.685;

    /**
     * Gives the weight of a residual.
     *
     * @param u residual over scale
     * @return 0 to 1
     */
    public abstract double weight(double u);

    /** How the influence u x weight(u) moves with u. */
    abstract double influenceSlope(double u);
}
