package rigbrief.measurement.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.Rig;
import rigbrief.measurement.calibrate.Calibration.ChannelFit;
import rigbrief.measurement.calibrate.Calibration.Outlier;
import rigbrief.measurement.calibrate.Calibration.RateFit;
import rigbrief.measurement.calibrate.Unknown.Sort;
import rigbrief.measurement.fit.FitResult;
import rigbrief.measurement.fit.Loss;
import rigbrief.measurement.fit.RobustFit;
import rigbrief.measurement.fit.Scatter;
import rigbrief.part.Graphics;
import rigbrief.part.Kind;
import rigbrief.part.Resolution;

class CalibratorTest {
    private static final String DEMANDING = "harbour-of-glass";
    private static final Resolution SMALL = new Resolution(1280, 720);

    private final Catalogue catalogue = InventedWorld.catalogue();
    private final List<Measurement> world = new InventedWorld(11, 0, 1).measurements();

    private Calibration calibrate(List<Measurement> measured) {
        return new Calibrator(catalogue, Terms.usual()).calibrate(measured);
    }

    private List<Measurement> of(String workload, List<String> machines) {
        return world.stream()
                .filter(it -> it.workload().equals(workload) && machines.contains(it.machine()))
                .toList();
    }

    private static ChannelFit channel(List<ChannelFit> channels, Channel channel) {
        return channels.stream().filter(it -> it.channel() == channel).findFirst().orElseThrow();
    }

    private static Measurement times(Measurement it, double factor) {
        return new Measurement(
                it.file(),
                it.line(),
                it.machine(),
                it.rig(),
                it.workload(),
                it.settings(),
                it.resolution(),
                scaled(it.averageFps(), factor),
                scaled(it.lowFps(), factor),
                scaled(it.seconds(), 1 / factor));
    }

    private static OptionalDouble scaled(OptionalDouble amount, double factor) {
        return amount.isPresent()
                ? OptionalDouble.of(amount.getAsDouble() * factor)
                : OptionalDouble.empty();
    }

    @Test
    void one_title_on_one_card_leaves_the_rate_as_it_was_and_moves_the_demand() {
        // bench-01 has the smallest card, which decides alone what this title does on it.
        Measurement listed = asListed(of(DEMANDING, List.of("bench-01")).get(0));

        Calibration it = calibrate(List.of(times(listed, 1 / 1.2)));

        ChannelFit rate = channel(card(it).channels(), Channel.GRAPHICS);
        ChannelFit demand = channel(it.demands().get(0).channels(), Channel.GRAPHICS);
        assertThat(rate.standing()).isEqualTo(Standing.HELD);
        assertThat(rate.applied()).isEqualTo(1);
        assertThat(demand.standing()).isEqualTo(Standing.FITTED);
        assertThat(demand.estimate().factor()).isBetween(1.10, 1.20);
        assertThat(it.partRates()).isEmpty();
    }

    private static RateFit card(Calibration it) {
        return it.rates().stream()
                .filter(rate -> rate.kind() == Kind.GRAPHICS)
                .findFirst()
                .orElseThrow();
    }

    /** The same measurement as the catalogue predicts it. */
    private Measurement asListed(Measurement it) {
        FrameRate title = (FrameRate) catalogue.workload(it.workload()).orElseThrow();
        double fps = Math.exp(FrameSpeed.of(title, it, false).log(0, 0, 0, 0));
        return new Measurement(
                it.file(),
                it.line(),
                it.machine(),
                it.rig(),
                it.workload(),
                it.settings(),
                it.resolution(),
                OptionalDouble.of(fps),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    @Test
    void one_title_on_two_cards_tells_their_rates_apart() {
        List<Measurement> two = of(DEMANDING, List.of("bench-01", "bench-05"));

        Calibration it = calibrate(two);

        assertThat(it.rates())
                .filteredOn(rate -> rate.kind() == Kind.GRAPHICS)
                .allSatisfy(
                        rate ->
                                assertThat(channel(rate.channels(), Channel.GRAPHICS).standing())
                                        .isNotEqualTo(Standing.HELD));
    }

    /** One measurement leaves nothing over by which to tell how much measurements scatter. */
    @Test
    void a_single_measurement_is_not_taken_for_exact() {
        Measurement listed = asListed(of(DEMANDING, List.of("bench-01")).get(0));

        Calibration it = calibrate(List.of(listed));

        Estimate demand = channel(it.demands().get(0).channels(), Channel.GRAPHICS).estimate();
        assertThat(it.spread()).isCloseTo(0.03, within(0.005));
        assertThat(demand.high() / demand.low()).isGreaterThan(1.15);
    }

    @Test
    void what_no_measurement_leans_on_is_kept() {
        List<Measurement> large =
                of(DEMANDING, List.of("bench-01", "bench-05")).stream()
                        .map(it -> asListed(inPicture(it, new Resolution(3840, 2160))))
                        .toList();

        Calibration it = calibrate(large);

        ChannelFit processor = channel(it.demands().get(0).channels(), Channel.PROCESSOR);
        assertThat(processor.standing()).isEqualTo(Standing.KEPT);
        assertThat(((FrameRate) it.workloads().get(0)).work().serial())
                .isEqualTo(
                        ((FrameRate) catalogue.workload(DEMANDING).orElseThrow()).work().serial());
    }

    private static Measurement inPicture(Measurement it, Resolution picture) {
        return new Measurement(
                it.file(),
                it.line(),
                it.machine(),
                it.rig(),
                it.workload(),
                it.settings(),
                Optional.of(picture),
                it.averageFps(),
                it.lowFps(),
                it.seconds());
    }

    private List<Measurement> atMemoryRates(int... mts) {
        List<Measurement> all = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            Measurement small = inPicture(of(DEMANDING, List.of("bench-12")).get(0), SMALL);
            Rig rig = small.rig().orElseThrow();
            Rig other =
                    new Rig(
                            rig.processor(),
                            rig.graphics(),
                            mts[i % mts.length],
                            rig.memoryGb(),
                            rig.drive());
            all.add(asListed(inMachine(small, "m" + i, other)));
        }
        return all;
    }

    private static Measurement inMachine(Measurement it, String machine, Rig rig) {
        return new Measurement(
                it.file(),
                it.line(),
                machine,
                Optional.of(rig),
                it.workload(),
                it.settings(),
                it.resolution(),
                it.averageFps(),
                it.lowFps(),
                it.seconds());
    }

    private static ShapeFit exponent(Calibration it) {
        return it.shapes().stream()
                .filter(shape -> shape.figure() == ShapeFigure.MEMORY_EXPONENT)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void at_one_memory_rate_the_exponent_is_held() {
        Calibration it = calibrate(atMemoryRates(5_600));

        assertThat(exponent(it).standing()).isEqualTo(Standing.HELD);
        assertThat(((FrameRate) it.workloads().get(0)).work().memoryExponent())
                .isEqualTo(exponent(it).listed());
    }

    /** As the catalogue predicts it, but where memory is slow 15 % slower than that. */
    @Test
    void at_two_memory_rates_apart_the_exponent_is_found() {
        List<Measurement> measured = new ArrayList<>();
        for (Measurement each : atMemoryRates(3_200, 6_400)) {
            boolean slow = each.rig().orElseThrow().memoryMts() == 3_200;
            measured.add(slow ? times(each, 1 / 1.15) : each);
        }

        Calibration it = calibrate(measured);

        assertThat(exponent(it).standing()).isEqualTo(Standing.FITTED);
        assertThat(exponent(it).value()).isGreaterThan(exponent(it).listed() + 0.1);
        assertThat(((FrameRate) it.workloads().get(0)).work().memoryExponent())
                .isEqualTo(exponent(it).value());
    }

    /** On the slowest of the drives much of that task is waiting for it. */
    @Test
    void a_drive_measured_beside_others_gets_its_own_rate() {
        List<Measurement> slow = new ArrayList<>();
        String drive = "grindlewick-quern-12-tb";
        for (Measurement each : world) {
            boolean moves = each.workload().equals("reel-loom");
            boolean here = each.rig().orElseThrow().drive().orElseThrow().id().equals(drive);
            slow.add(moves && here ? times(each, 0.85) : each);
        }

        ChannelFit before = driveRate(calibrate(world), drive);
        ChannelFit after = driveRate(calibrate(slow), drive);

        assertThat(after.estimate().factor()).isLessThan(before.estimate().factor());
    }

    private static ChannelFit driveRate(Calibration it, String drive) {
        return it.rates().stream()
                .filter(rate -> rate.part().equals(drive))
                .map(rate -> channel(rate.channels(), Channel.DRIVE))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void measurements_just_as_the_catalogue_predicts_change_nothing() {
        List<Measurement> listed =
                world.stream().filter(it -> it.seconds().isEmpty()).map(this::asListed).toList();

        Calibration it = calibrate(listed);

        assertThat(it.errors().before().ninetiethShare()).isCloseTo(0, within(1e-9));
        assertThat(it.demands())
                .flatExtracting(demand -> demand.channels())
                .allSatisfy(fit -> assertThat(fit.estimate().factor()).isCloseTo(1, within(1e-6)));
        assertThat(it.misSet()).isEmpty();
        assertThat(it.outliers()).isEmpty();
    }

    @Test
    void a_spoilt_measurement_is_named_and_hardly_moves_the_rest() {
        List<Measurement> spoilt = new ArrayList<>(world);
        spoilt.set(100, times(world.get(100), 0.5));

        Calibration before = calibrate(world);
        Calibration after = calibrate(spoilt);

        assertThat(after.outliers().get(0).measured()).isSameAs(spoilt.get(100));
        assertThat(after.outliers()).extracting(Outlier::measured).contains(spoilt.get(100));
        for (int i = 0; i < before.demands().size(); i++) {
            ChannelFit was = before.demands().get(i).channels().get(0);
            ChannelFit is = after.demands().get(i).channels().get(0);
            assertThat(is.estimate().factor())
                    .isBetween(
                            quarterWay(was.estimate().factor(), was.estimate().low()),
                            quarterWay(was.estimate().factor(), was.estimate().high()));
        }
    }

    private static double quarterWay(double from, double to) {
        return 0.75 * from + 0.25 * to;
    }

    @Test
    void a_measurement_left_out_is_predicted_as_by_a_fit_without_it() {
        List<Observation> all = world.stream().map(it -> Observation.of(it, catalogue)).toList();
        FitResult whole = fit(new SpeedEquations(all));

        for (int left : List.of(3, 77, 150, 222, 301)) {
            List<Observation> rest = new ArrayList<>(all);
            Observation out = rest.remove(left);
            SpeedEquations without = new SpeedEquations(rest);
            double predicted = predicted(out, without, fit(without));

            // By weights of the whole fit, so near but not the same.
            assertThat(whole.residualLeftOut(left)).isCloseTo(out.log() - predicted, within(0.01));
        }
    }

    private static FitResult fit(SpeedEquations equations) {
        return new RobustFit(
                        equations, equations.priors(Terms.usual()), 1e-6, new Scatter(0.03, 10))
                .fit(Loss.BISQUARE);
    }

    private static double predicted(Observation out, SpeedEquations equations, FitResult fit) {
        double[] loads = new double[4];
        List<Unknown> unknowns = equations.unknowns();
        for (Channel channel : Channel.values()) {
            Channel side = channel.ofCard() ? Channel.GRAPHICS : channel;
            List<Unknown> three =
                    List.of(
                            new Unknown(Sort.DEMAND, channel, out.measured().workload()),
                            new Unknown(Sort.RATE, channel, out.part(channel).orElse("")),
                            new Unknown(Sort.PIECE, side, out.measured().machine()));
            for (Unknown each : three) {
                int at = unknowns.indexOf(each);
                loads[channel.ordinal()] += at < 0 ? 0 : each.sort().sign() * fit.parameter(at);
            }
        }
        int exponent = unknowns.indexOf(Unknown.memoryExponent(out.measured().workload()));
        if (exponent >= 0) {
            int mts = out.measured().rig().orElseThrow().memoryMts();
            loads[2] += fit.parameter(exponent) * Math.log(4_800.0 / mts);
        }
        return out.speed().log(loads);
    }

    @Test
    void the_only_measurement_of_a_workload_is_said_to_decide_alone() {
        List<Measurement> once = new ArrayList<>();
        for (Measurement each : world) {
            boolean other = !each.workload().equals("quarry-render");
            if (other || each.machine().equals("bench-12")) {
                once.add(each);
            }
        }

        Calibration it = calibrate(once);

        assertThat(it.dominant())
                .extracting(each -> each.measured().workload())
                .contains("quarry-render");
    }

    @Test
    void a_machine_that_can_not_do_what_was_measured_is_left_aside() {
        Measurement traced =
                world.stream()
                        .filter(it -> it.settings().rays().isPresent())
                        .findFirst()
                        .orElseThrow();
        Rig rig = traced.rig().orElseThrow();
        Graphics card = rig.graphics().orElseThrow();
        Rig without =
                new Rig(
                        rig.processor(),
                        Optional.of(card.rated(card.tflops(), card.bandwidthGbs(), 0)),
                        rig.memoryMts(),
                        rig.memoryGb(),
                        rig.drive());
        Measurement impossible =
                new Measurement(
                        "file",
                        2,
                        "odd",
                        Optional.of(without),
                        traced.workload(),
                        traced.settings(),
                        traced.resolution(),
                        traced.averageFps(),
                        traced.lowFps(),
                        traced.seconds());
        List<Measurement> both = new ArrayList<>(world);
        both.add(impossible);

        Calibration it = calibrate(both);

        assertThat(it.impossible()).containsExactly(impossible);
        assertThat(it.measurements()).isEqualTo(world.size());
    }

    @Test
    void a_low_stands_in_for_an_average_that_was_not_measured() {
        List<Measurement> lows =
                of(DEMANDING, List.of("bench-01", "bench-05", "bench-11", "bench-12")).stream()
                        .map(CalibratorTest::withoutAverage)
                        .toList();

        Calibration it = calibrate(lows);

        assertThat(it.measurements()).isEqualTo(4);
        assertThat(it.lows().count()).isZero();
        assertThat(it.errors().after().medianShare())
                .isLessThan(it.errors().before().medianShare());
    }

    private static Measurement withoutAverage(Measurement it) {
        return new Measurement(
                it.file(),
                it.line(),
                it.machine(),
                it.rig(),
                it.workload(),
                it.settings(),
                it.resolution(),
                OptionalDouble.empty(),
                it.lowFps(),
                it.seconds());
    }

    @Test
    void the_overlay_predicts_what_the_fit_says_of_parts_alone() {
        Calibration it = calibrate(world);

        FrameRate refitted = (FrameRate) it.workloads().get(0);
        FrameRate listed = (FrameRate) catalogue.workload(refitted.id()).orElseThrow();
        double factor =
                channel(it.demands().get(0).channels(), Channel.GRAPHICS).estimate().factor();
        assertThat(refitted.work().gflop().perMegapixel())
                .isCloseTo(listed.work().gflop().perMegapixel() * factor, within(1e-9));
        assertThat(refitted.fitted().n()).isEqualTo(30);
        assertThat(refitted.fitted().sigma()).isBetween(0.03, 0.08);
    }
}
