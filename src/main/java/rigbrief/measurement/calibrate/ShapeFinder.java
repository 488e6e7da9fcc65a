package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.Workload;
import rigbrief.measurement.fit.FitResult;
import rigbrief.measurement.fit.Loss;
import rigbrief.measurement.fit.RobustFit;
import rigbrief.measurement.fit.Scatter;

/** Reads the shapes of titles off a fit of speeds, and fits the spreads that lows show. */
final class ShapeFinder {
    /** Common practice: lows repeat about this well between runs, where averages are alike. */
    private static final Scatter SCATTER = new Scatter(0.05, 10);

    private static final double TOLERANCE = 1e-4;
    private static final double MOST_EXPONENT = 2;
    private static final double MOST_SPREAD = 0.5;
    private static final double TWO_SIDED = 0.975;

    /** By title: what was found of its spread. */
    private final Map<String, ShapeFit> spreads = new LinkedHashMap<>();

    private final Catalogue catalogue;
    private final List<Observation> observations;
    private final SpeedEquations equations;
    private final FitResult fit;
    private final double quantile;

    ShapeFinder(
            Catalogue catalogue,
            List<Observation> observations,
            SpeedEquations equations,
            FitResult fit,
            double quantile) {
        this.catalogue = catalogue;
        this.observations = observations;
        this.equations = equations;
        this.fit = fit;
        this.quantile = quantile;
        fitSpreads();
    }

    private void fitSpreads() {
        double[] at = new double[equations.parameters()];
        for (int j = 0; j < at.length; j++) {
            at[j] = fit.parameter(j);
        }
        SpreadEquations lows = new SpreadEquations(observations, equations, at);
        if (lows.count() == 0) {
            return;
        }
        FitResult found = new RobustFit(lows, lows.priors(), TOLERANCE, SCATTER).fit(Loss.BISQUARE);
        double own = new TDistribution(found.freedom()).inverseCumulativeProbability(TWO_SIDED);
        List<FrameRate> titles = lows.titles();
        for (int j = 0; j < titles.size(); j++) {
            double error = Math.hypot(found.error(j), carried(lows.slopes(j, found, equations)));
            double half = own * error;
            double spread = found.parameter(j);
            spreads.put(
                    titles.get(j).id(),
                    new ShapeFit(
                            titles.get(j).id(),
                            ShapeFigure.SPREAD,
                            Standing.of(error, Terms.spreadSigma(titles.get(j))),
                            lows.count(j),
                            titles.get(j).shape().spread(),
                            Math.max(0, Math.min(MOST_SPREAD, spread)),
                            spread - half,
                            spread + half));
        }
    }

    /** Standard error that the uncertainty of the speeds' figures carries over. */
    private double carried(double[] slopes) {
        double variance = 0;
        for (int i = 0; i < slopes.length; i++) {
            for (int j = 0; j < slopes.length && slopes[i] != 0; j++) {
                if (slopes[j] != 0) {
                    variance += slopes[i] * slopes[j] * fit.covariance(i, j);
                }
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }

    /** The spread of frame times of a title, as it is now held to be. */
    double spread(FrameRate title) {
        ShapeFit found = spreads.get(title.id());
        return found == null ? title.shape().spread() : found.applied();
    }

    /** Shapes of the titles measured, in the catalogue's order. */
    List<ShapeFit> shapes() {
        List<ShapeFit> shapes = new ArrayList<>();
        for (Workload workload : catalogue.workloads()) {
            if (workload instanceof FrameRate title) {
                exponent(title).ifPresent(shapes::add);
                Optional.ofNullable(spreads.get(title.id())).ifPresent(shapes::add);
            }
        }
        return shapes;
    }

    private Optional<ShapeFit> exponent(FrameRate title) {
        Unknown unknown = Unknown.memoryExponent(title.id());
        double listed = title.work().memoryExponent();
        int at = equations.unknowns().indexOf(unknown);
        if (at < 0 && !equations.held().contains(unknown)) {
            return Optional.empty();
        }
        double change = at < 0 ? 0 : fit.parameter(at);
        double error = at < 0 ? Terms.EXPONENT_SIGMA : fit.error(at);
        return Optional.of(
                new ShapeFit(
                        title.id(),
                        ShapeFigure.MEMORY_EXPONENT,
                        at < 0 ? Standing.HELD : Standing.of(error, Terms.EXPONENT_SIGMA),
                        (int)
                                observations.stream()
                                        .filter(it -> it.workload().equals(title))
                                        .count(),
                        listed,
                        Math.max(0, Math.min(MOST_EXPONENT, listed + change)),
                        listed + change - quantile * error,
                        listed + change + quantile * error));
    }
}
