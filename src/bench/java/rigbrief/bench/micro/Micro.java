package rigbrief.bench.micro;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import rigbrief.assess.Assessment;
import rigbrief.bench.Scenarios;
import rigbrief.bench.Table;
import rigbrief.catalogue.Catalogue;
import rigbrief.presolve.Dominance;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.Standing;

/** Single pieces of work, in a virtual machine of their own, compiler warm. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class Micro {
    private static final long STEPS = 60_000;

    /** Reading and checking the files of a catalogue. */
    @Benchmark
    public Catalogue readCatalogue(World world) {
        return Scenarios.catalogue(world.folder);
    }

    /** What may fill each slot. */
    @Benchmark
    public Problem candidates(World world) {
        return world.problem();
    }

    /** What no other candidate can stand in for. */
    @Benchmark
    public Object dominance(World world) {
        return Dominance.undominated(world.problem.assessor(), world.problem.candidates(), false);
    }

    /** One sketch: all rules, and all goals where it is sound. */
    @Benchmark
    public Standing score(World world) {
        return world.problem.standing(world.choices());
    }

    /** One build's price, load, heat, noise and speed, and nothing judged. */
    @Benchmark
    public double assess(World world) {
        Assessment it = world.problem.assessor().assess(world.problem.build(world.choices()));
        return it.cost().totalMinor()
                + it.power().kwhPerYear()
                + it.load().levelDba()
                + it.full().excessDecikelvin()
                + it.predictions().size();
    }

    /** The least total and its proof, from nothing. */
    @Benchmark
    public Certificate certifyLean(World world) {
        return certify(world, Objective.leastMoney());
    }

    /** The most utility and its proof, from nothing. */
    @Benchmark
    public Certificate certifyFull(World world) {
        return certify(world, Objective.mostUtility());
    }

    private static Certificate certify(World world, Objective objective) {
        return new Certifier(world.problem(), objective, STEPS, () -> false).run(Optional.empty());
    }

    /**
     * Runs them.
     *
     * @param sizes numbers of parts, with commas between
     */
    public static void run(Path out, String sizes) throws IOException, RunnerException {
        Files.createDirectories(out);
        Table table =
                new Table("jmh", "work", "parts", "scenario", "mean, microseconds", "+- 99.9 %");
        OptionsBuilder options = new OptionsBuilder();
        options.include(Micro.class.getName() + "\\.")
                .param("parts", sizes.split(","))
                .jvmArgs("-Xmx1g", "-D" + World.OUT + "=" + out.toAbsolutePath())
                .forks(1)
                .warmupIterations(2)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(1))
                .verbosity(VerboseMode.SILENT);
        for (RunResult result : new Runner(options.build()).run()) {
            table.row(
                    result.getPrimaryResult().getLabel(),
                    result.getParams().getParam("parts"),
                    result.getParams().getParam("scenario"),
                    result.getPrimaryResult().getScore(),
                    result.getPrimaryResult().getScoreError());
        }
        table.remark(
                "JMH, average time, one fork, 2 warm-up and 5 measured rounds of 1 s; wall time, so on a quiet machine only.");
        table.write(out);
    }
}
