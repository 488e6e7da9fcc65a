package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.cli.Packaged.Run;

/** The packaged program from outside: its launcher, its statuses, its bytes. */
class CommandIT {
    private static final String POTTER = "scenarios/potter.yaml";

    @TempDir Path folder;

    @Test
    void help_names_every_command() throws Exception {
        Run run = new Packaged().run("--help");

        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains("propose", "audit", "catalog", "rules", "help", "Exit status");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void the_version_is_the_builds_own() throws Exception {
        Run run = new Packaged().run("--version");

        assertThat(run.status()).isZero();
        assertThat(run.out()).matches("rigbrief [0-9]+[.][0-9]+[.][0-9]+\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--version", "--help", "propose --help"})
    void neither_solver_nor_readers_are_loaded_only_to_say_who_it_is(String line) throws Exception {
        Path log = folder.resolve("classes.log");

        new Packaged()
                .with("RIGBRIEF_JAVA_OPTIONS", "-Xlog:class+load=info:file=" + log)
                .run(line.split(" "));

        assertThat(Files.readAllLines(log))
                .anyMatch(loaded -> loaded.contains("rigbrief.cli.Program "))
                .noneMatch(loaded -> loaded.contains(" ai.timefold."))
                .noneMatch(loaded -> loaded.contains(" com.fasterxml."));
    }

    @Test
    void it_starts_through_a_link_and_from_any_folder() throws Exception {
        Path deep = Files.createDirectories(folder.resolve("a folder/deeper"));
        Path first = Files.createSymbolicLink(deep.resolve("rb"), new Packaged().launcher());
        Path second =
                Files.createSymbolicLink(folder.resolve("rb too"), Path.of("a folder/deeper/rb"));

        int straight = new Packaged().launcher(first).in(deep).run("--version").status();
        int twice = new Packaged().launcher(second).in(folder).run("--version").status();
        Files.delete(second);
        Files.delete(first);

        assertThat(straight).isZero();
        assertThat(twice).isZero();
    }

    @Test
    void it_uses_the_java_that_java_home_names() throws Exception {
        Run run = new Packaged().with("JAVA_HOME", folder.toString()).run("--version");

        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains("found no Java").contains(folder.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "propse", "propose", "propose a --format xml", "audit a --tme 2s"})
    void wrong_use_ends_with_2(String line) throws Exception {
        Run run = new Packaged().run(line.isEmpty() ? new String[0] : line.split(" "));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("rigbrief").contains("\nNext: rigbrief");
    }

    @Test
    void bad_input_ends_with_3_and_lists_every_fault_without_a_stack_trace() throws Exception {
        Path brief = folder.resolve("bad.yaml");
        Files.writeString(
                brief, "client: Marsh Lane Pottery\ncurrency: EUR\nceiling: -5\nquantity: none\n");

        Run run = new Packaged().run("propose", brief.toString());

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("bad.yaml:3:10: ceiling: ", "bad.yaml:4:11: quantity: ", "\n2 faults\n")
                .doesNotContain("\tat ", "Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"catalog stats", "propose " + POTTER, "audit list.txt"})
    void a_catalogue_that_is_not_there_ends_with_3(String line) throws Exception {
        Run run = new Packaged().run((line + " --catalog nowhere").split(" "));

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).startsWith("nowhere:1:1: ");
    }

    @Test
    void the_sample_catalogue_has_no_faults() throws Exception {
        Run run = new Packaged().run("catalog", "check");

        assertThat(run.out()).startsWith("catalog-sample: no faults\n");
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
    }

    @Test
    void a_brief_that_nothing_meets_ends_with_4_and_names_what_clashes() throws Exception {
        Run run = new Packaged().run("propose", "scenarios/impossible.yaml", "--format", "json");

        assertThat(run.status()).isEqualTo(4);
        JsonNode answer = json(run.out());
        assertThat(answer.get("result").asText()).isEqualTo("impossible");
        assertThat(answer.at("/impossible/clash")).isNotEmpty();
        assertThat(run.err()).contains("Next: ");
    }

    @Test
    void an_unfinished_list_of_parts_from_standard_input_ends_with_5() throws Exception {
        String processor = firstId("processor.csv");

        Run run = new Packaged().input("# a list\n" + processor + "\n").run("audit", "-");

        assertThat(run.status()).isEqualTo(5);
        assertThat(run.out()).startsWith("BREAKS ").contains("complete: ").contains("Next: ");
    }

    @Test
    void a_part_that_nobody_knows_ends_with_3() throws Exception {
        Run run = new Packaged().input("no-such-part\n").run("audit", "-");

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("no-such-part");
    }

    @Test
    void proposals_are_written_whole_and_every_one_of_them_passes_the_audit() throws Exception {
        Path out = folder.resolve("builds");

        Run run = propose(POTTER, "--format", "json", "--out", out.toString());

        assertThat(run.status()).isZero();
        JsonNode answer = json(run.out());
        assertThat(answer.at("/proposals")).hasSize(3);
        assertThat(files(out)).hasSize(3);
        for (JsonNode proposal : answer.at("/proposals")) {
            assertThat(total(proposal)).isEqualTo(sum(proposal));
            Path file = out.resolve("potter-" + proposal.get("tier").asText() + ".build.yaml");
            Run audit = new Packaged().run("audit", file.toString(), "--format", "json");
            assertThat(audit.status()).isZero();
            JsonNode judged = json(audit.out());
            assertThat(judged.get("verdict").asText()).isEqualTo("fits");
            assertThat(judged.at("/cost/total")).isEqualTo(proposal.at("/cost/total"));
            assertThat(judged.get("utility")).isEqualTo(proposal.get("utility"));
        }
    }

    @Test
    void files_that_are_there_are_not_touched_without_force() throws Exception {
        Path there = Files.writeString(folder.resolve("potter-full.build.yaml"), "mine");

        Run run = new Packaged().run("propose", POTTER, "--out", folder.toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("potter-full.build.yaml: found a file", "--force");
        assertThat(there).hasContent("mine");
        assertThat(files(folder)).hasSize(1);
    }

    @Test
    void the_same_brief_and_seed_give_the_same_bytes_in_a_smaller_heap_too() throws Exception {
        Run usual = propose("scenarios/writer.yaml", "--seed", "3");
        Run small =
                new Packaged()
                        .with("RIGBRIEF_JAVA_OPTIONS", "-Xmx256m")
                        .run("propose", "scenarios/writer.yaml", "--seed", "3");

        assertThat(usual.status()).isZero();
        assertThat(small.out()).isEqualTo(usual.out());
    }

    @Test
    void text_is_utf_8_with_line_feeds_and_nothing_that_acts_whatever_the_locale()
            throws Exception {
        Run run = new Packaged().with("LC_ALL", "C").run("audit", list());

        assertThat(run.out()).contains("°C").doesNotContain("\r", "\u001b", "\ufffd", "?C");
        assertThat(run.out()).contains("\nNext: change what is broken, then rigbrief audit ");
    }

    @Test
    void a_brief_may_come_from_standard_input() throws Exception {
        String brief = Files.readString(Path.of("scenarios/impossible.yaml"));

        Run run = new Packaged().input(brief).run("propose", "-");

        assertThat(run.status()).isEqualTo(4);
        assertThat(run.out()).startsWith("Brief \"brief\" for ");
    }

    private static Run propose(String brief, String... options) throws Exception {
        List<String> line = Stream.concat(Stream.of("propose", brief), Stream.of(options)).toList();
        return new Packaged().run(line.toArray(String[]::new));
    }

    /** A whole machine, if not one that fits: the first part of each kind that is required. */
    private String list() throws IOException {
        StringBuilder list = new StringBuilder();
        for (String kind :
                List.of("processor", "board", "memory", "drive", "supply", "cooler", "case")) {
            list.append(firstId(kind + ".csv")).append('\n');
        }
        return Files.writeString(folder.resolve("list.txt"), list).toString();
    }

    private static String firstId(String file) throws IOException {
        List<String> lines = Files.readAllLines(Path.of("catalog-sample", file));
        int column = List.of(lines.get(0).split(",")).indexOf("id");
        return lines.get(1).split(",")[column];
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    private static BigDecimal total(JsonNode proposal) {
        return money(proposal, "total");
    }

    private static BigDecimal sum(JsonNode proposal) {
        return money(proposal, "parts")
                .add(money(proposal, "delivery"))
                .add(money(proposal, "fees"))
                .add(money(proposal, "tax"));
    }

    private static BigDecimal money(JsonNode proposal, String field) {
        return new BigDecimal(proposal.get("cost").get(field).textValue());
    }

    private static JsonNode json(String text) throws IOException {
        return new ObjectMapper().readTree(text);
    }
}
