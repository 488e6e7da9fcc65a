package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.config.solver.EnvironmentMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.world.Effort;

/**
 * What searches say of random briefs on random catalogues is true: builds break no rule, cost and
 * count what the audit says, and no bound is below any build that is known.
 *
 * <p>Check: the auditor, which knows no search; builds drawn at random; a longer search.
 */
class TruthOfSearchTest {
    private static final int CASES = Effort.cases(30, 1_000);
    private static final int ASSERTED = Effort.cases(3, 50);
    private static final long SHORT = 100;
    private static final long LONG = 800;
    private static final long MOVES = 300;
    private static final int BUILDS = 4;

    /** So that a long run can be followed. */
    private static final int TOLD_EVERY = 100;

    /** One seeded case. */
    private record Case(int seed, Brief brief, Catalogue catalogue, Random random) {
        static Case of(int seed) {
            Random random = new Random(seed);
            Catalogue catalogue =
                    switch (seed % 3) {
                        case 0 -> LargerWorld.ofSample(random);
                        case 1 -> LargerWorld.generated(random);
                        default -> SiblingWorld.crossed(random, 3);
                    };
            return new Case(seed, RandomBriefs.brief(random, catalogue), catalogue, random);
        }

        List<Objective> objectives() {
            return List.of(
                    Objective.leastMoney(),
                    Objective.mostUtility(),
                    Objective.weighted(1 + random.nextInt(5), 1 + random.nextInt(5)));
        }
    }

    @Test
    void builds_are_what_the_audit_says_and_bounds_hold() {
        List<String> untrue = new ArrayList<>();
        int answered = 0;
        int searches = 0;
        int proven = 0;
        for (int seed : IntStream.rangeClosed(1, CASES).boxed().collect(withFoundOut())) {
            Case it = Case.of(seed);
            SearchSpace space = SearchSpace.of(it.brief(), it.catalogue());
            if (space.candidates().impossible()) {
                continue;
            }
            Problem problem = space.within(it.brief().ceiling().minorUnits());
            List<Standing> known = drawn(it, problem);
            boolean any = false;
            for (Objective objective : it.objectives()) {
                Certificate quick =
                        new Certifier(problem, objective, SHORT, () -> false).run(Optional.empty());
                Certificate thorough =
                        new TwoStage(seed, MOVES, LONG, () -> false).best(problem, objective);
                List<Standing> all = new ArrayList<>(known);
                quick.best().ifPresent(all::add);
                thorough.best().ifPresent(all::add);
                for (Certificate certificate : List.of(quick, thorough)) {
                    judge(it, objective, certificate, all, untrue);
                }
                any |= thorough.best().isPresent();
                searches++;
                proven += thorough.complete() ? 1 : 0;
            }
            answered += any ? 1 : 0;
            if (seed % TOLD_EVERY == 0) {
                System.out.printf(
                        "%d cases, %d with a build, %d of %d searches proven, %d untrue%n",
                        seed, answered, proven, searches, untrue.size());
            }
        }
        assertThat(untrue).isEmpty();
        assertThat(answered).isGreaterThan(CASES / 3);
    }

    @Test
    void the_solver_finds_no_fault_in_its_own_scores() {
        for (int seed = 1, done = 0; done < ASSERTED; seed++) {
            Case it = Case.of(seed);
            SearchSpace space = SearchSpace.of(it.brief(), it.catalogue());
            if (space.candidates().impossible()) {
                continue;
            }
            done++;
            Problem problem = space.within(it.brief().ceiling().minorUnits());
            Standing found =
                    LocalSearch.run(
                            problem,
                            it.objectives().get(seed % 3),
                            Starter.start(problem),
                            MOVES,
                            seed,
                            EnvironmentMode.FULL_ASSERT);
            if (found.sound()) {
                assertThat(difference(it, found)).as("seed %d", seed).isEmpty();
            }
        }
    }

    /** Cut after 100 steps, 209 called a build proven that another one of its price beats. */
    private static Collector<Integer, ?, TreeSet<Integer>> withFoundOut() {
        return Collectors.toCollection(() -> new TreeSet<>(List.of(209)));
    }

    private static List<Standing> drawn(Case it, Problem problem) {
        RandomBuilds builds =
                new RandomBuilds(problem.assessor(), problem.candidates(), it.random());
        List<Standing> drawn = new ArrayList<>();
        for (int i = 0; i < BUILDS; i++) {
            Optional<Map<Slot, Candidate>> build = builds.next();
            if (build.isEmpty()) {
                break;
            }
            drawn.add(problem.standing(List.copyOf(build.get().values())));
        }
        drawn.removeIf(standing -> !standing.sound());
        return drawn;
    }

    private static void judge(
            Case it,
            Objective objective,
            Certificate certificate,
            List<Standing> known,
            List<String> untrue) {
        String where = "seed %d, %s: ".formatted(it.seed(), objective);
        certificate
                .best()
                .map(best -> difference(it, best))
                .filter(text -> !text.isEmpty())
                .ifPresent(text -> untrue.add(where + text));
        for (Standing standing : known) {
            long first = objective.first(standing.points(), standing.totalMinor());
            if (certificate.bound() < first - 1e-6 * Math.abs(first)) {
                untrue.add(where + "bound %s below %d".formatted(certificate.bound(), first));
            }
            if (certificate.complete() && better(standing, certificate.best(), objective)) {
                untrue.add(where + "proven, but %s is better".formatted(standing));
            }
        }
    }

    private static boolean better(Standing one, Optional<Standing> other, Objective objective) {
        if (other.isEmpty()) {
            return true;
        }
        Standing best = other.get();
        long first = objective.first(one.points(), one.totalMinor());
        long bestFirst = objective.first(best.points(), best.totalMinor());
        return first > bestFirst
                || first == bestFirst
                        && objective.second(one.points(), one.totalMinor())
                                > objective.second(best.points(), best.totalMinor());
    }

    /** What the audit says otherwise; empty for nothing. */
    private static String difference(Case it, Standing found) {
        Audit audit = new Auditor(it.brief(), it.catalogue()).audit(found.build());
        boolean same =
                found.sound()
                        && audit.fits()
                        && audit.points() == found.points()
                        && audit.cost().totalMinor() == found.totalMinor();
        return same
                ? ""
                : "search %d points, %d; audit %d points, %d, fits %s"
                        .formatted(
                                found.points(),
                                found.totalMinor(),
                                audit.points(),
                                audit.cost().totalMinor(),
                                audit.fits());
    }
}
