package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;
import rigbrief.file.PriceFile;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.pricelist.PriceHistory.Series;

/**
 * A program killed at any moment leaves every file whole, and loses nothing that was done.
 *
 * <p>It works without a pause, so that most of the kills fall into its work on files. What it has
 * ended it says; what is found must be that, or one step further.
 */
class KilledProgramIT {
    private static final int KILLS = Integer.getInteger("rigbrief.kills", 50);
    private static final int LONGEST_MS = 120;
    private static final int SEARCHING_MS = 1_000;
    private static final Path SAMPLE = Path.of("catalog-sample");

    @TempDir Path folder;

    private final Random random = new Random(1);

    @BeforeEach
    void aSmallCatalogue() throws IOException {
        for (String name : List.of("catalog.yaml", "workloads.yaml", "wireless.csv", "brace.csv")) {
            Files.copy(SAMPLE.resolve(name), folder.resolve(name));
        }
        Set<String> ids = new TreeSet<>(idsOf("wireless.csv"));
        ids.addAll(idsOf("brace.csv"));
        Files.write(
                folder.resolve("offers.csv"),
                Files.readAllLines(SAMPLE.resolve("offers.csv")).subList(0, 1));
        Files.write(folder.resolve("listed"), ids);
        Files.writeString(
                folder.resolve("map.yaml"),
                "supplier: quaymark\n"
                        + "columns: { id: id, price: price, stock: stock, lead-days: days }\n");
    }

    private static List<String> idsOf(String file) throws IOException {
        return Files.readAllLines(SAMPLE.resolve(file)).stream()
                .skip(1)
                .map(KilledProgramIT::first)
                .toList();
    }

    private static String first(String line) {
        return line.substring(0, line.indexOf(','));
    }

    @Test
    void a_build_file_is_whole_and_nothing_noted_is_lost() throws Exception {
        for (int kill = 0; kill < KILLS; kill++) {
            writeBuild();

            int done = killed("order");

            Catalogue catalogue = CatalogueReader.read(folder);
            BuildRecord found = BuildReader.read(folder.resolve("desk.build.yaml"), catalogue);
            assertThat(found.history()).as("kill %d", kill).hasSizeBetween(done, done + 1);
        }
    }

    @Test
    void offers_and_their_history_are_those_of_one_price_list_whole() throws Exception {
        Path fresh = Files.copy(folder.resolve("offers.csv"), folder.resolve("offers.before"));
        for (int kill = 0; kill < KILLS; kill++) {
            Files.copy(fresh, folder.resolve("offers.csv"), StandardCopyOption.REPLACE_EXISTING);
            Files.deleteIfExists(folder.resolve("prices.csv"));

            int done = killed("import");

            assertWhole(done, "kill " + kill);
        }
    }

    /** Whatever else is written: each file is that of one run, and an overlay's two of the same. */
    @Test
    void every_other_file_is_that_of_one_run_whole() throws Exception {
        Path out = folder.resolve("out");
        prepareTwoContents();
        List<Map<String, String>> whole = new ArrayList<>();
        for (int which : List.of(0, 1)) {
            for (List<String> line : Restless.overwriting(folder, out, which)) {
                assertThat(new Captured().run(line.toArray(String[]::new)))
                        .isEqualTo(ExitStatus.DONE);
            }
            whole.add(content(out));
        }
        assertThat(whole.get(0)).as("two contents").isNotEqualTo(whole.get(1));
        for (int kill = 0; kill < KILLS / 10; kill++) {
            killed("others", SEARCHING_MS);

            Map<String, String> found = content(out);
            found.keySet().removeIf(name -> !whole.get(0).containsKey(name));
            found.forEach(
                    (name, text) ->
                            assertThat(text)
                                    .as(name)
                                    .isIn(whole.get(0).get(name), whole.get(1).get(name)));
            assertThat(isOfOneRun(found, whole) || isRefused(out.resolve("made-4"))).isTrue();
        }
    }

    private void prepareTwoContents() throws IOException {
        Path brief = folder.resolve("desk.yaml");
        Files.copy(Path.of("scenarios", "tight-600.yaml"), brief);
        Path builds = folder.resolve("builds");
        new Captured().run("propose", brief.toString(), "--out", builds.toString());
        Files.copy(builds.resolve("desk-lean.build.yaml"), folder.resolve("build-0"));
        Files.copy(builds.resolve("desk-full.build.yaml"), folder.resolve("build-1"));
        List<String> rows =
                Files.readAllLines(Path.of("scenarios", "measurements", "thirty-machines.csv"));
        Files.write(folder.resolve("measured-0"), rows.subList(0, rows.size() / 2));
        Files.write(folder.resolve("measured-1"), rows);
    }

    private static Map<String, String> content(Path out) throws IOException {
        Map<String, String> textByName = new TreeMap<>();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                textByName.put(out.relativize(file).toString(), Files.readString(file));
            }
        }
        return textByName;
    }

    private static boolean isOfOneRun(Map<String, String> found, List<Map<String, String>> whole) {
        return whole.stream()
                .anyMatch(
                        run ->
                                Stream.of("made-4/rates.csv", "made-4/workloads.yaml")
                                        .allMatch(it -> run.get(it).equals(found.get(it))));
    }

    private static boolean isRefused(Path overlay) {
        try {
            CatalogueReader.readNoted(List.of(SAMPLE, overlay));
            return false;
        } catch (BadInput refused) {
            return true;
        }
    }

    private void assertWhole(int done, String kill) throws BadInput {
        Catalogue catalogue = CatalogueReader.read(folder);
        Set<Integer> stocks = new TreeSet<>();
        for (Kind kind : Kind.values()) {
            for (Part part : catalogue.parts(kind)) {
                stocks.add(stock(catalogue, part));
            }
        }
        assertThat(stocks).as(kill).hasSize(1);
        int last = stocks.iterator().next();
        assertThat(last).as(kill).isBetween(done, done + 1);
        for (Series series : PriceFile.history(folder, catalogue).series()) {
            if (series.newest().supplier().equals("quaymark")) {
                assertThat(series.offers()).as(kill).extracting(Offer::stock).isEqualTo(upTo(last));
            }
        }
    }

    /** The stock of a list is its number; 0 before the first. */
    private static int stock(Catalogue catalogue, Part part) {
        return catalogue.offers(part.id()).stream()
                .filter(offer -> offer.supplier().equals("quaymark"))
                .mapToInt(Offer::stock)
                .findFirst()
                .orElse(0);
    }

    private static List<Integer> upTo(int last) {
        List<Integer> all = new ArrayList<>();
        for (int i = 1; i <= last; i++) {
            all.add(i);
        }
        return all;
    }

    private void writeBuild() throws IOException {
        Files.writeString(
                folder.resolve("desk.build.yaml"),
                """
                schema: rigbrief/build/1
                catalogue: { name: small, digest: 'sha256:00' }
                currency: EUR
                lines:
                  - { slot: wireless, part: %s, unit-price: "20.00" }
                """
                        .formatted(idsOf("wireless.csv").get(0)));
    }

    /** Lets the program work, kills it, and gives how many of its runs it says have ended. */
    private int killed(String what) throws Exception {
        return killed(what, LONGEST_MS);
    }

    private int killed(String what, int longestMs) throws Exception {
        // A file, since a pipe to a killed process is closed before it is read to its end.
        Path said = folder.resolve("said");
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-cp",
                                System.getProperty(
                                        "surefire.test.class.path",
                                        System.getProperty("java.class.path")),
                                Restless.class.getName(),
                                what,
                                folder.toString())
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .redirectOutput(said.toFile())
                        .start();
        boolean early = random.nextInt(4) == 0;
        while (!early && process.isAlive() && Files.size(said) == 0) {
            Thread.sleep(1);
        }
        Thread.sleep(random.nextInt(early ? 8 * longestMs : longestMs));
        process.destroyForcibly().waitFor();
        return last(Files.readString(said));
    }

    /** The number on the last whole line; a line may have been cut off by the kill. */
    private static int last(String said) {
        List<String> lines = said.substring(0, said.lastIndexOf('\n') + 1).lines().toList();
        assertThat(lines).allMatch(line -> line.startsWith("done "));
        return lines.isEmpty() ? 0 : Integer.parseInt(lines.get(lines.size() - 1).substring(5));
    }

    @Test
    void unfinished_files_are_not_taken_for_part_of_a_catalogue() throws Exception {
        Files.writeString(folder.resolve(".offers.csv.0.part"), "part,supp");

        assertThat(CatalogueReader.read(folder).partCount()).isPositive();
    }
}
