package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * Whatever is done to an input file, the program ends with a documented status and says where.
 *
 * <p>Some hundred cases each here; the long run is in DEVELOPERS.md ({@code jqwik.tries.default}).
 */
class SpoiltFilesTest {
    static final String SEED = "20261128";

    /** Makes other cases of the same seed, for a run that is not to repeat the last one. */
    static final long SALT = Long.getLong("rigbrief.fuzz.salt", 0);

    private static final byte[] NOTHING = {};
    private static final Set<String> OUT = Set.of("out/");

    /** Answers again what was answered; of a result that was changed nothing may be replaced. */
    private static final String AGAIN =
            "propose brief.yaml brief.json --out %/" + SmallShop.ANSWERED;

    private static SmallShop shop;
    private static Ordeal ordeal;

    @BeforeContainer
    static void open() throws IOException {
        shop = SmallShop.in(Files.createTempDirectory("rigbrief-shop"));
        ordeal = new Ordeal(shop);
    }

    @AfterContainer
    static void close() throws IOException {
        System.err.println(ordeal.countByStatus());
        ordeal.close();
        shop.remove();
    }

    /** Seeds without edge cases: a seed that is small or large is no rarer case than any other. */
    @Provide
    Arbitrary<Long> seeds() {
        return Arbitraries.randomValue(random -> random.nextLong() ^ SpoiltFilesTest.SALT);
    }

    @Property(seed = SEED, shrinking = ShrinkingMode.OFF)
    void spoilt_briefs(@ForAll("seeds") long seed) throws IOException {
        Random random = new Random(seed);
        Spoiler spoiler = new Spoiler(random);
        String name = random.nextInt(3) == 0 ? "brief.json" : "brief.yaml";
        run(
                spoiler,
                name,
                random.nextInt(10) == 0,
                spoiler.pick(
                        List.of(
                                "audit build.yaml --brief @",
                                "audit list.txt --brief @ --format json",
                                "explain build.yaml --brief @ --number cost.total",
                                "tune build.yaml --brief @",
                                "accept build.yaml --brief @",
                                "document build.yaml --brief @",
                                "propose @",
                                "propose @ --format json --out %/out",
                                "propose @ brief.json --format json --force --out %/out")));
    }

    @Property(seed = SEED, shrinking = ShrinkingMode.OFF)
    void spoilt_builds(@ForAll("seeds") long seed) throws IOException {
        Random random = new Random(seed);
        Spoiler spoiler = new Spoiler(random);
        String name = random.nextInt(4) == 0 ? "list.txt" : "build.yaml";
        run(
                spoiler,
                name,
                random.nextInt(10) == 0,
                spoiler.pick(
                        List.of(
                                "audit @",
                                "audit @ --format json",
                                "order @",
                                "order @ --format json",
                                "order @ board fitted --date 2026-11-23",
                                "explain @",
                                "explain @ --number heat.processor-c",
                                "tune @ --format json",
                                "accept @ --format json",
                                "accept @ --measured sheet.csv",
                                "document @ --what orders --format csv",
                                "document @ --what orders",
                                "document @ --what assembly",
                                "document @ --format html --out %/out/p.html",
                                "replace @ --unavailable memory --out %/out/b.yaml",
                                "replace @ --faulty board",
                                "replace @ --against newer")));
    }

    @Property(seed = SEED, shrinking = ShrinkingMode.OFF)
    void spoilt_catalogues(@ForAll("seeds") long seed) throws IOException {
        Random random = new Random(seed);
        Spoiler spoiler = new Spoiler(random);
        List<String> files =
                shop.names().stream()
                        .filter(it -> it.startsWith("catalog/") || it.startsWith("overlay/"))
                        .toList();
        run(
                spoiler,
                spoiler.pick(files),
                false,
                spoiler.pick(
                        List.of(
                                "catalog check",
                                "catalog check --format json --catalog overlay",
                                "catalog stats",
                                "catalog stats --format json --catalog overlay",
                                "audit build.yaml",
                                "audit list.txt --catalog overlay",
                                "explain build.yaml --number power.wall-w",
                                "tune build.yaml --brief brief.yaml",
                                "accept build.yaml",
                                "document build.yaml --what handover",
                                "propose brief.yaml",
                                "propose brief.json --catalog overlay --format html --out %/out/a.html",
                                "budget brief.json --goal memory",
                                "calibrate --measured measured.csv",
                                "catalog import prices.csv --map map.yaml --accept 4",
                                "replace build.yaml --against newer")));
    }

    @Property(seed = SEED, shrinking = ShrinkingMode.OFF)
    void spoilt_figures_and_lists(@ForAll("seeds") long seed) throws IOException {
        Random random = new Random(seed);
        Spoiler spoiler = new Spoiler(random);
        Map<String, List<String>> lines =
                new TreeMap<>(
                        Map.of(
                                "measured.csv",
                                List.of(
                                        "calibrate --measured @",
                                        "calibrate --measured @ --out %/out --format json"),
                                "log.csv",
                                List.of(
                                        "calibrate --measured measured.csv",
                                        "accept build.yaml --measured speeds.csv"),
                                "speeds.csv",
                                List.of("accept build.yaml --measured @"),
                                "sheet.csv",
                                List.of("accept build.yaml --measured @ --format json"),
                                "prices.csv",
                                List.of(
                                        "catalog import @ --map map.yaml",
                                        "catalog import @ --map map.yaml --dry-run --format json --accept 4"),
                                "map.yaml",
                                List.of(
                                        "catalog import prices.csv --map @ --accept 4",
                                        "catalog import prices.csv --map @ --dry-run"),
                                "answers.txt",
                                List.of("intake --out %/out/brief.yaml"),
                                "desk.yaml.answers",
                                List.of("intake --out desk.yaml --resume")));
        shop.names().stream()
                .filter(it -> it.startsWith(SmallShop.ANSWERED))
                .forEach(it -> lines.put(it, List.of(AGAIN)));
        String name = spoiler.pick(List.copyOf(lines.keySet()));
        boolean streamed =
                name.equals("answers.txt")
                        || random.nextInt(10) == 0
                                && !lines.get(name).contains(AGAIN)
                                && !name.equals("log.csv")
                                && !name.equals("prices.csv")
                                && !name.equals("map.yaml");
        run(spoiler, name, streamed, spoiler.pick(lines.get(name)));
    }

    /** {@code @} stands for the spoilt file, {@code %} for the shop's folder. */
    private static void run(Spoiler spoiler, String name, boolean streamed, String line)
            throws IOException {
        Map<String, byte[]> spoilt = spoiler.spoilt(shop, List.of(name));
        byte[] input =
                streamed
                        ? spoilt.get(name)
                        : name.startsWith("desk") ? shop.bytes("answers.txt") : NOTHING;
        List<String> arguments = new ArrayList<>();
        boolean wantsCatalogue = true;
        for (String word : line.split(" ")) {
            if (word.equals("--catalog") && wantsCatalogue) {
                arguments.addAll(List.of("--catalog", shop.file("catalog")));
                wantsCatalogue = false;
            }
            arguments.add(named(word, name, streamed));
        }
        if (wantsCatalogue) {
            arguments.addAll(List.of("--catalog", shop.file("catalog")));
        }
        ordeal.run(
                streamed ? Map.of() : spoilt,
                input,
                mayWrite(line, name),
                arguments.toArray(String[]::new));
    }

    private static String named(String word, String name, boolean streamed) {
        if (word.equals("@")) {
            return streamed ? "-" : shop.file(name);
        }
        boolean file =
                shop.names().contains(word)
                        || word.equals("overlay")
                        || word.equals("newer")
                        || word.equals("desk.yaml");
        return file ? shop.file(word) : word.replace("%", shop.folder().toString());
    }

    private static Set<String> mayWrite(String line, String name) {
        if (line.startsWith("catalog import") && !line.contains("--dry-run")) {
            return Set.of("catalog/offers.csv", "catalog/prices.csv");
        }
        if (line.startsWith("order") && line.contains("board")) {
            return Set.of(name);
        }
        if (line.equals(AGAIN)) {
            boolean list = name.endsWith(".sha256"); // one that is whole may tell of another brief
            String summary = SmallShop.ANSWERED + "/summary.csv";
            return list ? Set.of(summary, name.replaceAll("[^/]+$", "")) : Set.of(summary);
        }
        return line.startsWith("intake") ? Set.of("out/", "desk.yaml", "desk.yaml.answers") : OUT;
    }
}
