package rigbrief.bench.agree;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.LongSupplier;
import rigbrief.bench.Clock;
import rigbrief.bench.Table;
import rigbrief.bench.choco.Choco;
import rigbrief.bench.cpsat.CpSat;
import rigbrief.bench.export.Instance;
import rigbrief.bench.export.Proof;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Wishes;
import rigbrief.catalogue.Catalogue;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Enumeration;
import rigbrief.search.LocalSearch;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.SmallWorld;
import rigbrief.search.Standing;
import rigbrief.search.Starter;

/**
 * Small instances drawn by a seed: the certifier, trying every build, CP-SAT and Choco must say the
 * same, and local search never more.
 *
 * <p>Two questions of each: the least total, with the brief as it is; and the most utility, with
 * the brief's wishes confined to workloads, look and lifetime, the goals that can be told to a
 * solver as tables and sums. A third, the most utility of all goals, goes to the certifier and to
 * trying every build alone.
 */
public final class Agreement {
    private static final List<String> TABLED = List.of("workloads", "look", "lifetime");
    private static final long MOST_ASKED = 20_000;
    private static final long STEPS = 50_000_000;
    private static final long MOVES = 500;
    private static final double SECONDS = 120;

    private final int cases;
    private final Map<String, List<Double>> seconds = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();
    private int withBuilds;
    private int without;
    private int unproven;
    private int localReached;
    private int localAsked;
    private int rounds;
    private final List<Integer> sound = new ArrayList<>();

    private Agreement(int cases) {
        this.cases = cases;
    }

    /**
     * Compares on so many instances that have a build; those without come on top.
     *
     * @return whether all agreed
     */
    public static boolean run(int cases, Path out) throws IOException {
        return new Agreement(cases).run(out);
    }

    private boolean run(Path out) throws IOException {
        CpSat.load();
        for (int seed = 1; withBuilds < cases; seed++) {
            Random random = new Random(seed);
            Catalogue catalogue = SmallWorld.catalogue(random);
            Brief brief = SmallWorld.brief(random, catalogue);
            Clock clock = Clock.start();
            Enumeration all = new Enumeration(brief, catalogue);
            add("trying every build", clock.threadS());
            if (all.sound.isEmpty()) {
                without++;
            } else {
                withBuilds++;
                sound.add(all.sound.size());
            }
            compare(seed, "least total", brief, catalogue, Objective.leastMoney(), all.leastMinor);
            everyGoal(seed, brief, catalogue, all.mostPoints);
            Brief tabled = tabled(brief);
            long most = new Enumeration(tabled, catalogue).mostPoints;
            compare(seed, "most utility", tabled, catalogue, Objective.mostUtility(), most);
            if (seed % 50 == 0) {
                System.err.println("agreement: seed " + seed + ", " + faults.size() + " faults");
            }
        }
        write(out);
        return faults.isEmpty() && unproven == 0;
    }

    private static Brief tabled(Brief brief) {
        Map<String, Integer> weights = new LinkedHashMap<>();
        for (String goal : TABLED) {
            weights.put(goal, brief.wishes().weight(goal));
        }
        return new BriefDraft(brief).wishes(new Wishes(weights)).toBrief();
    }

    private void compare(
            int seed,
            String what,
            Brief brief,
            Catalogue catalogue,
            Objective objective,
            long expected) {
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            if (expected >= 0) {
                faults.add("seed %d, %s: no candidates, yet a build".formatted(seed, what));
            }
            return;
        }
        boolean byPoints = objective.perPoint() > 0;
        Problem problem = space.within(brief.ceiling().minorUnits());
        check(seed, what, "certifier", expected, () -> certify(problem, objective, byPoints));
        Clock clock = Clock.start();
        Instance instance = Instance.of(problem, objective, MOST_ASKED);
        add("export", clock.threadS());
        check(seed, what, "CP-SAT", expected, () -> told(CpSat.solve(instance, SECONDS, 1)));
        check(seed, what, "Choco", expected, () -> told(Choco.solve(instance, SECONDS)));
        local(seed, what, problem, objective, expected);
    }

    /** All wishes of the brief, which only the certifier and trying every build can tell. */
    private void everyGoal(int seed, Brief brief, Catalogue catalogue, long expected) {
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (!space.candidates().impossible()) {
            Problem problem = space.within(brief.ceiling().minorUnits());
            check(
                    seed,
                    "most utility of all goals",
                    "certifier",
                    expected,
                    () -> certify(problem, Objective.mostUtility(), true));
        }
    }

    private long certify(Problem problem, Objective objective, boolean byPoints) {
        Certificate certificate =
                new Certifier(problem, objective, STEPS, () -> false).run(Optional.empty());
        unproven += certificate.complete() ? 0 : 1;
        return certificate
                .best()
                .map(best -> byPoints ? best.points() : best.totalMinor())
                .orElse(-1L);
    }

    private long told(Proof proof) {
        unproven += proof.proven() ? 0 : 1;
        rounds = Math.max(rounds, proof.rounds());
        return proof.figure();
    }

    private void check(int seed, String what, String who, long expected, LongSupplier question) {
        Clock clock = Clock.start();
        long found = question.getAsLong();
        add(who + ", " + what, clock.threadS());
        if (found != expected) {
            faults.add(
                    "seed %d, %s: %s found %d, expected %d"
                            .formatted(seed, what, who, found, expected));
        }
    }

    private void local(int seed, String what, Problem problem, Objective objective, long expected) {
        Standing found =
                LocalSearch.run(
                        problem,
                        objective,
                        Starter.start(problem),
                        MOVES,
                        seed,
                        EnvironmentMode.NO_ASSERT);
        if (expected >= 0) {
            localAsked++;
        }
        if (!found.sound()) {
            return;
        }
        boolean byPoints = objective.perPoint() > 0;
        long figure = byPoints ? found.points() : found.totalMinor();
        boolean better = expected < 0 || (byPoints ? figure > expected : figure < expected);
        localReached += figure == expected ? 1 : 0;
        if (better) {
            faults.add("seed %d, %s: local search is above the proof".formatted(seed, what));
        }
    }

    private void add(String who, double cpuS) {
        seconds.computeIfAbsent(who, any -> new ArrayList<>()).add(cpuS);
    }

    private void write(Path out) throws IOException {
        Table table = new Table("agreement", "who", "asked", "CPU s in all", "geometric mean, ms");
        seconds.forEach(
                (who, each) ->
                        table.row(
                                who,
                                each.size(),
                                each.stream().mapToDouble(Double::doubleValue).sum(),
                                1000 * geometricMean(each)));
        table.remark(
                "%d instances with a build and %d without; two questions to all, a third to the certifier. Disagreements: %d. Without a proof: %d. Most rounds of cuts: %d."
                        .formatted(withBuilds, without, faults.size(), unproven, rounds));
        sound.sort(null);
        table.remark(
                "Sound builds of an instance that has one: median %d, most %d. Processor seconds of the working thread."
                        .formatted(sound.get(sound.size() / 2), sound.get(sound.size() - 1)));
        table.remark(
                "Local search (%d moves) reached the proven best %d times of %d and was never above it."
                        .formatted(MOVES, localReached, localAsked));
        faults.forEach(table::remark);
        table.write(out);
    }

    static double geometricMean(List<Double> values) {
        double sum = 0;
        for (double value : values) {
            sum += Math.log(Math.max(1e-6, value));
        }
        return Math.exp(sum / values.size());
    }
}
