package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same question gives the same bytes, wherever the machine stands and however it counts. */
class SameBytesIT {
    private static final Path SAMPLE = Path.of("catalog-sample");
    private static final Path JAVA = Path.of(System.getProperty("java.home"));
    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");

    /** Work done on the way, not part of the answer: rows decide what is looked at first. */
    private static final Pattern STEPS = Pattern.compile("\"steps\" : [0-9]+");

    /** Lists of parts, which stand in the catalogue's own order. */
    private static final Set<String> LISTS =
            Set.of("calibrate.txt", "check.txt", "form.html", "overlay/rates.csv", "stats.json");

    private static final List<String> ELSEWHERE =
            List.of(
                    "-XX:ActiveProcessorCount=2",
                    "-Xmx1g",
                    "-Duser.language=ar",
                    "-Duser.country=EG",
                    "-Duser.timezone=America/Caracas");

    @TempDir static Path folder;

    private static Map<String, byte[]> usual;
    private static Map<String, String> texts;

    @BeforeAll
    static void asUsual() throws IOException {
        EveryCommand here = EveryCommand.run(folder.resolve("usual"), SAMPLE, JAVA, List.of());
        usual = here.left();
        texts = here.texts();
    }

    private static void assertSame(String name, Path java, String options) throws IOException {
        EveryCommand there =
                EveryCommand.run(
                        folder.resolve(name), SAMPLE, java, List.of(options.strip().split(" +")));

        Map<String, byte[]> found = there.left();
        assertThat(found.keySet()).isEqualTo(usual.keySet());
        // Bytes first: a difference in a long text is better told by its name.
        assertThat(usual.keySet().stream().filter(it -> differs(found, it))).as(name).isEmpty();
    }

    private static boolean differs(Map<String, byte[]> found, String name) {
        return !Arrays.equals(found.get(name), usual.get(name));
    }

    /** Where there is no other Java, on this one. */
    @Test
    void another_java_on_one_core_in_another_locale_zone_and_heap_changes_no_byte()
            throws Exception {
        List<Path> others = otherJavas();
        for (Path java : others.isEmpty() ? List.of(JAVA) : others) {
            assertSame(
                    java.getFileName().toString(),
                    java,
                    "-XX:ActiveProcessorCount=1 -Xmx320m -XX:-UseSerialGC -XX:+UseParallelGC"
                            + " -Duser.language=tr -Duser.country=TR"
                            + " -Duser.timezone=Pacific/Auckland");
        }
    }

    /** The archive beside the program is that of the Java it was built with. */
    @Test
    void another_java_has_nothing_to_say_of_its_own() throws Exception {
        List<Path> others = otherJavas();
        assumeFalse(others.isEmpty(), "there is no other Java beside " + JAVA);
        for (Path java : others) {
            var run = new Packaged().with("JAVA_HOME", java.toString()).run("--version");

            assertThat(run.status()).isZero();
            assertThat(run.err()).as(java.toString()).isEmpty();
        }
    }

    /** Homes of Java that lie beside the one that runs, each once. */
    private static List<Path> otherJavas() throws IOException {
        List<Path> homes = new ArrayList<>();
        Path mine = JAVA.toRealPath();
        try (Stream<Path> beside = Files.list(mine.getParent())) {
            for (Path home : beside.sorted().toList()) {
                Path real = home.toRealPath();
                boolean runs = Files.isExecutable(real.resolve("bin").resolve("java"));
                if (runs && !real.equals(mine) && !homes.contains(real)) {
                    homes.add(real);
                }
            }
        }
        return homes;
    }

    @Test
    void a_third_locale_and_zone_of_the_packaged_program_change_no_byte() throws Exception {
        String options =
                "-Duser.language=de -Duser.country=DE -Duser.timezone=Europe/Berlin"
                        + " -XX:-TieredCompilation";
        var elsewhere =
                new Packaged()
                        .with("RIGBRIEF_JAVA_OPTIONS", options)
                        .run("propose", "scenarios/tight-600.yaml", "--format", "json");

        assertThat(elsewhere.status()).isZero();
        assertThat(elsewhere.out()).isEqualTo(texts.get("propose.json"));
    }

    @Test
    void rows_in_another_order_change_no_answer() throws Exception {
        Path shuffled = Files.createDirectory(folder.resolve("shuffled-catalogue"));
        Random random = new Random(1);
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path file : files.sorted().toList()) {
                copyShuffled(file, shuffled, random);
            }
        }

        Map<String, String> found =
                EveryCommand.run(folder.resolve("shuffled"), shuffled, JAVA, ELSEWHERE).texts();

        assertThat(found.keySet()).isEqualTo(texts.keySet());
        assertThat(texts.keySet())
                .filteredOn(it -> !answer(it, found.get(it)).equals(answer(it, texts.get(it))))
                .isEmpty();
    }

    private static void copyShuffled(Path file, Path to, Random random) throws IOException {
        List<String> rows = new ArrayList<>(Files.readAllLines(file, StandardCharsets.UTF_8));
        if (file.toString().endsWith(".csv")) {
            Collections.shuffle(rows.subList(1, rows.size()), random);
        }
        Files.write(to.resolve(file.getFileName()), rows);
    }

    /** What is answered, whatever the catalogue's digest. */
    private static String answer(String name, String text) {
        String answer = DIGEST.matcher(text).replaceAll("sha256:-");
        answer = STEPS.matcher(answer).replaceAll("\"steps\" : -");
        if (LISTS.contains(name)) {
            return String.join(" ", Stream.of(answer.split("[\\s,<>]+")).sorted().toList());
        }
        // Of the parts that a list leaves out it names the first few.
        return name.equals("import.txt")
                ? answer.replaceAll("(?s)Not in the list.*? more[.]", "")
                : answer;
    }

    @Test
    void measurements_listed_in_another_order_give_the_same_fit() throws Exception {
        Map<String, String> fits = new TreeMap<>();
        Path work = folder.resolve("usual");
        for (List<String> order :
                List.of(List.of("first.csv", "second.csv"), List.of("second.csv", "first.csv"))) {
            String out = folder.resolve("fit-" + order.get(0)).toString();
            List<String> line =
                    List.of(
                            "calibrate",
                            "--measured",
                            work.resolve(order.get(0)).toString(),
                            work.resolve(order.get(1)).toString(),
                            "--out",
                            out);

            assertThat(new Captured().run(line.toArray(String[]::new))).isEqualTo(ExitStatus.DONE);
            fits.put(
                    order.get(0),
                    Files.readString(Path.of(out, "workloads.yaml"))
                            + Files.readString(Path.of(out, "rates.csv")));
        }

        assertThat(fits.get("second.csv")).isEqualTo(fits.get("first.csv"));
    }
}
