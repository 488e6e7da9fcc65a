package rigbrief.measurement.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigbrief.catalogue.FrameRate;
import rigbrief.measurement.calibrate.Calibration.ChannelFit;
import rigbrief.measurement.calibrate.Calibration.MisSet;
import rigbrief.measurement.calibrate.Unknown.Sort;
import rigbrief.measurement.fit.Loss;

/** A calibration finds what invented worlds were made of. */
class RecoveryTest {
    private static final int WORLDS = 200;
    private static final double SPOILT = 0.10;

    private static List<Outcome> outcomes;

    /** What one figure was and what was found of it. */
    private record Figure(Sort sort, double truth, Estimate estimate) {
        boolean within() {
            return estimate.low() <= truth && truth <= estimate.high();
        }

        double error() {
            return Math.log(estimate.factor() / truth);
        }
    }

    /** What a title's shape was and what was found of it. */
    private record Shape(ShapeFigure figure, double truth, ShapeFit fit) {
        boolean within() {
            return fit.low() <= truth && truth <= fit.high();
        }
    }

    /** What one world's calibration came to. */
    private record Outcome(List<Figure> figures, List<Shape> shapes, List<MisSet> misSet) {
        boolean names(String machine, Channel channel) {
            return misSet.stream()
                    .anyMatch(it -> it.machine().equals(machine) && it.channel() == channel);
        }
    }

    @BeforeAll
    static void calibrateManyWorlds() {
        InventedWorld.catalogue();
        outcomes =
                LongStream.rangeClosed(1, WORLDS)
                        .parallel()
                        .mapToObj(seed -> outcome(seed, Loss.BISQUARE))
                        .toList();
    }

    private static Outcome outcome(long seed, Loss loss) {
        InventedWorld world = new InventedWorld(seed, SPOILT, 1);
        Terms usual = Terms.usual();
        Terms terms = new Terms(usual.demandSigma(), usual.rateSigma(), usual.pieceSigma(), loss);
        Calibration it =
                new Calibrator(InventedWorld.catalogue(), terms).calibrate(world.measurements());
        List<Figure> figures = new ArrayList<>();
        it.demands()
                .forEach(fit -> add(figures, world, Sort.DEMAND, fit.workload(), fit.channels()));
        it.rates().forEach(fit -> add(figures, world, Sort.RATE, fit.part(), fit.channels()));
        return new Outcome(figures, shapes(world, it), it.misSet());
    }

    private static List<Shape> shapes(InventedWorld world, Calibration it) {
        List<Shape> shapes = new ArrayList<>();
        for (ShapeFit fit : it.shapes()) {
            FrameRate title =
                    (FrameRate) InventedWorld.catalogue().workload(fit.workload()).orElseThrow();
            double truth =
                    fit.figure() == ShapeFigure.SPREAD
                            ? world.spread(title)
                            : world.exponent(title);
            shapes.add(new Shape(fit.figure(), truth, fit));
        }
        return shapes;
    }

    private static void add(
            List<Figure> figures,
            InventedWorld world,
            Sort sort,
            String id,
            List<ChannelFit> channels) {
        for (ChannelFit fit : channels) {
            figures.add(new Figure(sort, world.factor(sort, fit.channel(), id), fit.estimate()));
        }
    }

    @Test
    void demands_lie_within_their_intervals_as_often_as_these_say() {
        assertThat(coverage(Sort.DEMAND)).isBetween(0.90, 0.99);
    }

    @Test
    void rates_lie_within_their_intervals_as_often_as_these_say() {
        assertThat(coverage(Sort.RATE)).isBetween(0.90, 0.99);
    }

    @Test
    void spreads_lie_within_their_intervals_as_often_as_these_say() {
        assertThat(coverage(ShapeFigure.SPREAD)).isBetween(0.90, 0.99);
    }

    @Test
    void memory_exponents_lie_within_their_intervals_as_often_as_these_say() {
        assertThat(coverage(ShapeFigure.MEMORY_EXPONENT)).isBetween(0.90, 0.99);
    }

    private static double coverage(ShapeFigure figure) {
        List<Shape> shapes =
                outcomes.stream()
                        .flatMap(it -> it.shapes().stream())
                        .filter(it -> it.figure() == figure)
                        .toList();
        assertThat(shapes).hasSizeGreaterThan(1_500);
        return shapes.stream().filter(Shape::within).count() / (double) shapes.size();
    }

    private static double coverage(Sort sort) {
        List<Figure> figures =
                outcomes.stream()
                        .flatMap(it -> it.figures().stream())
                        .filter(it -> it.sort() == sort)
                        .toList();
        assertThat(figures).hasSizeGreaterThan(4_000);
        return figures.stream().filter(Figure::within).count() / (double) figures.size();
    }

    @Test
    void the_two_machines_that_are_set_up_wrongly_are_named() {
        long card = count(InventedWorld.SLOW_CARD, Channel.GRAPHICS);
        long processor = count(InventedWorld.SLOW_PROCESSOR, Channel.PROCESSOR);

        assertThat(card).isGreaterThanOrEqualTo(WORLDS * 97 / 100);
        assertThat(processor).isGreaterThanOrEqualTo(WORLDS * 97 / 100);
    }

    private static long count(String machine, Channel channel) {
        return outcomes.stream().filter(it -> it.names(machine, channel)).count();
    }

    @Test
    void hardly_any_other_machine_is_named() {
        long named = outcomes.stream().mapToLong(it -> it.misSet().size()).sum();
        long rightly =
                count(InventedWorld.SLOW_CARD, Channel.GRAPHICS)
                        + count(InventedWorld.SLOW_PROCESSOR, Channel.PROCESSOR);

        // Of 28 machines with two sides each, in 200 worlds.
        assertThat(named - rightly).isLessThan(WORLDS * 28 * 2 / 200);
    }

    @Test
    void with_a_tenth_spoilt_the_robust_loss_beats_plain_least_squares() {
        double robust = 0;
        double plain = 0;
        for (int seed = 1; seed <= 10; seed++) {
            robust += squares(outcomes.get(seed - 1));
            plain += squares(outcome(seed, Loss.SQUARES));
        }

        assertThat(Math.sqrt(robust)).isLessThan(0.7 * Math.sqrt(plain));
    }

    private static double squares(Outcome outcome) {
        return outcome.figures().stream().mapToDouble(it -> it.error() * it.error()).sum();
    }
}
