package rigbrief.measurement.calibrate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rigbrief.measurement.calibrate.Unknown.Sort;
import rigbrief.measurement.fit.Equations;
import rigbrief.measurement.fit.Prior;

/** Measured speeds as equations of demands, rates, pieces and memory exponents. */
final class SpeedEquations implements Equations {
    private final List<Observation> observations;
    private final Map<Unknown, Integer> index = new LinkedHashMap<>();
    private final Set<Unknown> held = new LinkedHashSet<>();

    /** By observation and channel: what moves its load. */
    private final Mover[][] movers;

    /** By parameter: the machine whose piece it is, or SHARED. */
    private final int[] groups;

    /**
     * Something that moves a load.
     *
     * @param parameter which unknown
     * @param weight change of the load's logarithm for each 1 of it
     */
    private record Mover(int parameter, double weight) {}

    SpeedEquations(List<Observation> observations) {
        this.observations = observations;
        findHeld();
        int channels = Channel.values().length;
        this.movers = new Mover[observations.size() * channels][];
        for (int i = 0; i < observations.size(); i++) {
            for (Channel channel : Channel.values()) {
                movers[i * channels + channel.ordinal()] =
                        movers(observations.get(i), channel).toArray(new Mover[0]);
            }
        }
        this.groups = machines();
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
        held.addAll(MemoryRates.of(observations).held());
    }

    private List<Mover> movers(Observation each, Channel channel) {
        List<Mover> all = new ArrayList<>();
        if (!each.speed().works(channel)) {
            return all;
        }
        String workload = each.measured().workload();
        add(all, new Unknown(Sort.DEMAND, channel, workload), 1);
        Optional<String> part = each.part(channel);
        if (part.isPresent()) {
            add(all, new Unknown(Sort.RATE, channel, part.get()), 1);
            channel.piece()
                    .ifPresent(
                            side -> {
                                String machine = each.measured().machine();
                                add(all, new Unknown(Sort.PIECE, side, machine), 1);
                            });
        }
        OptionalDouble memory = MemoryRates.logShortfall(each);
        if (channel == Channel.PROCESSOR && memory.isPresent()) {
            add(all, Unknown.memoryExponent(workload), memory.getAsDouble());
        }
        return all;
    }

    private void add(List<Mover> to, Unknown unknown, double weight) {
        if (!held.contains(unknown)) {
            int parameter = index.computeIfAbsent(unknown, any -> index.size());
            to.add(new Mover(parameter, unknown.sort().sign() * weight));
        }
    }

    private int[] machines() {
        int[] groupOf = new int[index.size()];
        Map<String, Integer> machines = new LinkedHashMap<>();
        index.forEach(
                (unknown, at) ->
                        groupOf[at] =
                                unknown.sort() == Sort.PIECE
                                        ? machines.computeIfAbsent(
                                                unknown.id(), any -> machines.size())
                                        : SHARED);
        return groupOf;
    }

    /** What is to be found, in the order of the parameters. */
    List<Unknown> unknowns() {
        return new ArrayList<>(index.keySet());
    }

    /** What can't be told from other figures. */
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
    public int[] groups() {
        return groups.clone();
    }

    @Override
    public double observed(int observation) {
        return observations.get(observation).log();
    }

    @Override
    public void evaluate(int observation, double[] at, Line into) {
        Speed speed = observations.get(observation).speed();
        double[] loads = loads(observation, at);
        double value = speed.log(loads);
        into.begin(value);
        for (Channel channel : Channel.values()) {
            Mover[] all = of(observation, channel);
            if (all.length > 0) {
                double slope = Sensitivity.slope(speed, loads, channel, value);
                for (Mover mover : all) {
                    into.slope(mover.parameter(), mover.weight() * slope);
                }
            }
        }
    }

    /**
     * Adds what a figure of an observation moves by with each shared parameter, given what it moves
     * by with each load; pieces of single machines are left out.
     */
    void addSharedSlopes(int observation, double[] byLoad, double factor, double[] into) {
        for (Channel channel : Channel.values()) {
            for (Mover mover : of(observation, channel)) {
                if (groups[mover.parameter()] == SHARED) {
                    into[mover.parameter()] += factor * byLoad[channel.ordinal()] * mover.weight();
                }
            }
        }
    }

    /** Logarithms of an observation's loads over the catalogue's, by channel. */
    double[] loads(int observation, double[] at) {
        double[] loads = new double[Channel.values().length];
        for (Channel channel : Channel.values()) {
            loads[channel.ordinal()] =
                    Arrays.stream(of(observation, channel))
                            .mapToDouble(mover -> mover.weight() * at[mover.parameter()])
                            .sum();
        }
        return loads;
    }

    private Mover[] of(int observation, Channel channel) {
        return movers[observation * Channel.values().length + channel.ordinal()];
    }
}
