package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A folder with one file of every sort that the program reads, over a part of the sample catalogue
 * so small that a proposal takes milliseconds. What a case did to it is undone by {@link #restore}.
 */
final class SmallShop {
    /** A few parts of each kind, enough for a build with a card and one without. */
    private static final Set<String> PARTS =
            Set.of(
                    "ostrel-twill-4",
                    "merrowby-courante-4",
                    "hobbinfold-plain-880m",
                    "hobbinfold-plain-1644m-d4",
                    "lathmere-plainbar-1x16-d4-2666-c19",
                    "tressadine-sortie-lampwick-360",
                    "bramblecote-lane-sorrel-60",
                    "lathmere-slip-480-gb",
                    "slatecombe-chip-500-gb",
                    "wattlemarsh-fen-500",
                    "hobbinfold-deskmate-m",
                    "galebourne-gust-120",
                    "brackenfin-sprig-2");

    /** Kinds of which nearly every part would do: the first of each file is kept too. */
    private static final List<String> FIRST_OF =
            List.of("cooler.csv", "wireless.csv", "brace.csv", "cables.csv", "system.csv");

    private static final Set<String> WORKLOADS =
            Set.of("brass-regatta", "pocket-orchard", "ledger-sheets", "office-day");

    private static final String BRIEF =
            """
            client: Wren, aged fifteen
            currency: EUR
            ceiling: 600
            overrun: 2.5%
            confidence: 80%
            display: { resolution: 1920x1080, refresh: 75, inputs: [hdmi1.4, dp1.2] }
            workloads:
              - use: brass-regatta
                must: { average: 45, low: 20 }
                wish: { average: 100, weight: 3 }
                with: { preset: high }
              - use: ledger-sheets
                must: { finish-within: 90s }
            at-once: [office-day]
            looks: { lighting: any, colour: black, side: any }
            noise: { must: 45, wish: 32, distance: 0.8 }
            wireless: { need: wish, at-least: wifi5 }
            memory: { at-least: 8 }
            storage: { at-least: 400, room-for: [brass-regatta], years: 3 }
            size: { at-most-litres: 60, at-most-kg: 20 }
            avoid: { makers: [Nobody], parts: [slatecombe-chip-500-gb] }
            buying: { suppliers: [], within-days: 30, at-most-suppliers: 4 }
            place: { room-c: 22, altitude-m: 300, hours-per-day: 4, tariff: 0.3 }
            wishes: { workloads: 3, value: 5, upgrade-room: 2, lifetime: 1, quiet: 2 }
            fees: { assembly: 20, tax: 0% }
            locale: en-GB
            """;

    private static final String JSON =
            """
            {"client": "Wren", "currency": "EUR", "ceiling": 600, "locale": "de-DE",
             "workloads": [{"use": "pocket-orchard", "must": {"average": 30}, "with": {"rays": "off"}}],
             "display": {"resolution": "1920x1080", "refresh": 60},
             "memory": {"at-least": 8}, "storage": {"at-least": 400},
             "keep": [{"slot": "case", "part": "hobbinfold-deskmate-m"}],
             "wishes": {"value": 4, "energy": 1, "look": 1}, "quantity": 2}
            """;

    private static final String LIST =
            """
            # what a friend wrote down
            merrowby-courante-4; hobbinfold-plain-1644m-d4
            lathmere-plainbar-1x16-d4-2666-c19 x2
            bramblecote-lane-sorrel-60, slatecombe-chip-500-gb
            wattlemarsh-fen-500
            hobbinfold-deskmate-m
            """;

    private static final String MEASURED =
            """
            machine,processor,graphics,memory,memory_mts,drive,build,workload,resolution,preset,rays,upscaling,average_fps,low_fps,seconds,frame_log
            one,ostrel-twill-4,bramblecote-lane-sorrel-60,lathmere-plainbar-1x16-d4-2666-c19,2666,lathmere-slip-480-gb,,brass-regatta,1920x1080,high,,,71,50,,
            one,ostrel-twill-4,bramblecote-lane-sorrel-60,lathmere-plainbar-1x16-d4-2666-c19,2666,lathmere-slip-480-gb,,pocket-orchard,1920x1080,high,,,110,80,,
            two,merrowby-courante-4,tressadine-sortie-lampwick-360,lathmere-plainbar-1x16-d4-2666-c19,,slatecombe-chip-500-gb,,brass-regatta,1920x1080,medium,,,,,,log.csv
            two,merrowby-courante-4,tressadine-sortie-lampwick-360,lathmere-plainbar-1x16-d4-2666-c19,,slatecombe-chip-500-gb,,ledger-sheets,,,,,,,33,
            three,,,,,,build.yaml,pocket-orchard,1920x1080,high,,,95,70.5,,
            """;

    private static final String SPEEDS =
            """
            workload,resolution,preset,rays,upscaling,average_fps,low_fps,seconds,frame_log
            brass-regatta,1920x1080,high,,,71.5,50,,
            brass-regatta,1920x1080,medium,,,,,,log.csv
            ledger-sheets,,,,,,,31,
            """;

    private static final String LOG =
            """
            # frame times of a walk
            frame,frame_ms
            1,13.1
            2,12.9
            3,14.25
            4,22.5
            5,13
            """;

    private static final String PRICES =
            """
            Price list of Quaymark
            Ref;Article;Net;Stock;Days
            lathmere-slip-480-gb;Lathmere Slip 480 GB;31,50;12;2
            wattlemarsh-fen-500;Wattlemarsh Fen 500;1.036,00;none;3 days
            galebourne-gust-120;Galebourne Gust 120;on request;4;2
            hobbinfold-deskmate-m;Hobbinfold Deskmate M;35,90;8;1
            """;

    private static final String MAP =
            """
            supplier: quaymark
            encoding: utf-8
            delimiter: semicolon
            decimal: comma
            thousands: point
            currency: EUR
            skip-lines: 1
            as-of: 2026-12-01
            columns: { id: Ref, words: Article, price: Net, stock: Stock, lead-days: Days }
            stock-words: { none: 0 }
            lead-words: { 3 days: 3 }
            no-price: [on request]
            unlisted: keep
            same: { X-1: galebourne-gust-120 }
            """;

    private static final String RATES =
            """
            part,tflops,bandwidth_gbs,ray_rate,rate_single,rate_all
            ostrel-twill-4,,,,71,235
            bramblecote-lane-sorrel-60,6.1,190,,,
            """;

    /** A desk for letters and one job, by nearly nothing but the usual answers. */
    private static final String ANSWERS =
            """
            Fenwick and Daughters
            2
            ledger sheets, office-day
            unknown
            25s
            no

            quiet



            none
            closed


            no

            yes


            10
            2
            long life, value

            1600


            """;

    private static final String KEPT_ANSWERS =
            """
            # Answers of rigbrief intake so far; it takes them up again with --resume.
            client = Fenwick and Daughters
            quantity = 2
            workloads = brass-regatta, ledger-sheets
            """;

    private final Path folder;
    private final Map<String, byte[]> sound = new TreeMap<>();
    private final Map<String, Sign> signs = new HashMap<>();

    private SmallShop(Path folder) {
        this.folder = folder;
    }

    /** Sets the shop up in an empty folder. */
    static SmallShop in(Path folder) throws IOException {
        SmallShop shop = new SmallShop(folder);
        shop.catalogue("catalog");
        shop.catalogue("newer");
        shop.put("brief.yaml", BRIEF);
        shop.put("brief.json", JSON);
        shop.put("list.txt", LIST);
        shop.put("log.csv", LOG);
        shop.put("measured.csv", MEASURED);
        shop.put("speeds.csv", SPEEDS);
        shop.put("prices.csv", PRICES);
        shop.put("map.yaml", MAP);
        shop.put("overlay/rates.csv", RATES);
        shop.put("overlay/workloads.yaml", workloads(Set.of("pocket-orchard")));
        shop.put("answers.txt", ANSWERS);
        shop.put("desk.yaml.answers", KEPT_ANSWERS);
        shop.made();
        return shop;
    }

    private void catalogue(String name) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("catalog-sample"))) {
            for (Path file : files.sorted().toList()) {
                String own = file.getFileName().toString();
                put(name + "/" + own, small(own, Files.readString(file)));
            }
        }
    }

    private static String small(String file, String text) {
        if (file.equals("workloads.yaml")) {
            return workloads(WORKLOADS);
        }
        if (!file.endsWith(".csv")) {
            return text;
        }
        List<String> lines = text.lines().toList();
        List<String> kept = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String id = lines.get(i).substring(0, lines.get(i).indexOf(','));
            boolean first = i < 2 && FIRST_OF.contains(file);
            if (i == 0 || first || PARTS.contains(id)) {
                kept.add(lines.get(i));
            }
        }
        return String.join("\n", kept) + "\n";
    }

    private static String workloads(Set<String> ids) {
        try {
            String text = Files.readString(Path.of("catalog-sample/workloads.yaml"));
            return "workloads:\n"
                    + Arrays.stream(text.split("(?m)^(?=  - id: )"))
                            .skip(1)
                            .filter(
                                    item ->
                                            ids.contains(
                                                    item.lines()
                                                            .findFirst()
                                                            .get()
                                                            .strip()
                                                            .substring(6)))
                            .collect(Collectors.joining());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the program itself writes: build files and a sheet. */
    private void made() throws IOException {
        run("propose", file("brief.yaml"), "--catalog", file("catalog"), "--out", file("builds"));
        put("build.yaml", Files.readString(folder.resolve("builds/brief-full.build.yaml")));
        delete(folder.resolve("builds"));
        run(
                "order",
                file("build.yaml"),
                "board",
                "ordered",
                "--catalog",
                file("catalog"),
                "--date",
                "2026-11-21",
                "--by",
                "Ida");
        run(
                "order",
                file("build.yaml"),
                "board",
                "received",
                "--catalog",
                file("catalog"),
                "--date",
                "2026-11-22",
                "--paid",
                "60.00");
        put("build.yaml", Files.readString(folder.resolve("build.yaml")));
        run("accept", file("build.yaml"), "--catalog", file("catalog"), "--out", file("sheet.csv"));
        put("sheet.csv", Files.readString(folder.resolve("sheet.csv")));
        put("writable.yaml", text("build.yaml"));
    }

    private void run(String... arguments) {
        Captured captured = new Captured();
        assertThat(captured.run(arguments)).as(captured.err()).isEqualTo(ExitStatus.DONE);
    }

    private void put(String name, String text) throws IOException {
        sound.put(name, text.getBytes(StandardCharsets.UTF_8));
        write(name, sound.get(name));
    }

    /** A file as it is named on a command line. */
    String file(String name) {
        return folder.resolve(name).toString();
    }

    /** The folder. */
    Path folder() {
        return folder;
    }

    /** The sound bytes of a file. */
    byte[] bytes(String name) {
        return sound.get(name);
    }

    /** The sound text of a file. */
    String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** Names of all files, in order. */
    List<String> names() {
        return List.copyOf(sound.keySet());
    }

    /** Puts other bytes in the place of a file's. */
    void spoil(String name, byte[] bytes) throws IOException {
        write(name, bytes);
    }

    /** Names of the files that are not as they were put there, gone, or new. */
    List<String> changed() throws IOException {
        List<String> changed = new ArrayList<>();
        for (Path path : files()) {
            String name = folder.relativize(path).toString();
            if (!Sign.of(path).equals(signs.get(name))) {
                changed.add(name);
            }
        }
        sound.keySet().stream()
                .filter(name -> !Files.exists(folder.resolve(name)))
                .forEach(changed::add);
        return changed;
    }

    /** Whether a file is one of those that were there from the start. */
    boolean has(String name) {
        return sound.containsKey(name);
    }

    /** Tells a file from one written anew; reading all bytes of all files would take longer. */
    private record Sign(long bytes, FileTime modified, Object key) {
        static Sign of(Path path) throws IOException {
            BasicFileAttributes it = Files.readAttributes(path, BasicFileAttributes.class);
            return new Sign(it.size(), it.lastModifiedTime(), it.fileKey());
        }
    }

    private void write(String name, byte[] bytes) throws IOException {
        Path path = folder.resolve(name);
        Files.createDirectories(path.getParent());
        Files.write(path, bytes);
        signs.put(name, Sign.of(path));
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** Undoes whatever was done to the files named. */
    void restore(List<String> names) throws IOException {
        for (String name : names) {
            if (sound.containsKey(name)) {
                write(name, sound.get(name));
            } else {
                Files.deleteIfExists(folder.resolve(name));
            }
        }
    }

    /** Removes the whole folder. */
    void remove() throws IOException {
        delete(folder);
    }

    private static void delete(Path tree) throws IOException {
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
