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

    /** Folder of the results of {@code brief.yaml} and {@code brief.json}. */
    static final String ANSWERED = "answered";

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
        shop.put("brief.yaml", ShopTexts.BRIEF);
        shop.put("brief.json", ShopTexts.JSON);
        shop.put("list.txt", ShopTexts.LIST);
        shop.put("log.csv", ShopTexts.LOG);
        shop.put("measured.csv", ShopTexts.MEASURED);
        shop.put("speeds.csv", ShopTexts.SPEEDS);
        shop.put("prices.csv", ShopTexts.PRICES);
        shop.put("map.yaml", ShopTexts.MAP);
        shop.put("overlay/rates.csv", ShopTexts.RATES);
        shop.put("overlay/workloads.yaml", workloads(Set.of("pocket-orchard")));
        shop.put("answers.txt", ShopTexts.ANSWERS);
        shop.put("desk.yaml.answers", ShopTexts.KEPT_ANSWERS);
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
        answered();
    }

    /** What is there of two briefs that were answered at once: a run again keeps all of it. */
    private void answered() throws IOException {
        String out = file(ANSWERED);
        String[] briefs = {file("brief.yaml"), file("brief.json")};
        run("propose", briefs[0], briefs[1], "--out", out, "--catalog", file("catalog"));
        try (Stream<Path> files = Files.walk(Path.of(out))) {
            for (Path path : files.filter(Files::isRegularFile).toList()) {
                put(folder.relativize(path).toString(), Files.readString(path));
            }
        }
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
