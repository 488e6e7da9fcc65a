package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.api.Json;
import rigbrief.api.Rigbrief;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildWriter;
import rigbrief.proposal.replace.Trouble;

/** A Java program is told what the command line prints, to the byte. */
class SameAnswerAsApiTest {
    private static final Path TIGHT = Path.of("scenarios", "tight-600.yaml");

    private static Rigbrief shop;

    @BeforeAll
    static void open() throws BadInput {
        shop = Rigbrief.open(Path.of("catalog-sample"));
    }

    @Test
    void every_scenario_is_proposed_for_alike_alone_and_in_a_batch(@TempDir Path out)
            throws Exception {
        Captured batch = new Captured();

        batch.run("propose", "scenarios", "--format", "json", "--out", out.toString());

        try (Stream<Path> briefs = Files.list(Path.of("scenarios"))) {
            briefs.parallel()
                    .filter(file -> file.toString().endsWith(".yaml"))
                    .forEach(file -> assertAlike(file, out));
        }
    }

    private static void assertAlike(Path brief, Path out) {
        String name = brief.getFileName().toString().replace(".yaml", "");
        Path written = out.resolve(name).resolve(name + ".json");
        try {
            assertThat(Json.of(shop.propose(brief))).isEqualTo(Files.readString(written));
        } catch (IOException | BadInput e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tight-600", "writer", "impossible"})
    void a_scenario_is_proposed_for_alike(String name) throws Exception {
        String brief = "scenarios/" + name + ".yaml";
        Captured command = new Captured();

        command.run("propose", brief, "--format", "json");

        assertThat(Json.of(shop.propose(Path.of(brief)))).isEqualTo(command.out());
    }

    @Test
    void a_build_is_audited_and_replaced_alike(@TempDir Path folder) throws Exception {
        var record = shop.propose(TIGHT).proposals().get(0).record();
        Path file = Files.writeString(folder.resolve("lean.yaml"), BuildWriter.write(record));
        String board = record.build().board().id();
        Captured audit = new Captured();
        Captured replace = new Captured();

        audit.run("audit", file.toString(), "--format", "json");
        replace.run("replace", file.toString(), "--unavailable", board, "--format", "json");

        assertThat(Json.of(shop.audit(file))).isEqualTo(audit.out());
        assertThat(Json.of(file.toString(), shop.replace(shop.build(file), Trouble.without(board))))
                .isEqualTo(replace.out());
    }

    @Test
    void goals_are_priced_alike() throws Exception {
        Captured command = new Captured();

        command.run("budget", TIGHT.toString(), "--format", "json");

        assertThat(Json.of(shop.budget(shop.brief(TIGHT)))).isEqualTo(command.out());
    }
}
