package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.measurement.calibrate.Unknown.Sort;
import rigbrief.measurement.fit.Equations;
import rigbrief.measurement.fit.Prior;

/** Measured speeds as equations of demands, rates and pieces. */
final class SpeedEquations implements Equations {
    private static final int NONE = -1;

    private final List<Observation> observations;
    private final Map<Unknown, Integer> index = new LinkedHashMap<>();
    private final Set<Unknown> held = new LinkedHashSet<>();

    /** By observation and channel: demand, rate, piece; or none. */
    private final int[][] unknowns;

    SpeedEquations(List<Observation> observations) {
        this.observations = observations;
        findHeld();
        int channels = Channel.values().length;
        this.unknowns = new int[observations.size() * channels][];
        for (int i = 0; i < observations.size(); i++) {
            for (Channel channel : Channel.values()) {
                unknowns[i * channels + channel.ordinal()] = place(observations.get(i), channel);
            }
        }
    }

    private void findHeld() {
        for (Channel channel : Channel.values()) {
            Separation separation = Separation.of(observations, channel);
            for (Observation each : observations) {
                each.part(channel)
                        .filter(separation::alone)
                        .ifPresent(part -> held.add(new Unknown(Sort.RATE, channel, part)));
            }
        }
    }

    private int[] place(Observation each, Channel channel) {
        if (!each.speed().works(channel)) {
            return new int[0];
        }
        int demand = indexOf(new Unknown(Sort.DEMAND, channel, each.measured().workload()));
        Optional<String> part = each.part(channel);
        if (part.isEmpty()) {
            return new int[] {demand, NONE, NONE};
        }
        Channel side = channel.ofCard() ? Channel.GRAPHICS : channel;
        return new int[] {
            demand,
            indexOf(new Unknown(Sort.RATE, channel, part.get())),
            indexOf(new Unknown(Sort.PIECE, side, each.measured().machine()))
        };
    }

    private int indexOf(Unknown unknown) {
        return held.contains(unknown) ? NONE : index.computeIfAbsent(unknown, any -> index.size());
    }

    /** What is to be found, in the order of the parameters. */
    List<Unknown> unknowns() {
        return new ArrayList<>(index.keySet());
    }

    /** Rates that can't be told from demands. */
    Set<Unknown> held() {
        return held;
    }

    Prior[] priors(Terms terms) {
        return index.keySet().stream().map(terms::prior).toArray(Prior[]::new);
    }

    @Override
    public int count() {
        return observations.size();
    }

    @Override
    public int parameters() {
        return index.size();
    }

    @Override
    public double observed(int observation) {
        return observations.get(observation).log();
    }

    @Override
    public void evaluate(int observation, double[] at, Line into) {
        Speed speed = observations.get(observation).speed();
        double[] loads = loads(observation, at);
        double value = speed.log(loads[0], loads[1], loads[2]);
        into.begin(value);
        for (Channel channel : Channel.values()) {
            int[] three = of(observation, channel);
            if (three.length > 0) {
                double slope = Sensitivity.slope(speed, loads, channel, value);
                for (Sort sort : Sort.values()) {
                    int parameter = three[sort.ordinal()];
                    if (parameter != NONE) {
                        into.slope(parameter, sort.sign() * slope);
                    }
                }
            }
        }
    }

    /** The logarithm of another speed of the same measurement's machine and workload. */
    double log(int observation, Speed speed, double[] at) {
        double[] loads = loads(observation, at);
        return speed.log(loads[0], loads[1], loads[2]);
    }

    private double[] loads(int observation, double[] at) {
        double[] loads = new double[Channel.values().length];
        for (Channel channel : Channel.values()) {
            int[] three = of(observation, channel);
            for (Sort sort : Sort.values()) {
                if (three.length > 0 && three[sort.ordinal()] != NONE) {
                    loads[channel.ordinal()] += sort.sign() * at[three[sort.ordinal()]];
                }
            }
        }
        return loads;
    }

    private int[] of(int observation, Channel channel) {
        return unknowns[observation * Channel.values().length + channel.ordinal()];
    }
}
