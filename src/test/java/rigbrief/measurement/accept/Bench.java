package rigbrief.measurement.accept;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.GraphicsFixture.aGraphicsCard;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;
import static rigbrief.fixture.NeedFixture.aNeed;
import static rigbrief.fixture.ProcessorFixture.aProcessor;
import static rigbrief.fixture.ScreenFixture.aScreen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.PerPixel;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload.Fitted;
import rigbrief.fixture.BuildFixture;
import rigbrief.fixture.GraphicsFixture;
import rigbrief.fixture.MemoryFixture;
import rigbrief.fixture.ProcessorFixture;

/**
 * A machine on the test bench and six workloads that lean on different parts of it.
 *
 * <p>A fault is simulated by the sheet of another machine, whose parts are as slow as the fault
 * makes these: what causes compute is not asked.
 */
final class Bench {
    static final double SIGMA = 0.05;
    static final String OPEN = "workload.heath-rising";
    static final String CROWD = "workload.tollgate";
    static final String FULL = "workload.glasshouse";
    static final String ALL_THREADS = "workload.weave-rendering";
    static final String ONE_THREAD = "workload.pattern-drawing";
    static final String ON_CARD = "workload.glaze-shading";

    private Bench() {}

    static BuildFixture machine() {
        return machine(aProcessor(), aMemoryKit(), aGraphicsCard());
    }

    static BuildFixture machine(
            ProcessorFixture processor, MemoryFixture memory, GraphicsFixture card) {
        return aBuild().with(processor).with(memory).with(card).with(aBoard());
    }

    static Brief brief() {
        return aBrief().screen(aScreen())
                .use(aNeed("heath-rising").mustAverage(70))
                .use(aNeed("tollgate").mustAverage(80))
                .use(aNeed("glasshouse"))
                .use(aNeed("weave-rendering").mustFinishS(150))
                .use(aNeed("pattern-drawing"))
                .use(aNeed("glaze-shading"))
                .noiseMustDba(45)
                .make();
    }

    static Catalogue catalogue(Build build) {
        return aCatalogue()
                .offering(build)
                .workload(title("heath-rising", 220, 0.2, 0.5, 6, 0.1))
                .workload(title("tollgate", 60, 0.7, 2.4, 4, 0.4))
                .workload(title("glasshouse", 150, 0.15, 0.4, 16, 0.1))
                .workload(task("weave-rendering", 500, 70_000, 0))
                .workload(task("pattern-drawing", 4_000, 500, 0))
                .workload(task("glaze-shading", 100, 0, 900_000))
                .make();
    }

    private static FrameRate title(
            String id,
            double gflop,
            double serial,
            double parallel,
            double vramGb,
            double memoryExponent) {
        PerPixel none = new PerPixel(0, 0);
        return new FrameRate(
                id,
                id,
                8,
                new PerPixel(vramGb, 0),
                40,
                new Fitted(20, SIGMA),
                OptionalDouble.empty(),
                new FrameWork(
                        0.2,
                        new PerPixel(gflop, 0),
                        new PerPixel(gflop / 60, 0),
                        none,
                        serial,
                        parallel,
                        memoryExponent),
                "high",
                Map.of("high", new Factors(1, 1, 1)),
                Map.of("off", new RayStep(0, 1, 1)),
                Map.of(),
                List.of(new Scene("here", 0.8, 1, 1), new Scene("there", 0.2, 1.3, 1.3)),
                List.of(),
                FrameRate.Shape.USUAL);
    }

    private static TaskTime task(String id, double serial, double parallel, double gflop) {
        return new TaskTime(
                id,
                id,
                "one piece",
                8,
                0,
                10,
                new Fitted(20, SIGMA),
                serial,
                parallel,
                gflop,
                0,
                0);
    }

    static Acceptor acceptor(BuildFixture build) {
        Build made = build.make();
        return new Acceptor(brief(), catalogue(made), made);
    }

    /** What the clock shows on a machine: its own expectation, spread as the fits and runs are. */
    static List<Reading> speeds(BuildFixture build, Random random) {
        List<Reading> readings = new ArrayList<>();
        String workload = "";
        double off = 1;
        for (SheetLine line : acceptor(build).sheet().lines()) {
            if (line.part() == SheetLine.Station.SPEED) {
                String own = line.id().substring(0, line.id().lastIndexOf('.'));
                // An average and a low of one log are off together.
                off = own.equals(workload) ? off : Math.exp(SIGMA * random.nextGaussian());
                double alone = Math.exp(0.02 * random.nextGaussian());
                readings.add(new Reading(line.id(), line.middle().orElseThrow() * off * alone));
                workload = own;
            }
        }
        return readings;
    }
}
