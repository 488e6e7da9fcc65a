package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.catalogue.FrameRate;
import rigbrief.measurement.fit.Equations;
import rigbrief.measurement.fit.FitResult;
import rigbrief.measurement.fit.Prior;

/**
 * Measured 1 % lows over averages as equations of each title's spread of frame times.
 *
 * <p>Formula: ln(low / average) = that of the scene mix at the frame times that the fitted demands
 * and rates give; unknown is the spread, in which the logarithm of a low is nearly straight. The
 * ratio does not hang on how fast the machine was that day, and the average not on the spread
 * unless a cap holds it.
 */
final class SpreadEquations implements Equations {
    private static final double STEP = 1e-5;

    /**
     * A low that hangs on the spread by less, as under a cap, says nothing of it; without a cap or
     * other scenes the slope is -2.3, the normal distribution's first percentile.
     */
    private static final double LEAST_SLOPE = 0.5;

    /**
     * A low must tell of much narrower spreads as well, or the fit could get caught under a cap.
     */
    private static final double NARROW = 0.4;

    private final Map<FrameRate, Integer> index = new LinkedHashMap<>();
    private final List<Row> rows = new ArrayList<>();

    private record Row(
            int observation, FrameSpeed speed, double[] loads, int parameter, double log) {}

    /**
     * The equations of all measurements that have average and low, and whose low tells of the
     * spread.
     *
     * @param at the parameters of the fitted speeds
     */
    SpreadEquations(List<Observation> observations, SpeedEquations speeds, double[] at) {
        for (int i = 0; i < observations.size(); i++) {
            Observation each = observations.get(i);
            if (each.hasBothRates()) {
                add(i, each, (FrameSpeed) each.speed(), speeds.loads(i, at));
            }
        }
    }

    private void add(int i, Observation each, FrameSpeed speed, double[] loads) {
        FrameRate title = (FrameRate) each.workload();
        double listed = title.shape().spread();
        if (tells(speed, listed, loads) && tells(speed, NARROW * listed, loads)) {
            double low = each.measured().lowFps().getAsDouble();
            double average = each.measured().averageFps().getAsDouble();
            int parameter = index.computeIfAbsent(title, any -> index.size());
            rows.add(new Row(i, speed, loads, parameter, Math.log(low / average)));
        }
    }

    private static boolean tells(FrameSpeed speed, double spread, double[] loads) {
        double base = speed.logLowShare(spread, loads);
        double slope = (speed.logLowShare(spread + STEP, loads) - base) / STEP;
        return Math.abs(slope) >= LEAST_SLOPE;
    }

    /** The titles, in the order of the parameters. */
    List<FrameRate> titles() {
        return new ArrayList<>(index.keySet());
    }

    /** Number of a title's equations. */
    int count(int parameter) {
        return (int) rows.stream().filter(row -> row.parameter() == parameter).count();
    }

    /**
     * What a found spread moves by with each shared parameter of the speeds, which were held to be
     * sure while it was fitted.
     *
     * @param found the fitted spreads
     * @return by parameter of the speeds
     */
    double[] slopes(int parameter, FitResult found, SpeedEquations speeds) {
        double[] slopes = new double[speeds.parameters()];
        double curvature = Math.pow(found.scale(), 2) * priors()[parameter].precision();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (row.parameter() == parameter) {
                double spread = found.parameter(parameter);
                double base = logShare(row, spread);
                double own = (logShare(row, spread + STEP) - base) / STEP;
                double[] byLoad = new double[row.loads().length];
                for (int c = 0; c < byLoad.length; c++) {
                    double[] beside = row.loads().clone();
                    beside[c] += STEP;
                    double moved = row.speed().logLowShare(Math.max(0, spread), beside);
                    byLoad[c] = (moved - base) / STEP;
                }
                double weight = found.weight(i) * own;
                curvature += weight * own;
                speeds.addSharedSlopes(row.observation(), byLoad, -weight, slopes);
            }
        }
        for (int j = 0; j < slopes.length; j++) {
            slopes[j] /= curvature;
        }
        return slopes;
    }

    Prior[] priors() {
        return index.keySet().stream()
                .map(title -> Prior.normal(title.shape().spread(), Terms.spreadSigma(title)))
                .toArray(Prior[]::new);
    }

    @Override
    public int count() {
        return rows.size();
    }

    @Override
    public int parameters() {
        return index.size();
    }

    @Override
    public double observed(int observation) {
        return rows.get(observation).log();
    }

    @Override
    public void evaluate(int observation, double[] at, Line into) {
        Row row = rows.get(observation);
        double spread = at[row.parameter()];
        double value = logShare(row, spread);
        into.begin(value);
        into.slope(row.parameter(), (logShare(row, spread + STEP) - value) / STEP);
    }

    private static double logShare(Row row, double spread) {
        return row.speed().logLowShare(Math.max(0, spread), row.loads());
    }
}
