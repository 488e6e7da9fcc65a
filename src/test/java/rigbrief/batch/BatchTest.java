package rigbrief.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.api.Json;
import rigbrief.api.Rigbrief;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Faults;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.SearchLimits;
import rigbrief.report.BatchCsv;
import rigbrief.report.Style;

class BatchTest {
    private static final Origin ORIGIN = new Origin("1", "sha256:0", "steps=50");

    private static Rigbrief shop;
    private static final Map<String, Proposals> ANSWERS = new TreeMap<>();

    @TempDir Path folder;

    private final AtomicInteger answered = new AtomicInteger();
    private Path briefs;

    @BeforeAll
    static void answer() throws IOException, BadInput {
        shop =
                Rigbrief.open(Path.of("catalog-sample"))
                        .within(new SearchLimits(1, 20, 50, Optional.empty()));
        for (String name : List.of("keeper", "tight-600", "writer")) {
            ANSWERS.put(name + ".yaml", shop.propose(Path.of("scenarios", name + ".yaml")));
        }
    }

    @BeforeEach
    void someBriefs() throws IOException {
        briefs = Files.createDirectories(folder.resolve("briefs"));
        for (String name : ANSWERS.keySet()) {
            Files.copy(Path.of("scenarios", name), briefs.resolve(name));
        }
    }

    /** Searching is the API's matter; here it is enough that the brief is read. */
    private Proposals answer(Path brief) throws BadInput {
        answered.incrementAndGet();
        shop.brief(brief);
        return ANSWERS.get(brief.getFileName().toString());
    }

    private static Map<String, byte[]> files(Proposals answer) {
        return Map.of(
                answer.brief().name() + ".json", Json.of(answer).getBytes(StandardCharsets.UTF_8));
    }

    private BatchAnswer run(String out, Origin origin, int threads) throws BadInput {
        Path results = folder.resolve(out);
        return new Batch(this::answer, BatchTest::files, origin, results, false, () -> false)
                .run(BatchBriefs.of(List.of(briefs), new Faults()), threads, done -> {});
    }

    private static String summary(BatchAnswer answer) {
        return new BatchCsv().write(answer, Style.PLAIN);
    }

    private Map<String, String> bytes(String out) throws IOException {
        Map<String, String> found = new TreeMap<>();
        Path root = folder.resolve(out);
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                found.put(root.relativize(file).toString(), Files.readString(file));
            }
        }
        return found;
    }

    @Test
    void the_number_of_threads_changes_no_byte() throws Exception {
        String alone = summary(searching("one", 1));
        String together = summary(searching("four", 4));

        assertThat(together).isEqualTo(alone);
        assertThat(bytes("four")).isEqualTo(bytes("one")).hasSize(6);
    }

    private BatchAnswer searching(String out, int threads) throws BadInput {
        Path results = folder.resolve(out);
        return new Batch(shop::propose, BatchTest::files, ORIGIN, results, false, () -> false)
                .run(BatchBriefs.of(List.of(briefs), new Faults()), threads, done -> {});
    }

    @Test
    void what_is_answered_is_not_answered_again() throws Exception {
        String first = summary(run("out", ORIGIN, 2));

        BatchAnswer again = run("out", ORIGIN, 2);

        assertThat(answered).hasValue(3);
        assertThat(again.before()).isEqualTo(3);
        assertThat(summary(again)).isEqualTo(first);
    }

    @Test
    void a_brief_a_catalogue_or_an_option_that_changed_is_answered_anew() throws Exception {
        run("out", ORIGIN, 2);
        Path one = briefs.resolve("keeper.yaml");
        Files.writeString(one, Files.readString(one) + "# later\n");

        run("out", ORIGIN, 2);
        assertThat(answered).hasValue(4);

        run("out", new Origin("1", "sha256:1", "steps=50"), 2);
        assertThat(answered).hasValue(7);

        run("out", new Origin("1", "sha256:1", "steps=300"), 2);
        assertThat(answered).hasValue(10);

        run("out", new Origin("2", "sha256:1", "steps=300"), 2);
        assertThat(answered).hasValue(13);
    }

    @Test
    void a_brief_that_fails_stops_no_other_and_is_told_with_all_its_faults() throws Exception {
        Files.writeString(briefs.resolve("bad.yaml"), "ceiling: -5\nquantity: none\n");

        BatchAnswer answer = run("out", ORIGIN, 2);

        assertThat(answer.count(Ending.PROPOSED)).isEqualTo(3);
        BatchResult failure = answer.failures().get(0);
        assertThat(answer.failures()).hasSize(1);
        assertThat(failure.ending()).isEqualTo(Ending.BAD_INPUT);
        assertThat(failure.diagnostics()).hasSizeGreaterThan(2).hasSize(failure.faults());
        assertThat(failure.diagnostics().get(0)).startsWith(briefs.resolve("bad.yaml") + ":");
    }

    @Test
    void a_fault_of_the_program_stops_no_other() throws Exception {
        Batch batch =
                new Batch(
                        brief -> {
                            if (brief.endsWith("writer.yaml")) {
                                throw new IllegalStateException("found a hole");
                            }
                            return answer(brief);
                        },
                        BatchTest::files,
                        ORIGIN,
                        folder.resolve("out"),
                        false,
                        () -> false);

        BatchAnswer answer =
                batch.run(BatchBriefs.of(List.of(briefs), new Faults()), 2, done -> {});

        assertThat(answer.count(Ending.PROPOSED)).isEqualTo(2);
        assertThat(answer.failures())
                .singleElement()
                .satisfies(it -> assertThat(it.diagnostics().get(0)).contains("found a hole"));
    }

    @Test
    void a_batch_that_is_called_off_keeps_whole_results_and_goes_on_later() throws Exception {
        AtomicInteger begun = new AtomicInteger();
        Batch cut =
                new Batch(
                        brief -> {
                            begun.incrementAndGet();
                            return ANSWERS.get(brief.getFileName().toString());
                        },
                        BatchTest::files,
                        ORIGIN,
                        folder.resolve("cut"),
                        false,
                        () -> begun.get() > 1);

        BatchAnswer partial = cut.run(BatchBriefs.of(List.of(briefs), new Faults()), 1, done -> {});

        assertThat(partial.count(Ending.PROPOSED)).isEqualTo(1);
        assertThat(partial.count(Ending.CALLED_OFF)).isEqualTo(2);
        assertThat(bytes("cut")).hasSize(2);

        String later = summary(run("cut", ORIGIN, 2));

        assertThat(answered).hasValue(2);
        assertThat(later).isEqualTo(summary(run("whole", ORIGIN, 2)));
        assertThat(bytes("cut")).isEqualTo(bytes("whole"));
    }

    @Test
    void a_result_that_was_changed_is_left_alone_and_told() throws Exception {
        run("out", ORIGIN, 2);
        Path file = folder.resolve("out/keeper/keeper.json");
        Files.writeString(file, "half");

        BatchAnswer again = run("out", ORIGIN, 2);

        assertThat(again.failures())
                .singleElement()
                .extracting(BatchResult::ending)
                .isEqualTo(Ending.NOT_WRITTEN);
        assertThat(file).hasContent("half");
    }

    @Test
    void progress_is_told_up_to_the_last() throws Exception {
        List<Integer> told = new ArrayList<>();

        new Batch(this::answer, BatchTest::files, ORIGIN, folder.resolve("out"), false, () -> false)
                .run(BatchBriefs.of(List.of(briefs), new Faults()), 3, told::add);

        assertThat(told).containsExactly(1, 2, 3);
    }
}
