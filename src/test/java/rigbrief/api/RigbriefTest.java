package rigbrief.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildWriter;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.SearchLimits;
import rigbrief.proposal.replace.Trouble;

class RigbriefTest {
    private static final Path CATALOGUE = Path.of("catalog-sample");
    private static final Path TIGHT = Path.of("scenarios", "tight-600.yaml");

    private static final Path WRITER = Path.of("scenarios", "writer.yaml");

    private static Rigbrief shop;

    @BeforeAll
    static void open() throws BadInput {
        shop = Rigbrief.open(CATALOGUE);
    }

    private static Rigbrief quick() {
        return shop.within(new SearchLimits(1, 50, 300, Optional.empty()));
    }

    @Test
    void one_catalogue_answers_several_threads_as_it_answers_one() throws Exception {
        List<Path> briefs = List.of(TIGHT, WRITER, TIGHT, WRITER, WRITER, TIGHT);
        List<String> alone = new ArrayList<>();
        for (Path brief : briefs.subList(0, 2)) {
            alone.add(Json.of(quick().propose(brief)));
        }

        ExecutorService hands = Executors.newFixedThreadPool(4);
        List<Future<String>> together = new ArrayList<>();
        for (Path brief : briefs) {
            together.add(hands.submit(() -> Json.of(quick().propose(brief))));
        }

        for (int i = 0; i < briefs.size(); i++) {
            assertThat(together.get(i).get())
                    .as("%s", briefs.get(i))
                    .isEqualTo(alone.get(briefs.get(i).equals(TIGHT) ? 0 : 1));
        }
        hands.shutdown();
    }

    @Test
    void a_brief_out_of_a_stream_is_answered_like_the_file() throws Exception {
        byte[] text = Files.readAllBytes(TIGHT);

        Brief brief = shop.brief(new ByteArrayInputStream(text), "mail");

        assertThat(Json.of(quick().propose(brief)))
                .isEqualTo(
                        Json.of(quick().propose(TIGHT))
                                .replace("\"brief\" : \"tight-600\"", "\"brief\" : \"brief\""));
    }

    @Test
    void faults_come_as_one_exception_with_all_of_them() {
        var text = "client: Ida\ncurrency: EUR\nceiling: -5\nnoise: { must: loud }\n";

        BadInput bad =
                catchThrowableOfType(
                        BadInput.class,
                        () ->
                                shop.brief(
                                        new ByteArrayInputStream(
                                                text.getBytes(StandardCharsets.UTF_8)),
                                        "mail"));

        assertThat(bad.faults()).extracting(fault -> fault.file()).containsOnly("mail");
        assertThat(bad.faults()).extracting(fault -> fault.line()).contains(3, 4);
        assertThat(bad.count()).isEqualTo(bad.faults().size());
    }

    @Test
    void a_folder_that_is_no_catalogue_is_refused() {
        BadInput bad =
                catchThrowableOfType(BadInput.class, () -> Rigbrief.open(Path.of("nowhere")));

        assertThat(bad.faults()).singleElement().extracting(it -> it.file()).isEqualTo("nowhere");
    }

    @Test
    void a_search_that_is_called_off_ends_and_says_so() throws BadInput {
        Proposals answer = shop.calledOffBy(() -> true).propose(TIGHT);

        assertThat(answer.remarks()).anyMatch(remark -> remark.contains("called off"));
        assertThat(answer.proposals()).allMatch(it -> !it.proof().proven() || it.audit().fits());
    }

    @Test
    void no_thread_outlives_its_answer() throws Exception {
        quick().propose(TIGHT);
        long before = Thread.getAllStackTraces().size();

        for (int i = 0; i < 5; i++) {
            quick().propose(TIGHT);
        }

        assertThat(Thread.getAllStackTraces().size()).isLessThanOrEqualTo((int) before);
    }

    @Test
    void a_default_locale_with_commas_changes_no_byte() throws BadInput {
        String plain = Json.of(quick().propose(TIGHT));
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.GERMANY);
        try {
            assertThat(Json.of(quick().propose(TIGHT))).isEqualTo(plain);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void a_filed_build_is_audited_by_its_own_brief(@TempDir Path folder) throws Exception {
        BuildRecord record = quick().propose(TIGHT).proposals().get(0).record();
        Path file = Files.writeString(folder.resolve("lean.yaml"), BuildWriter.write(record));

        var answer = shop.audit(file);

        assertThat(answer.audit().fits()).isTrue();
        assertThat(answer.brief().client()).isEqualTo("Wren, aged fifteen");
    }

    @Test
    void a_part_that_is_gone_is_replaced() throws BadInput {
        BuildRecord record = quick().propose(TIGHT).proposals().get(0).record();
        String supply =
                record.lines().stream()
                        .filter(line -> line.slot().word().equals("supply"))
                        .findFirst()
                        .orElseThrow()
                        .part()
                        .id();

        var answer = shop.replace(record, Trouble.without(supply));

        assertThat(answer.ways()).isNotEmpty();
        assertThat(answer.ways().get(0).record().lines())
                .noneMatch(line -> line.part().id().equals(supply));
    }

    @Test
    void the_readme_example_is_one_that_compiles_and_answers() throws IOException {
        String source = Files.readString(Path.of("src/test/java/rigbrief/api/Example.java"));
        String example =
                source.substring(
                                source.indexOf("// example\n") + "// example\n".length(),
                                source.indexOf("        // end of example"))
                        .indent(-8);

        assertThat(Files.readString(Path.of("README.md"))).contains("```java\n" + example + "```");
        assertThat(Example.cheapest(CATALOGUE, TIGHT, new AtomicBoolean()))
                .isEqualTo("47963 proven");
        assertThat(Example.cheapest(CATALOGUE, Path.of("none.yaml"), new AtomicBoolean()))
                .startsWith("none.yaml:1:1: ");
    }
}
