package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Shape;
import rigbrief.catalogue.Workload;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.file.OverlayWriter;
import rigbrief.fixture.WorkloadFixture;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Dominance;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.rule.Rules;

/** A bound that once falls below a build that exists would make every proof worthless. */
class BoundTest {
    private static final int CHANGES = 1_500;
    private static Catalogue sample;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "potter",
                "editor",
                "cad",
                "streamer",
                "living-room",
                "keeper",
                "competitor",
                "tight-600",
                "writer",
                "school-workshop",
                "forty-desks"
            })
    void no_bound_on_the_way_to_a_sound_build_is_below_that_build(String scenario)
            throws Exception {
        check(problem(scenario, sample()));
    }

    /** As without each must the utility is asked for: rules by one brief, goals by another. */
    @ParameterizedTest
    @ValueSource(strings = {"potter", "cad", "streamer", "living-room", "tight-600", "writer"})
    void bounds_hold_where_nobody_insists_on_any_must_that_a_goal_begins_at(String scenario)
            throws Exception {
        Brief brief = scenario(scenario, sample());
        Needs needs = Needs.of(brief, sample());
        List<Need> musts =
                needs.musts().stream().filter(need -> need.kind() == Need.Kind.MUST).toList();

        check(
                SearchSpace.of(needs.without(musts), brief, sample(), Rules.ALL_BUT_IDLE)
                        .within(brief.ceiling().minorUnits()));
    }

    /** Titles whose frame times come together each in its own way. */
    @ParameterizedTest
    @ValueSource(strings = {"potter", "competitor", "streamer"})
    void shapes_of_titles_leave_the_bounds_true(String scenario, @TempDir Path overlay)
            throws Exception {
        List<Workload> shaped = new ArrayList<>();
        Random random = new Random(5);
        for (Workload workload : sample().workloads()) {
            shaped.add(workload instanceof FrameRate title ? shaped(title, random) : workload);
        }
        OverlayWriter.write(overlay, shaped, List.of(), List.of(), false);
        List<Path> both = List.of(Path.of("catalog-sample"), overlay);

        check(problem(scenario, CatalogueReader.readNoted(both).catalogue()));
    }

    private static FrameRate shaped(FrameRate title, Random random) {
        return WorkloadFixture.shaped(
                title,
                new Shape(
                        1 + 12 * random.nextDouble(),
                        0.3 * random.nextDouble(),
                        5 * random.nextDouble()));
    }

    private static void check(Problem problem) {
        List<Standing> builds = builds(problem);

        for (Objective objective :
                List.of(
                        Objective.leastMoney(),
                        Objective.mostUtility(),
                        Objective.weighted(problem.limitMinor(), problem.mostPoints()))) {
            Certifier certifier = new Certifier(problem, objective, 1, () -> false);
            Map<Slot, List<Candidate>> looked =
                    Dominance.undominated(
                            problem.assessor(), problem.candidates(), objective.perPoint() == 0);
            int asked = 0;
            for (Standing build : builds) {
                if (!within(build, looked)) {
                    continue; // the certifier looks for such a build's better twin instead
                }
                asked++;
                double own = objective.first(build.points(), build.totalMinor());
                for (Bounder.Bound bound : certifier.boundsTowards(build)) {
                    assertThat(bound.first())
                            .as("%s on the way to %s", objective, build.build())
                            .isGreaterThanOrEqualTo(own - 1e-6 * Math.abs(own));
                }
            }
            assertThat(asked).as("builds that %s may choose", objective).isPositive();
        }
        assertThat(builds).hasSizeGreaterThan(5);
    }

    private static boolean within(Standing build, Map<Slot, List<Candidate>> looked) {
        return build.choices().stream()
                .allMatch(choice -> looked.get(choice.slot()).contains(choice));
    }

    private static Catalogue sample() throws Exception {
        sample = sample == null ? CatalogueReader.read(Path.of("catalog-sample")) : sample;
        return sample;
    }

    private static Brief scenario(String name, Catalogue catalogue) throws Exception {
        return BriefReader.read(Path.of("scenarios", name + ".yaml"), catalogue);
    }

    private static Problem problem(String scenario, Catalogue catalogue) throws Exception {
        Brief brief = scenario(scenario, catalogue);
        return SearchSpace.of(brief, catalogue).within(brief.ceiling().minorUnits());
    }

    /** Sound builds around a cheap one and a good one, by changing one to three slots at random. */
    private static List<Standing> builds(Problem problem) {
        Random random = new Random(1);
        List<Standing> builds = new ArrayList<>();
        for (Objective objective : List.of(Objective.leastMoney(), Objective.mostUtility())) {
            new Certifier(problem, objective, 20_000, () -> false)
                    .run(Optional.empty())
                    .best()
                    .ifPresent(builds::add);
        }
        for (int change = 0; change < CHANGES; change++) {
            Standing from = builds.get(random.nextInt(builds.size()));
            Candidate[] choices = from.choices().toArray(Candidate[]::new);
            for (int slots = 1 + random.nextInt(3); slots > 0; slots--) {
                Slot slot = Slot.values()[random.nextInt(choices.length)];
                List<Candidate> others = problem.candidates().of(slot);
                choices[slot.ordinal()] = others.get(random.nextInt(others.size()));
            }
            Standing found = problem.soundStanding(choices, null, Objective.leastMoney());
            if (found != null) {
                builds.add(found);
            }
        }
        return builds;
    }
}
