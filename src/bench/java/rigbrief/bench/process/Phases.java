package rigbrief.bench.process;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.bench.Clock;
import rigbrief.bench.Plot;
import rigbrief.bench.Scenarios;
import rigbrief.bench.Table;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.presolve.Dominance;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;

/**
 * What the parts of one answer cost by the size of the catalogue, within one warm process, and how
 * many candidates and steps they leave: says what grows.
 */
public final class Phases {
    private static final long STEPS = 60_000;

    private final String name;
    private final boolean searches;
    private final Map<String, List<double[]>> curves = new LinkedHashMap<>();
    private final Table table;

    private Phases(boolean searches) {
        this.searches = searches;
        this.name = searches ? "phases" : "presolve";
        this.table =
                new Table(
                        name,
                        "parts",
                        "read, s",
                        "candidates, s",
                        "dominance, s",
                        "lean, s",
                        "full, s",
                        "candidates",
                        "left for lean",
                        "left for full",
                        "steps lean",
                        "steps full");
        table.remark(
                "Means over the scenarios, processor seconds of the working thread; searches stop at %d steps%s."
                        .formatted(STEPS, searches ? "" : " and were left out"));
    }

    /**
     * Measures over all scenarios at every size.
     *
     * @param searches whether to search as well, which takes most of the time
     */
    public static void run(Path out, List<Integer> parts, boolean searches) throws IOException {
        Phases phases = new Phases(searches);
        phases.size(Worlds.folder(out, parts.get(0)), parts.get(0), false);
        for (int size : parts) {
            phases.size(Worlds.folder(out, size), size, true);
            phases.save(out);
        }
        phases.table.write(out);
        phases.growth().write(out);
    }

    private void size(Path folder, int parts, boolean counts) throws IOException {
        Clock clock = Clock.start();
        Catalogue catalogue = Scenarios.catalogue(folder);
        double read = clock.threadS();
        double[] cost = new double[4];
        double[] count = new double[5];
        int briefs = 0;
        for (Brief brief : Scenarios.briefs(catalogue)) {
            clock = Clock.start();
            SearchSpace space = SearchSpace.of(brief, catalogue);
            cost[0] += clock.threadS();
            if (space.candidates().impossible()) {
                continue;
            }
            briefs++;
            count[0] += space.candidates().count();
            clock = Clock.start();
            count[1] += left(space, true);
            cost[1] += clock.threadS();
            count[2] += left(space, false);
            if (!searches) {
                continue;
            }
            Problem problem = space.within(brief.ceiling().minorUnits());
            clock = Clock.start();
            count[3] += steps(problem, Objective.leastMoney());
            cost[2] += clock.threadS();
            clock = Clock.start();
            count[4] += steps(problem, Objective.mostUtility());
            cost[3] += clock.threadS();
        }
        if (!counts) {
            return;
        }
        List<Object> row = new ArrayList<>(List.of(parts, read));
        for (int i = 0; i < cost.length; i++) {
            row.add(searches || i < 2 ? cost[i] / briefs : Double.valueOf(Double.NaN));
        }
        for (int i = 0; i < count.length; i++) {
            row.add(searches || i < 3 ? "%.0f".formatted(count[i] / briefs) : "-");
        }
        table.row(row.toArray());
        add("reading the catalogue", parts, read);
        add("candidates", parts, cost[0] / briefs);
        add("dominance", parts, cost[1] / briefs);
        if (searches) {
            add("lean", parts, cost[2] / briefs);
            add("full", parts, cost[3] / briefs);
        }
        System.err.println(name + ": " + parts);
    }

    private static int left(SearchSpace space, boolean moneyOnly) {
        return Dominance.undominated(space.assessor(), space.candidates(), moneyOnly)
                .values()
                .stream()
                .mapToInt(List::size)
                .sum();
    }

    private static long steps(Problem problem, Objective objective) {
        Certificate certificate =
                new Certifier(problem, objective, STEPS, () -> false).run(Optional.empty());
        return certificate.steps();
    }

    private void add(String curve, int parts, double cpuS) {
        curves.computeIfAbsent(curve, any -> new ArrayList<>())
                .add(new double[] {parts, Math.max(cpuS, 1e-4)});
    }

    private void save(Path out) throws IOException {
        table.save(out);
        growth().save(out);
        Plot.draw(out.resolve(name + ".svg"), "Phases of an answer", "parts", "CPU s", curves);
    }

    private Table growth() {
        Table growth =
                new Table(
                        name + "-growth", "phase", "exponent", "95 %", "R squared", "so it grows");
        curves.forEach((phase, points) -> WholeProcess.fitted(growth, phase, points));
        return growth;
    }
}
