package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import rigbrief.world.Effort;

/**
 * Every command that prints or writes, run one after the other in a folder of its own, with all
 * that it leaves behind.
 */
final class EveryCommand {
    private static final String BUILD = "builds/tight-600-lean.build.yaml";
    private static final String BRIEF = "scenarios/tight-600.yaml";
    private static final String MEASURED = "thirty-machines.csv";

    /** File of standard output, then the command line. */
    private static final List<String> LINES =
            List.of(
                    "propose.txt propose " + BRIEF + " --out builds",
                    "propose.json propose " + BRIEF + " --format json",
                    "propose.html propose " + BRIEF + " --format html",
                    "impossible.txt propose scenarios/impossible.yaml",
                    "budget.txt budget " + BRIEF + " --goal memory",
                    "budget.csv budget " + BRIEF + " --goal memory --format csv",
                    "replace.txt replace " + BUILD + " --unavailable graphics --out changed.yaml",
                    "replace.json replace " + BUILD + " --faulty drive --format json",
                    "tune.txt tune " + BUILD,
                    "tune.json tune " + BUILD + " --format json",
                    "calibrate.txt calibrate --measured first.csv second.csv --out overlay",
                    "fitted.json propose "
                            + BRIEF
                            + " --catalog catalog-sample --catalog overlay --format json",
                    "accept.txt accept " + BUILD + " --out sheet.csv",
                    "accept.json accept " + BUILD + " --format json",
                    "assembly.txt document " + BUILD + " --what assembly",
                    "assembly.pdf document " + BUILD + " --what assembly --format pdf",
                    "assembly.html document " + BUILD + " --what assembly --format html",
                    "orders.csv document " + BUILD + " --what orders --format csv",
                    "handover.txt document " + BUILD + " --what handover",
                    "offer.pdf document " + BUILD + " --format pdf",
                    "offer.html document " + BUILD + " --language de --format html",
                    "explain.txt explain " + BUILD + " --number heat.processor-c",
                    "explain.json explain " + BUILD + " --number noise.load-dba --format json",
                    "audit.txt audit " + BUILD,
                    "audit.json audit " + BUILD + " --format json",
                    "order.txt order " + BUILD + " board ordered --date 2026-11-21",
                    "order.json order " + BUILD + " --format json",
                    "stats.txt catalog stats",
                    "stats.json catalog stats --format json",
                    "check.txt catalog check",
                    "import.txt catalog import scenarios/pricelists/dovecote-2026-12.csv --map"
                            + " scenarios/pricelists/dovecote.map.yaml --dry-run",
                    "rules.txt rules",
                    "form.txt intake --form form.html",
                    "intake.txt intake --out brief.yaml");

    private final Path folder;

    private EveryCommand(Path folder) {
        this.folder = folder;
    }

    /**
     * Runs them.
     *
     * @param folder where to, empty
     * @param catalogue the catalogue that they are to use
     * @param java home of the Java
     * @param options of Java
     */
    static EveryCommand run(Path folder, Path catalogue, Path java, List<String> options)
            throws IOException {
        Files.createDirectories(folder);
        copy(Path.of("scenarios"), folder.resolve("scenarios"));
        copy(catalogue, folder.resolve("catalog-sample"));
        Files.writeString(folder.resolve("answers"), "Ada\n" + "\n".repeat(60));
        List<String> rows =
                Files.readAllLines(Path.of("scenarios", "measurements").resolve(MEASURED));
        int half = rows.size() / 2;
        Files.write(folder.resolve("first.csv"), rows.subList(0, half));
        Files.writeString(folder.resolve("second.csv"), rows.get(0) + "\n");
        Files.write(
                folder.resolve("second.csv"),
                rows.subList(half, rows.size()),
                StandardOpenOption.APPEND);
        try (Remote remote = Remote.started(java, folder, List.of(), options)) {
            for (String line : lines()) {
                List<String> words = List.of(line.split(" "));
                remote.begin(
                        words.get(0),
                        words.get(1).equals("intake") ? "answers" : "",
                        words.subList(1, words.size()).toArray(String[]::new));
                Remote.Answer answer = remote.answer();
                assertThat(answer.status())
                        .as(line + ": " + answer.err())
                        .isIn(ExitStatus.DONE, ExitStatus.IMPOSSIBLE);
                Files.writeString(folder.resolve(words.get(0) + ".err"), answer.err());
            }
        }
        return new EveryCommand(folder);
    }

    /** In the long run every scenario is proposed for, too. */
    private static List<String> lines() throws IOException {
        List<String> lines = new ArrayList<>(LINES);
        if (Effort.isLong()) {
            try (Stream<Path> scenarios = Files.list(Path.of("scenarios"))) {
                scenarios
                        .map(Path::toString)
                        .filter(name -> name.endsWith(".yaml"))
                        .sorted()
                        .map(
                                name ->
                                        name.replaceAll("\\W", "-")
                                                + " propose "
                                                + name
                                                + " --format json")
                        .forEach(lines::add);
            }
        }
        return lines;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }

    /** Everything that was printed or written, by name. */
    Map<String, byte[]> left() throws IOException {
        Map<String, byte[]> bytesByName = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).filter(this::isNew).toList()) {
                bytesByName.put(folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return bytesByName;
    }

    private boolean isNew(Path file) {
        return !file.startsWith(folder.resolve("catalog-sample"));
    }

    /** The same as text, for whatever is text. */
    Map<String, String> texts() throws IOException {
        Map<String, String> textByName = new TreeMap<>();
        left().forEach((name, bytes) -> textByName.put(name, new String(bytes, charset(name))));
        return textByName;
    }

    private static Charset charset(String name) {
        return name.endsWith(".pdf") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
    }
}
