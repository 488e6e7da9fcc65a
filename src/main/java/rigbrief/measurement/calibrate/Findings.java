package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.Workload;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.calibrate.Calibration.ChannelFit;
import rigbrief.measurement.calibrate.Calibration.DemandFit;
import rigbrief.measurement.calibrate.Calibration.Dominant;
import rigbrief.measurement.calibrate.Calibration.Lows;
import rigbrief.measurement.calibrate.Calibration.MisSet;
import rigbrief.measurement.calibrate.Calibration.Outlier;
import rigbrief.measurement.calibrate.Calibration.RateFit;
import rigbrief.measurement.calibrate.Unknown.Sort;
import rigbrief.measurement.fit.FitResult;
import rigbrief.part.Kind;
import rigbrief.part.Part;

/** Reads findings off a fit: figures, machines, measurements. */
final class Findings {
    /** A piece this far from its model is no piece but a setting. Common practice. */
    private static final double MIS_SET_LOG = 0.10;

    /** How many standard errors it must be away. */
    private static final double MIS_SET_ERRORS = 3;

    /** A residual this many scales out disagrees. Common practice. */
    private static final double OUTLYING = 3.5;

    /**
     * Of its own prediction. Huber, "Robust Statistics", 1981, 7.2, warns from a half on; a machine
     * whose own pieces are looked for as well comes near that with any dozen of measurements, so
     * three quarters are common practice here.
     */
    private static final double HIGH_LEVERAGE = 0.75;

    /** Cook and Weisberg, 1982: a distance above 1 deserves attention. */
    private static final double HIGH_DISTANCE = 1;

    /** Weight of all measurements together against those of one workload, in measurements. */
    private static final double POOLED = 4;

    private final Catalogue catalogue;
    private final Terms terms;
    private final List<Observation> observations;
    private final SpeedEquations equations;
    private final FitResult fit;
    private final double quantile;
    private final Residuals residuals;
    private final ShapeFinder shapes;
    private final Map<Unknown, Integer> index = new LinkedHashMap<>();
    private final List<MisSet> misSet;

    Findings(
            Catalogue catalogue,
            Terms terms,
            List<Observation> observations,
            SpeedEquations equations,
            FitResult fit,
            double quantile) {
        this.catalogue = catalogue;
        this.terms = terms;
        this.observations = observations;
        this.equations = equations;
        this.fit = fit;
        this.quantile = quantile;
        this.residuals = new Residuals(observations, equations, fit);
        this.shapes = new ShapeFinder(catalogue, observations, equations, fit, quantile);
        List<Unknown> unknowns = equations.unknowns();
        for (int i = 0; i < unknowns.size(); i++) {
            index.put(unknowns.get(i), i);
        }
        this.misSet = misSet();
    }

    Calibration calibration(List<Measurement> impossible) {
        List<DemandFit> demands = demands();
        List<RateFit> rates = rates();
        List<ShapeFit> shaped = shapes.shapes();
        return new Calibration(
                catalogue,
                terms,
                observations.size(),
                (int) observations.stream().map(it -> it.measured().machine()).distinct().count(),
                fit.spread(),
                fit.effectiveParameters(),
                residuals.errors(i -> true),
                demands,
                rates,
                shaped,
                lows(),
                misSet,
                outliers(),
                dominant(),
                impossible,
                rates.stream().filter(it -> it.machines() == 1).map(RateFit::part).toList(),
                Refitted.workloads(catalogue, demands, shaped),
                Refitted.rates(catalogue, rates));
    }

    private List<DemandFit> demands() {
        double pooled = squareOf(this::counts);
        List<DemandFit> demands = new ArrayList<>();
        for (Workload workload : catalogue.workloads()) {
            int count = count(workload.id());
            if (count > 0) {
                demands.add(
                        new DemandFit(
                                workload.id(),
                                count,
                                residuals.errors(i -> of(i, workload.id())),
                                sigma(workload.id(), pooled),
                                channels(Sort.DEMAND, workload.id())));
            }
        }
        return demands;
    }

    private int count(String workload) {
        return (int)
                observations.stream()
                        .filter(it -> it.measured().workload().equals(workload))
                        .count();
    }

    private boolean of(int observation, String workload) {
        return observations.get(observation).measured().workload().equals(workload);
    }

    /** Machines that are set up wrongly say nothing of what to expect from others. */
    private boolean counts(int observation) {
        String machine = observations.get(observation).measured().machine();
        return misSet.stream().noneMatch(it -> it.machine().equals(machine));
    }

    /**
     * Spread on a machine not measured, from each machine's residuals had it been left out; few
     * measurements lean on those of all workloads.
     */
    private double sigma(String workload, double pooled) {
        double weight = weightOf(i -> counts(i) && of(i, workload));
        double own = weight > 0 ? squareOf(i -> counts(i) && of(i, workload)) : 0;
        return Math.sqrt((weight * own + POOLED * pooled) / (weight + POOLED));
    }

    private double weightOf(java.util.function.IntPredicate which) {
        double weight = 0;
        for (int i = 0; i < observations.size(); i++) {
            weight += which.test(i) ? fit.weight(i) : 0;
        }
        return weight;
    }

    private double squareOf(java.util.function.IntPredicate which) {
        double squares = 0;
        for (int i = 0; i < observations.size(); i++) {
            double residual = residuals.newMachine(i);
            squares += which.test(i) ? fit.weight(i) * residual * residual : 0;
        }
        return squares / Math.max(1, weightOf(which));
    }

    private List<RateFit> rates() {
        Map<String, Set<String>> machinesByPart = new LinkedHashMap<>();
        for (Observation each : observations) {
            String machine = each.measured().machine();
            machinesByPart
                    .computeIfAbsent(each.processor(), any -> new LinkedHashSet<>())
                    .add(machine);
            each.card()
                    .ifPresent(
                            card ->
                                    machinesByPart
                                            .computeIfAbsent(card, any -> new LinkedHashSet<>())
                                            .add(machine));
            if (each.speed().works(Channel.DRIVE)) {
                each.part(Channel.DRIVE)
                        .ifPresent(
                                drive ->
                                        machinesByPart
                                                .computeIfAbsent(
                                                        drive, any -> new LinkedHashSet<>())
                                                .add(machine));
            }
        }
        List<RateFit> rates = new ArrayList<>();
        for (Kind kind : List.of(Kind.PROCESSOR, Kind.GRAPHICS, Kind.DRIVE)) {
            for (Part part : catalogue.parts(kind)) {
                Set<String> machines = machinesByPart.get(part.id());
                if (machines != null) {
                    rates.add(
                            new RateFit(
                                    part.id(),
                                    kind,
                                    machines.size(),
                                    channels(Sort.RATE, part.id())));
                }
            }
        }
        return rates;
    }

    private List<ChannelFit> channels(Sort sort, String id) {
        List<ChannelFit> channels = new ArrayList<>();
        for (Channel channel : Channel.values()) {
            Unknown unknown = new Unknown(sort, channel, id);
            Integer at = index.get(unknown);
            if (at != null) {
                channels.add(new ChannelFit(channel, standing(unknown, at), estimate(at)));
            } else if (equations.held().contains(unknown)) {
                double sigma = terms.prior(unknown).sigma();
                channels.add(
                        new ChannelFit(channel, Standing.HELD, Estimate.ofLog(0, sigma, quantile)));
            }
        }
        return channels;
    }

    private Standing standing(Unknown unknown, int at) {
        return Standing.of(fit.error(at), terms.prior(unknown).sigma());
    }

    private Estimate estimate(int at) {
        return Estimate.ofLog(fit.parameter(at), fit.error(at), quantile);
    }

    private List<MisSet> misSet() {
        List<MisSet> found = new ArrayList<>();
        index.forEach(
                (unknown, at) -> {
                    double size = Math.abs(fit.parameter(at));
                    if (unknown.sort() == Sort.PIECE
                            && size >= MIS_SET_LOG
                            && size >= MIS_SET_ERRORS * fit.error(at)) {
                        found.add(new MisSet(unknown.id(), unknown.channel(), estimate(at)));
                    }
                });
        return found;
    }

    private List<Outlier> outliers() {
        List<Outlier> found = new ArrayList<>();
        for (int i : ordered(Comparator.comparingDouble(i -> -Math.abs(fit.residual(i))))) {
            if (Math.abs(fit.residual(i)) >= OUTLYING * fit.scale()) {
                Observation each = observations.get(i);
                found.add(
                        new Outlier(
                                each.measured(),
                                Math.exp(each.log()),
                                Math.exp(each.log() - fit.residual(i))));
            }
        }
        return found;
    }

    private List<Dominant> dominant() {
        List<Dominant> found = new ArrayList<>();
        for (int i : ordered(Comparator.comparingDouble(i -> -fit.leverage(i)))) {
            double leverage = fit.leverage(i);
            double distance = fit.cookDistance(i);
            if (leverage >= HIGH_LEVERAGE || distance >= HIGH_DISTANCE) {
                found.add(new Dominant(observations.get(i).measured(), leverage, distance));
            }
        }
        return found;
    }

    private List<Integer> ordered(Comparator<Integer> order) {
        Integer[] all = new Integer[observations.size()];
        Arrays.setAll(all, i -> i);
        Arrays.sort(all, order);
        return List.of(all);
    }

    private Lows lows() {
        double[] at = new double[index.size()];
        Arrays.setAll(at, fit::parameter);
        List<Double> ratios = new ArrayList<>();
        for (int i = 0; i < observations.size(); i++) {
            Measurement measured = observations.get(i).measured();
            if (observations.get(i).hasBothRates()) {
                FrameRate title = (FrameRate) observations.get(i).workload();
                FrameSpeed speed = (FrameSpeed) observations.get(i).speed();
                double[] loads = equations.loads(i, at);
                double expected = speed.log(loads) + speed.logLowShare(shapes.spread(title), loads);
                ratios.add(Math.log(measured.lowFps().getAsDouble()) - expected);
            }
        }
        ratios.sort(null);
        double median = ratios.isEmpty() ? Double.NaN : ratios.get(ratios.size() / 2);
        return new Lows(ratios.size(), Math.exp(median));
    }
}
