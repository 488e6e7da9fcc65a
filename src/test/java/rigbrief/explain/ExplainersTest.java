package rigbrief.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.Assessed.assessed;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.BuildFixture.anEmptyBuild;
import static rigbrief.fixture.ProcessorFixture.aProcessor;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;

/**
 * Every step of every explanation is put into a pocket calculator: what it makes of the expression
 * must be the value printed beside it.
 */
class ExplainersTest {
    record Machine(String name, Assessment it) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Machine> machines() throws BadInput {
        Catalogue parts = CatalogueReader.read(Path.of("catalog-sample"));
        return List.of(
                machine(
                        parts,
                        "potter",
                        "merrowby-courante-6-n",
                        "skerrowby-cove-1644m",
                        "lathmere-plainbar-2x16-d5-5600-c46",
                        "garrowick-couplet-sorrel-280",
                        "slatecombe-chip-1-tb",
                        "wattlemarsh-weir-650",
                        "brackenfin-frond-92",
                        "coffermere-bin-40",
                        "brackenfin-leaf-120",
                        "hobbinfold-tether-6"),
                machine(
                        parts,
                        "school-workshop",
                        "ostrel-worsted-6-g",
                        "hobbinfold-plain-880m",
                        "lathmere-plainbar-2x16-d4-3200-c22",
                        "slatecombe-flint-500-gb",
                        "wattlemarsh-fen-500",
                        "hobbinfold-deskmate-m",
                        "brackenfin-leaf-120",
                        "glimmerhythe-pane-24"),
                machine(
                        parts,
                        "cad",
                        "merrowby-saraband-16",
                        "skerrowby-firth-1920w",
                        "tollgarth-plumb-1x32-d5-4800-c40-ecc x2",
                        "umberhythe-twin-lampwick-520",
                        "slatecombe-chip-2-tb",
                        "grindlewick-mainspring-750",
                        "galebourne-undertow-240-glow",
                        "eskerlund-skap-white",
                        "pennyroyal-hearthside-7-workshop"),
                machine(
                        parts,
                        "editor",
                        "merrowby-saraband-12",
                        "quernstow-lintel-1920",
                        "lathmere-plainbar-2x32-d5-5600-c46",
                        "garrowick-couplet-sorrel-260-white",
                        "murmurel-cataract-1-tb",
                        "obbleton-millstone-4-tb",
                        "grindlewick-mainspring-850",
                        "hushmere-tor-white",
                        "coffermere-bin-44",
                        "pennyroyal-hearthside-7-office"),
                new Machine("fixture", assessed(aBuild(), aBrief().wish("quiet", 3))));
    }

    private static Machine machine(Catalogue parts, String scenario, String... ids)
            throws BadInput {
        Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), parts);
        byte[] list = String.join("\n", ids).getBytes(StandardCharsets.UTF_8);
        Build build = BuildReader.read(new ByteArrayInputStream(list), scenario, parts).build();
        for (Kept kept : brief.keep()) {
            build = build.with(kept.slot(), kept.part(), kept.pieces());
        }
        return new Machine(scenario, new Assessor(brief, parts).assess(build));
    }

    static Stream<Explanation> explanations() throws BadInput {
        return machines().stream()
                .flatMap(machine -> Explainers.topics(machine.it()).stream())
                .map(topic -> topic.explanation().get());
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void every_step_can_be_redone_with_a_calculator(Explanation explanation) {
        assertThat(explanation.steps()).isNotEmpty();

        Redone.check(explanation);
    }

    @ParameterizedTest
    @MethodSource("explanations")
    void the_last_step_gives_the_number(Explanation explanation) {
        String last = explanation.steps().get(explanation.steps().size() - 1);

        assertThat(last)
                .endsWith(
                        (" = "
                                        + explanation.value().orElseThrow().toPlainString()
                                        + " "
                                        + explanation.unit())
                                .stripTrailing());
        assertThat(explanation.formula()).isNotBlank();
        assertThat(explanation.source()).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("machines")
    void names_are_unique_and_name_what_they_explain(Machine machine) {
        List<Topic> topics = Explainers.topics(machine.it());

        assertThat(topics).extracting(Topic::name).doesNotHaveDuplicates();
        assertThat(topics)
                .allSatisfy(
                        topic -> {
                            Explanation explanation = topic.explanation().get();
                            assertThat(explanation.number()).isEqualTo(topic.name());
                            assertThat(explanation.title()).isEqualTo(topic.title());
                        });
    }

    @Test
    void of_an_unfinished_build_only_the_cost_is_explained() {
        List<Topic> topics = Explainers.topics(assessed(anEmptyBuild().with(aProcessor())));

        assertThat(topics).isNotEmpty().allMatch(topic -> topic.name().startsWith("cost."));
    }
}
