package rigbrief.bench.process;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rigbrief.bench.Plot;
import rigbrief.bench.Scenarios;
import rigbrief.bench.Table;

/**
 * The packaged program as its user starts it, on catalogues of several sizes: {@code propose} over
 * all scenarios, and the start, {@code audit}, {@code replace} and {@code budget} on one.
 */
public final class WholeProcess {
    private static final String ORDINARY = "tight-600";
    private static final int LARGE = 100_000;
    private static final int MINUTES = 5;
    private static final int REPEATS = 5;

    private final Path launcher;
    private final Path out;
    private final ObjectMapper json = new ObjectMapper();
    private final Table proposals =
            new Table(
                    "propose",
                    "parts",
                    "scenario",
                    "wall s",
                    "CPU s",
                    "peak MB",
                    "exit",
                    "lean",
                    "balanced",
                    "full");
    private final Table sizes =
            new Table(
                    "propose-by-size",
                    "parts",
                    "scenarios",
                    "wall s, median (least to most)",
                    "CPU s, median (least to most)",
                    "peak MB, median (most)",
                    "tiers proven",
                    "widest gap, %");
    private final Table commands =
            new Table("commands", "command", "parts", "wall s", "CPU s", "peak MB", "exit");
    private final Map<String, List<double[]>> curves = new LinkedHashMap<>();
    private final Map<String, Map<Integer, Timed>> byScenario = new LinkedHashMap<>();

    private WholeProcess(Path build, Path out) {
        this.launcher = build.resolve("rigbrief").toAbsolutePath();
        this.out = out.toAbsolutePath();
        sizes.remark(
                "A run is stopped after %d minutes (exit 137). Beyond %d parts with a heap of 1 GiB, else as the launcher sets it. Sample for 600 parts, generated catalogues beyond."
                        .formatted(MINUTES, LARGE));
        commands.remark(
                "Brief %s; medians of %d runs, of one for budget and beyond %d parts."
                        .formatted(ORDINARY, REPEATS, LARGE / 2));
        for (String curve :
                List.of("wall s, median", "CPU s, median", "CPU s, most", "peak GB, most")) {
            curves.put(curve, new ArrayList<>());
        }
    }

    /**
     * Runs everything.
     *
     * @param parts sizes of catalogues
     */
    public static void run(Path build, Path out, List<Integer> parts)
            throws IOException, InterruptedException {
        WholeProcess it = new WholeProcess(build, out);
        Files.createDirectories(it.out);
        it.start();
        for (int size : parts) {
            it.size(size);
            it.save();
        }
        it.print();
    }

    private void start() throws IOException, InterruptedException {
        command("--version", 0, List.of("--version"));
    }

    private void size(int parts) throws IOException, InterruptedException {
        Path catalogue = Worlds.folder(out, parts).toAbsolutePath();
        List<Timed> all = new ArrayList<>();
        int tiers = 0;
        int proven = 0;
        double widest = 0;
        for (Path brief : Scenarios.files()) {
            String name = brief.getFileName().toString().replace(".yaml", "");
            Timed timed =
                    run(
                            parts,
                            List.of(
                                    "propose",
                                    brief.toString(),
                                    "--catalog",
                                    catalogue.toString(),
                                    "--format",
                                    "json"));
            all.add(timed);
            byScenario.computeIfAbsent(name, any -> new LinkedHashMap<>()).put(parts, timed);
            Map<String, String> told = new LinkedHashMap<>();
            for (JsonNode proposal : tiers(timed)) {
                JsonNode proof = proposal.path("proof");
                double gap = proof.path("gap-percent").asDouble();
                tiers++;
                proven += proof.path("proven").asBoolean() ? 1 : 0;
                widest = Math.max(widest, gap);
                told.put(
                        proposal.path("tier").asText(),
                        proof.path("proven").asBoolean()
                                ? "proven"
                                : "gap " + Table.number(gap) + " %");
            }
            proposals.row(
                    parts,
                    name,
                    timed.wallS(),
                    timed.cpuS(),
                    timed.peakMb(),
                    timed.status(),
                    told.getOrDefault("lean", "-"),
                    told.getOrDefault("balanced", "-"),
                    told.getOrDefault("full", "-"));
            System.err.println("propose: " + parts + " " + name + " " + timed.cpuS());
        }
        double[] wall = sorted(all.stream().mapToDouble(Timed::wallS));
        double[] cpu = sorted(all.stream().mapToDouble(Timed::cpuS));
        double[] peak = sorted(all.stream().mapToDouble(Timed::peakMb));
        sizes.row(
                parts,
                all.size(),
                spread(wall),
                spread(cpu),
                "%.0f (%.0f)".formatted(median(peak), peak[peak.length - 1]),
                proven + " of " + tiers,
                widest);
        add("wall s, median", parts, median(wall));
        add("CPU s, median", parts, median(cpu));
        add("CPU s, most", parts, cpu[cpu.length - 1]);
        add("peak GB, most", parts, peak[peak.length - 1] / 1000);
        others(parts, catalogue);
    }

    private Iterable<JsonNode> tiers(Timed timed) throws IOException {
        return timed.status() == 0
                ? json.readTree(timed.out().toFile()).path("proposals")
                : List.of();
    }

    /** Commands that work on one build. */
    private void others(int parts, Path catalogue) throws IOException, InterruptedException {
        Path builds = out.resolve("builds-" + parts);
        empty(builds);
        String brief = "scenarios/" + ORDINARY + ".yaml";
        run(
                parts,
                List.of(
                        "propose",
                        brief,
                        "--catalog",
                        catalogue.toString(),
                        "--out",
                        builds.toString()));
        String build = builds.resolve(ORDINARY + "-lean.build.yaml").toString();
        String from = catalogue.toString();
        command("audit", parts, List.of("audit", build, "--catalog", from));
        command(
                "replace",
                parts,
                List.of("replace", build, "--unavailable", "graphics", "--catalog", from));
        command("budget", parts, List.of("budget", brief, "--catalog", from));
        command("propose", parts, List.of("propose", brief, "--catalog", from));
    }

    private static void empty(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    /** The median of a few runs. */
    private void command(String name, int parts, List<String> words)
            throws IOException, InterruptedException {
        int repeats = parts > LARGE / 2 || name.equals("budget") ? 1 : REPEATS;
        List<Timed> runs = new ArrayList<>();
        for (int i = 0; i < repeats; i++) {
            runs.add(run(parts, words));
        }
        commands.row(
                name,
                parts == 0 ? "-" : parts,
                median(sorted(runs.stream().mapToDouble(Timed::wallS))),
                median(sorted(runs.stream().mapToDouble(Timed::cpuS))),
                median(sorted(runs.stream().mapToDouble(Timed::peakMb))),
                runs.get(0).status());
    }

    private Timed run(int parts, List<String> words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(words);
        Map<String, String> variables =
                parts > LARGE ? Map.of("RIGBRIEF_JAVA_OPTIONS", "-Xmx1g") : Map.of();
        return Timed.run(out.resolve("last-answer"), variables, MINUTES, command);
    }

    private void add(String curve, int parts, double value) {
        curves.get(curve).add(new double[] {parts, value});
    }

    private static double[] sorted(java.util.stream.DoubleStream values) {
        return values.sorted().toArray();
    }

    private static double median(double[] sorted) {
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    private static String spread(double[] sorted) {
        return "%s (%s to %s)"
                .formatted(
                        Table.number(median(sorted)),
                        Table.number(sorted[0]),
                        Table.number(sorted[sorted.length - 1]));
    }

    private void save() throws IOException {
        proposals.save(out);
        sizes.save(out);
        commands.save(out);
        if (curves.get("CPU s, most").size() > 1) {
            growth().save(out);
        }
        Plot.draw(
                out.resolve("propose-by-size.svg"),
                "propose, whole process, all scenarios",
                "parts",
                "s, GB",
                curves);
    }

    private void print() throws IOException {
        proposals.write(out);
        sizes.write(out);
        commands.write(out);
        growth().write(out);
    }

    private Table growth() {
        Table table =
                new Table("propose-growth", "cost", "exponent", "95 %", "R squared", "so it grows");
        curves.forEach((name, points) -> fitted(table, name, points));
        byScenario.forEach(
                (name, runs) -> {
                    List<double[]> points = new ArrayList<>();
                    runs.forEach((parts, timed) -> points.add(new double[] {parts, timed.cpuS()}));
                    fitted(table, "CPU s, " + name, points);
                });
        table.remark("Least squares on the logarithms of parts and cost; exponent 1 is linear.");
        return table;
    }

    static void fitted(Table table, String name, List<double[]> points) {
        if (points.size() > 1) {
            Growth growth = Growth.of(points);
            table.row(
                    name,
                    growth.exponent(),
                    "+- " + Table.number(growth.plusMinus()),
                    growth.rSquared(),
                    growth.words());
        }
    }
}
