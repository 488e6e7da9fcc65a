package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import rigbrief.catalogue.Catalogue;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.fit.FitResult;
import rigbrief.measurement.fit.RobustFit;
import rigbrief.measurement.fit.Scatter;

/**
 * Fits demands of workloads and rates of parts to measurements.
 *
 * <p>Formula: logarithm of the measured speed = that of the speed model with each demand, each rate
 * and each machine's own piece of a part scaled by a factor of its own; the factors' logarithms
 * have normal priors around 0, those of pieces long tails; see {@link RobustFit}.
 *
 * <p>Common practice: intervals are 95 %, by Student's distribution at the degrees of freedom the
 * fit leaves.
 */
public final class Calibrator {
    private static final double TOLERANCE = 1e-4;

    /** Common practice: runs of one measurement lie within some percent of each other. */
    private static final Scatter SCATTER = new Scatter(0.03, 10);

    private static final double TWO_SIDED = 0.975;

    private final Catalogue catalogue;
    private final Terms terms;

    /**
     * A calibrator.
     *
     * @param catalogue whose figures are the prior
     * @param terms how much they are believed
     */
    public Calibrator(Catalogue catalogue, Terms terms) {
        this.catalogue = catalogue;
        this.terms = terms;
    }

    /**
     * Whether the machine can do what was measured, by the catalogue; others are left aside.
     *
     * @param measured a measurement of a workload of the catalogue
     */
    public boolean possible(Measurement measured) {
        return Observation.of(measured, catalogue).speed().possible();
    }

    /**
     * Fits.
     *
     * @param measurements of machines whose parts are named, of workloads of the catalogue
     * @return what was found
     * @throws IllegalArgumentException when there is nothing that could be fitted
     */
    public Calibration calibrate(List<Measurement> measurements) {
        List<Observation> observations = new ArrayList<>();
        List<Measurement> impossible = new ArrayList<>();
        for (Measurement each : measurements) {
            Observation observation = Observation.of(each, catalogue);
            if (observation.speed().possible()) {
                observations.add(observation);
            } else {
                impossible.add(each);
            }
        }
        SpeedEquations equations = new SpeedEquations(observations);
        FitResult fit =
                new RobustFit(equations, equations.priors(terms), TOLERANCE, SCATTER)
                        .fit(terms.loss());
        double quantile = new TDistribution(fit.freedom()).inverseCumulativeProbability(TWO_SIDED);
        return new Findings(catalogue, terms, observations, equations, fit, quantile)
                .calibration(impossible);
    }
}
