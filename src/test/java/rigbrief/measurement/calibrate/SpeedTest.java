package rigbrief.measurement.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Prediction;
import rigbrief.brief.Brief;
import rigbrief.brief.Screen;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.BuildReader;
import rigbrief.measurement.Measurement;
import rigbrief.measurement.Rig;

/** What a calibration takes for predicted is what a proposal promises. */
class SpeedTest {
    private static final List<String> WITH_CARD =
            List.of(
                    "merrowby-courante-6-n",
                    "skerrowby-cove-1644m",
                    "lathmere-plainbar-2x16-d5-5600-c46",
                    "garrowick-couplet-sorrel-280",
                    "slatecombe-chip-1-tb",
                    "wattlemarsh-weir-650",
                    "brackenfin-frond-92",
                    "coffermere-bin-40");

    private final Catalogue catalogue = InventedWorld.catalogue();

    @Test
    void averages_lows_and_times_are_those_of_an_assessment() throws BadInput {
        int compared = 0;
        for (String scenario : List.of("potter", "competitor", "streamer", "editor", "cad")) {
            Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), catalogue);
            compared += compare(brief);
        }

        assertThat(compared).isGreaterThan(6);
    }

    private int compare(Brief brief) throws BadInput {
        Build build =
                BuildReader.read(
                                new java.io.ByteArrayInputStream(
                                        String.join("\n", WITH_CARD).getBytes()),
                                "build",
                                catalogue)
                        .build();
        Assessment assessment = new Assessor(brief, catalogue).assess(build);
        Rig rig =
                new Rig(
                        build.processor(),
                        Optional.of(build.graphics()),
                        assessment.memoryMts(),
                        build.memoryGb(),
                        Optional.of(build.drives().get(0)));
        int compared = 0;
        for (Prediction each : assessment.predictions()) {
            Measurement measured = measurement(brief, rig, each);
            if (each.workload() instanceof FrameRate title) {
                same(FrameSpeed.of(title, measured, false), each.averageFps());
                same(FrameSpeed.of(title, measured, true), each.lowFps());
                compared++;
            } else if (each.workload() instanceof TaskTime task) {
                same(TaskSpeed.of(task, rig), each.seconds());
                compared++;
            }
        }
        return compared;
    }

    private static void same(Speed speed, double predicted) {
        assertThat(Math.exp(speed.log(0, 0, 0, 0))).isCloseTo(predicted, within(predicted * 1e-9));
    }

    private static Measurement measurement(Brief brief, Rig rig, Prediction each) {
        return new Measurement(
                "file",
                2,
                "machine",
                Optional.of(rig),
                each.workload().id(),
                each.need().settings(),
                brief.screen().map(Screen::resolution),
                OptionalDouble.of(1),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** Twice the demand is half the rate, whichever of the two a calibration moves. */
    @Test
    void a_doubled_load_takes_as_long_as_a_halved_rate() {
        List<Measurement> measured = new InventedWorld(5, 0, 1).measurements();
        List<Double> seen = new ArrayList<>();

        for (Measurement each : measured.subList(0, 60)) {
            if (catalogue.workload(each.workload()).orElseThrow() instanceof FrameRate title) {
                double doubled =
                        FrameSpeed.of(title, each, false).log(Math.log(2), Math.log(2), 0, 0);
                Measurement slow = withCardAtHalfRate(each);
                same(FrameSpeed.of(title, slow, false), Math.exp(doubled));
                seen.add(doubled);
            }
        }

        assertThat(seen).hasSize(45);
    }

    private static Measurement withCardAtHalfRate(Measurement it) {
        Rig rig = it.rig().orElseThrow();
        var card = rig.graphics().orElseThrow();
        var half = card.rated(card.tflops() / 2, card.bandwidthGbs() / 2, card.rayRate() / 2);
        return new Measurement(
                it.file(),
                it.line(),
                it.machine(),
                Optional.of(
                        new Rig(
                                rig.processor(),
                                Optional.of(half),
                                rig.memoryMts(),
                                rig.memoryGb(),
                                rig.drive())),
                it.workload(),
                it.settings(),
                it.resolution(),
                it.averageFps(),
                it.lowFps(),
                it.seconds());
    }
}
