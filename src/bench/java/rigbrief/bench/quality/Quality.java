package rigbrief.bench.quality;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.bench.Clock;
import rigbrief.bench.Plot;
import rigbrief.bench.Scenarios;
import rigbrief.bench.Table;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.LocalSearch;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.Starter;
import rigbrief.search.TwoStage;

/**
 * Quality against time, for most utility under the ceiling: Timefold naive, Timefold as the program
 * uses it (presolved candidates, greedy start, coupled moves, polish), and the certifier.
 *
 * <p>The last two stop by counts, so they are run again and again, each time with more; a run with
 * more does what the run with less did and goes on.
 */
public final class Quality {
    private static final double[] ALL_POINTS_S = {0.1, 0.3, 1, 3, 10, 30};
    private static final double RIVAL_S = 5;
    private static final long FIRST_MOVES = 50;
    private static final long FIRST_STEPS = 16;
    private static final long MOST_STEPS = 200_000;
    private static final long SEED = 1;
    private static final String NAIVE = "Timefold naive";
    private static final String OURS = "Timefold as used";
    private static final String CERTIFIER = "certifier";

    private final Catalogue catalogue;
    private final double[] pointsS;
    private final double rivalS;
    private final Map<String, List<double[]>> gaps = new LinkedHashMap<>();
    private final List<Double> sooner = new ArrayList<>();
    private final Table table;
    private int unproven;

    private Quality(Catalogue catalogue, double seconds) {
        this.catalogue = catalogue;
        this.pointsS = Arrays.stream(ALL_POINTS_S).filter(point -> point <= seconds).toArray();
        this.rivalS = Math.min(RIVAL_S, seconds);
        List<String> head = new ArrayList<>(List.of("scenario", "search"));
        for (double point : pointsS) {
            head.add("gap %% at %s s".formatted(Table.number(point)));
        }
        head.add("sooner than naive at %.0f s".formatted(rivalS));
        this.table = new Table("quality-" + catalogue.partCount(), head.toArray(String[]::new));
    }

    /**
     * Compares over all scenarios on one catalogue.
     *
     * @param seconds most processor time for one search; each is looked at up to then
     */
    public static void run(Path folder, double seconds, Path out) throws IOException {
        Quality quality = new Quality(Scenarios.catalogue(folder), seconds);
        List<Brief> briefs = Scenarios.briefs(quality.catalogue);
        quality.warmUp(briefs.get(0));
        for (Brief brief : briefs) {
            quality.compare(brief);
        }
        quality.write(out);
    }

    private void warmUp(Brief brief) {
        naive(brief, 1);
        local(brief, 1);
        certifier(brief, 1);
    }

    private Problem problem(Brief brief) {
        return SearchSpace.of(brief, catalogue).within(brief.ceiling().minorUnits());
    }

    private void compare(Brief brief) {
        if (SearchSpace.of(brief, catalogue).candidates().impossible()) {
            return;
        }
        double most = pointsS[pointsS.length - 1];
        Map<String, Trace> traces = new LinkedHashMap<>();
        traces.put(NAIVE, naive(brief, most));
        traces.put(OURS, local(brief, most));
        traces.put(CERTIFIER, certifier(brief, most));
        Certificate proof =
                new Certifier(problem(brief), Objective.mostUtility(), MOST_STEPS, () -> false)
                        .run(Optional.empty());
        long best = proof.best().map(Standing::points).orElse(Long.MIN_VALUE);
        for (Trace trace : traces.values()) {
            best = Math.max(best, trace.best());
        }
        if (best == Long.MIN_VALUE) {
            return;
        }
        unproven += proof.complete() ? 0 : 1;
        long rival = traces.get(NAIVE).by(rivalS);
        long known = best;
        traces.forEach(
                (search, trace) ->
                        row(
                                brief.name() + (proof.complete() ? "" : " (best known)"),
                                search,
                                trace,
                                known,
                                rival));
        System.err.println("quality: " + brief.name());
    }

    private void row(String name, String search, Trace trace, long best, long rival) {
        List<Object> cells = new ArrayList<>(List.of(name, search));
        double[] each = new double[pointsS.length];
        for (int i = 0; i < pointsS.length; i++) {
            long figure = trace.by(pointsS[i]);
            each[i] = figure == Long.MIN_VALUE ? Double.NaN : 100.0 * (best - figure) / best;
            cells.add(figure == Long.MIN_VALUE ? "no build" : Table.number(each[i]));
        }
        gaps.computeIfAbsent(search, any -> new ArrayList<>()).add(each);
        OptionalDouble reached = trace.reached(rival);
        if (search.equals(NAIVE)) {
            cells.add("-");
        } else if (rival == Long.MIN_VALUE) {
            cells.add("naive has none");
        } else if (reached.isEmpty()) {
            cells.add("not reached");
            if (search.equals(CERTIFIER)) {
                sooner.add(0.0);
            }
        } else {
            double times = rivalS / Math.max(0.001, reached.getAsDouble());
            cells.add(Table.number(times) + " times");
            if (search.equals(CERTIFIER)) {
                sooner.add(times);
            }
        }
        table.row(cells.toArray());
    }

    private Trace naive(Brief brief, double seconds) {
        Problem problem = problem(brief);
        SolverConfig config =
                new SolverConfig()
                        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
                        .withSolutionClass(NaiveMachine.class)
                        .withEntityClasses(NaiveSlot.class)
                        .withConstraintProviderClass(NaiveConstraints.class)
                        .withRandomSeed(SEED);
        Trace trace = new Trace();
        Clock clock = Clock.start();
        Solver<NaiveMachine> solver = SolverFactory.<NaiveMachine>create(config).buildSolver();
        solver.addEventListener(
                event -> {
                    if (event.isNewBestSolutionInitialized()
                            && event.getNewBestScore().isFeasible()) {
                        trace.known(clock.cpuS(), points(problem, event.getNewBestSolution()));
                    }
                });
        Thread watch = watch(solver, clock, seconds);
        solver.solve(new NaiveMachine(problem, Objective.mostUtility()));
        watch.interrupt();
        return trace;
    }

    private static Thread watch(Solver<?> solver, Clock clock, double seconds) {
        Thread watch =
                new Thread(
                        () -> {
                            try {
                                while (clock.cpuS() < seconds) {
                                    Thread.sleep(10);
                                }
                                while (!solver.terminateEarly()) {
                                    Thread.sleep(10);
                                }
                            } catch (InterruptedException done) {
                                Thread.currentThread().interrupt();
                            }
                        });
        watch.setDaemon(true);
        watch.start();
        return watch;
    }

    private static long points(Problem problem, NaiveMachine machine) {
        Part[] parts = new Part[Slot.values().length];
        int[] pieces = new int[parts.length];
        for (NaiveSlot slot : machine.slots()) {
            parts[slot.slot().ordinal()] = slot.getFilling().part();
            pieces[slot.slot().ordinal()] = slot.getFilling().pieces();
        }
        return new NaiveBuild(problem, Objective.mostUtility(), parts, pieces).points();
    }

    private Trace local(Brief brief, double seconds) {
        Trace trace = new Trace();
        double took = 0;
        for (long moves = FIRST_MOVES; took < seconds; moves *= 2) {
            Problem problem = problem(brief);
            Clock clock = Clock.start();
            Standing found =
                    LocalSearch.run(
                            problem,
                            Objective.mostUtility(),
                            Starter.start(problem),
                            moves,
                            SEED,
                            EnvironmentMode.NO_ASSERT);
            Optional<Standing> polished =
                    new TwoStage(SEED, moves, 1, () -> clock.cpuS() > seconds)
                            .polished(problem, Objective.mostUtility(), List.of(found));
            took = clock.cpuS();
            if (polished.isPresent()) {
                trace.known(took, polished.get().points());
            }
        }
        return trace;
    }

    private Trace certifier(Brief brief, double seconds) {
        Trace trace = new Trace();
        double took = 0;
        boolean complete = false;
        for (long steps = FIRST_STEPS; took < seconds && !complete; steps *= 2) {
            Problem problem = problem(brief);
            Clock clock = Clock.start();
            Certificate certificate =
                    new Certifier(
                                    problem,
                                    Objective.mostUtility(),
                                    steps,
                                    () -> clock.cpuS() > seconds)
                            .run(Optional.empty());
            took = clock.cpuS();
            complete = certificate.complete();
            if (certificate.best().isPresent()) {
                trace.known(took, certificate.best().get().points());
            }
        }
        return trace;
    }

    private void write(Path out) throws IOException {
        Table summary =
                new Table(
                        "quality-summary-" + catalogue.partCount(),
                        "search",
                        "processor s",
                        "without a build",
                        "median gap %",
                        "worst gap %");
        Map<String, List<double[]>> curves = new LinkedHashMap<>();
        gaps.forEach(
                (search, rows) -> {
                    for (int i = 0; i < pointsS.length; i++) {
                        int at = i;
                        List<Double> known = new ArrayList<>();
                        rows.forEach(row -> known.add(row[at]));
                        known.removeIf(gap -> gap.isNaN());
                        Collections.sort(known);
                        boolean any = !known.isEmpty();
                        double median = any ? known.get(known.size() / 2) : Double.NaN;
                        double worst = any ? known.get(known.size() - 1) : Double.NaN;
                        summary.row(
                                search,
                                pointsS[i],
                                "%d of %d".formatted(rows.size() - known.size(), rows.size()),
                                median,
                                worst);
                        if (any) {
                            curves.computeIfAbsent(search, name -> new ArrayList<>())
                                    .add(new double[] {pointsS[i], Math.max(0.01, worst)});
                        }
                    }
                });
        table.remark(
                "Most utility under the ceiling; gap against the proven best, or the best known where no proof was had in %d steps (%d scenarios). Processor seconds of all threads, compiler warm. What naive Timefold has after %.0f s the certifier has at least %s times sooner."
                        .formatted(
                                MOST_STEPS,
                                unproven,
                                rivalS,
                                Table.number(
                                        sooner.stream()
                                                .mapToDouble(Double::doubleValue)
                                                .min()
                                                .orElse(Double.NaN))));
        table.write(out);
        summary.write(out);
        Plot.draw(
                out.resolve("quality-" + catalogue.partCount() + ".svg"),
                "Worst gap over the scenarios",
                "processor s",
                "gap %",
                curves);
    }
}
