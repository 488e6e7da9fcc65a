package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.file.FolderFixture.aFolder;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;

/** The shipped schemas, judged by an independent validator, agree with the readers. */
class SchemaTest {
    private static final Path SCENARIOS = Path.of("scenarios");
    private static final String BRIEF = "urn:rigbrief:brief:1";
    private static final String BUILD = "urn:rigbrief:build:1";
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

    private static SchemaRegistry registry;
    private static Catalogue catalogue;

    @BeforeAll
    static void read(@TempDir Path folder) throws BadInput, IOException {
        catalogue = CatalogueReader.read(aFolder().write(folder));
        Map<String, String> schemas = Map.of(BRIEF, shipped("brief"), BUILD, shipped("build"));
        registry =
                SchemaRegistry.withDefaultDialect(
                        SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(schemas));
    }

    @Test
    void the_schemas_are_schemas_of_the_draft_they_name() throws IOException {
        Schema draft =
                registry.getSchema(
                        SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        for (String name : List.of("brief", "build")) {
            assertThat(draft.validate(shipped(name), InputFormat.JSON)).as(name).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {BriefText.FULL, BriefText.LEAST})
    void a_brief_that_is_read_is_valid(String text) throws BadInput, IOException {
        BriefReader.read(stream(text), "brief", catalogue);

        assertThat(remarks(BRIEF, text)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void every_scenario_is_valid(Path scenario) throws IOException {
        assertThat(remarks(BRIEF, Files.readString(scenario))).isEmpty();
    }

    static Stream<Path> scenarios() throws IOException {
        try (Stream<Path> files = Files.list(SCENARIOS)) {
            return files
                    .filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @Test
    void what_the_writers_write_is_valid() throws BadInput, IOException {
        Brief brief = BriefReader.read(stream(BriefText.FULL), "brief", catalogue);
        BuildRecord list = BuildReader.read(stream("tarn-6\nfell-b\nrill-32 x2"), "b", catalogue);
        BuildRecord build =
                new BuildRecord(
                        Optional.of(brief),
                        Optional.of("full"),
                        list.catalogueName(),
                        list.catalogueDigest(),
                        list.lines());

        assertThat(remarks(BRIEF, BriefWriter.write(brief))).isEmpty();
        assertThat(remarks(BUILD, BuildWriter.write(list))).isEmpty();
        assertThat(remarks(BUILD, BuildWriter.write(build))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("structuralFaults")
    void what_the_reader_refuses_for_its_structure_is_not_valid(String from, String to)
            throws IOException {
        String text = FolderFixture.replaceOnce(BriefText.FULL, from, to);

        assertThat(remarks(BRIEF, text)).isNotEmpty();
        assertThat(readable(text)).isFalse();
    }

    static Stream<Arguments> structuralFaults() {
        return Stream.of(
                        List.of("client: Osier Weir\n", ""),
                        List.of("currency: EUR\n", ""),
                        List.of("ceiling: 5400\n", ""),
                        List.of("quantity: 3", "quantitiy: 3"),
                        List.of("quantity: 3", "quantity: many"),
                        List.of("quantity: 3", "quantity: 0"),
                        List.of("ceiling: 5400", "ceiling: [5400]"),
                        List.of("ceiling: 5400", "ceiling: a lot"),
                        List.of("ceiling: 5400", "ceiling: -5"),
                        List.of("overrun: 2.5%", "overrun: 2.5"),
                        List.of("resolution: 3440x1440", "resolution: wide"),
                        List.of("resolution: 3440x1440, ", ""),
                        List.of("[dp1.4,", "[dp9,"),
                        List.of("use: map-room", "weight: 3"),
                        List.of("average: 72", "average: fast"),
                        List.of("finish-within: 1.5m", "finish-within: 90"),
                        List.of("weight: 4", "weight: 6"),
                        List.of("must: { average: 72, low: 50.5 }", "must: {}"),
                        List.of("lighting: none", "lighting: dim"),
                        List.of("colour: white", "colour: whitte"),
                        List.of("need: must", "need: shall"),
                        List.of("memory: { at-least: 32, ecc: no }", "memory: 32"),
                        List.of("ecc: no", "ecc: perhaps"),
                        List.of("front-ports: [usb-c, usb3]", "front-ports: usb-c"),
                        List.of("slot: case", "slot: tower"),
                        List.of("{ slot: case, part: barn-m }", "{ slot: case }"),
                        List.of("mains-v: 115", "mains-v: 220"),
                        List.of("quiet: 2", "quiet: 9"),
                        List.of("quiet: 2", "silence: 2"),
                        List.of("few-suppliers: 1", "few-suppliers: 1, simple-order: 2"),
                        List.of("tax: 19%", "tax: 19"))
                .map(pair -> Arguments.of(pair.get(0), pair.get(1)));
    }

    private static boolean readable(String text) {
        try {
            BriefReader.read(stream(text), "brief", catalogue);
            return true;
        } catch (BadInput bad) {
            return false;
        }
    }

    private static List<?> remarks(String schema, String yaml) throws IOException {
        JsonNode tree = YAML.readTree(yaml);
        return registry.getSchema(SchemaLocation.of(schema))
                .validate(tree.toString(), InputFormat.JSON);
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String shipped(String name) throws IOException {
        try (InputStream in =
                BriefReader.class.getResourceAsStream(
                        "/rigbrief/schema/" + name + ".schema.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
