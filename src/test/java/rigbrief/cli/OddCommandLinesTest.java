package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Any command with any of its options and any value ends with a documented status; drawn from the
 * command line's own model, so that a new command or option is among them by itself.
 */
class OddCommandLinesTest {
    private static final List<String> STATES =
            List.of("wanted", "ordered", "received", "fitted", "faulty", "returned");

    private static final Set<String> OUTPUTS = Set.of("--out", "--form");

    /** What these commands are there to change. */
    private static final Map<String, Set<String>> WRITTEN_BACK =
            Map.of(
                    "order",
                    Set.of("writable.yaml"),
                    "replace",
                    Set.of("writable.yaml"),
                    "import",
                    Set.of("catalog/", "newer/"),
                    "intake",
                    Set.of("desk.yaml.answers"));

    private static SmallShop shop;
    private static Ordeal ordeal;
    private static List<CommandSpec> commands;

    @BeforeContainer
    static void open() throws IOException {
        shop = SmallShop.in(Files.createTempDirectory("rigbrief-shop"));
        ordeal = new Ordeal(shop);
        Console console = new Captured().console();
        commands = new ArrayList<>();
        gather(Program.commandLine(console, new FaultHandler(console)), commands);
    }

    private static void gather(CommandLine command, List<CommandSpec> into) {
        into.add(command.getCommandSpec());
        command.getSubcommands().values().forEach(it -> gather(it, into));
    }

    @AfterContainer
    static void close() throws IOException {
        System.err.println(ordeal.countByStatus());
        ordeal.close();
        shop.remove();
    }

    @Provide
    Arbitrary<Long> seeds() {
        return Arbitraries.randomValue(random -> random.nextLong() ^ SpoiltFilesTest.SALT);
    }

    @Property(seed = SpoiltFilesTest.SEED, shrinking = ShrinkingMode.OFF)
    void odd_command_lines(@ForAll("seeds") long seed) throws IOException {
        Random random = new Random(seed);
        Spoiler spoiler = new Spoiler(random);
        CommandSpec command = spoiler.pick(commands);
        List<String> words = new ArrayList<>(List.of(command.qualifiedName().split(" ")));
        words.remove(0);
        Set<String> mayWrite = new TreeSet<>(Set.of("out/"));
        List<String> inputs = new ArrayList<>();
        boolean sound = random.nextInt(3) > 0;
        for (ArgSpec positional : command.positionalParameters()) {
            if (random.nextInt(12) > 0) {
                words.add(value(positional, random, spoiler, sound));
                inputs.add(words.get(words.size() - 1));
            }
        }
        for (OptionSpec option : command.options()) {
            if (option.required() ? random.nextInt(12) > 0 : random.nextInt(5) == 0) {
                words.add(spoiler.pick(List.of(option.names())));
                if (option.arity().max() > 0) {
                    boolean output = OUTPUTS.contains(option.longestName());
                    String value = value(option, random, spoiler, sound || random.nextBoolean());
                    String word = output ? inside(value) : value;
                    words.add(word);
                    if (output) {
                        mayWrite.addAll(List.of(word.substring(2), word.substring(2) + "/"));
                    } else {
                        inputs.add(word);
                    }
                }
            }
        }
        if (!words.contains("--catalog") && random.nextInt(15) > 0) {
            words.addAll(List.of("--catalog", shop.file("catalog")));
        }
        if (command.name().equals("intake") && !words.contains("--out")) {
            words.addAll(List.of("--out", "%/out/desk.yaml"));
        }
        if (random.nextInt(10) == 0 && words.stream().noneMatch(OUTPUTS::contains)) {
            words.add(random.nextInt(words.size() + 1), spoiler.pick(Spoiler.ODD_VALUES));
        }
        keep(inputs, mayWrite);
        mayWrite.addAll(WRITTEN_BACK.getOrDefault(command.name(), Set.of()));
        ordeal.run(
                Map.of(),
                shop.bytes(spoiler.pick(shop.names())),
                mayWrite,
                words.stream().map(word -> named(word, shop)).toArray(String[]::new));
    }

    /** Output stays in the shop, whatever it is called: this runs on somebody's own machine. */
    private static String inside(String value) {
        boolean safe = !value.contains("..") && !value.contains("\u0000");
        return value.startsWith("%/") ? value : "%/out/" + (safe ? value : "odd");
    }

    /** What is read may not be written, whatever the options say. */
    private static void keep(List<String> inputs, Set<String> mayWrite) {
        for (String input : inputs) {
            if (input.startsWith("%/")) {
                mayWrite.remove(input.substring(2));
                mayWrite.remove(input.substring(2) + "/");
            }
        }
    }

    private static String named(String word, SmallShop shop) {
        return word.replace("%", shop.folder().toString());
    }

    /** Mostly what the label asks for, else anything. */
    private static String value(ArgSpec argument, Random random, Spoiler spoiler, boolean sound) {
        if (!sound && random.nextInt(3) == 0) {
            return spoiler.pick(Spoiler.ODD_VALUES);
        }
        if (argument.completionCandidates() != null && random.nextInt(4) > 0) {
            List<String> words = new ArrayList<>();
            argument.completionCandidates().forEach(words::add);
            return words.isEmpty() ? "text" : spoiler.pick(words);
        }
        return switch (argument.paramLabel()) {
            case "BRIEF" ->
                    spoiler.pick(
                            List.of(
                                    "%/brief.yaml",
                                    "%/brief.json", "-", "%/build.yaml", "%/nowhere.yaml"));
            case "BUILD" ->
                    spoiler.pick(
                            List.of(
                                    "%/writable.yaml",
                                    "%/writable.yaml", "%/list.txt", "-", "%/sheet.csv"));
            case "DIR", "NEW_CATALOG" ->
                    spoiler.pick(
                            List.of("%/catalog", "%/newer", "%/overlay", "%/out", "%/nowhere"));
            case "FILE", "MAP", "PRICELIST" ->
                    spoiler.pick(
                            List.of(
                                    "%/measured.csv",
                                    "%/sheet.csv",
                                    "%/speeds.csv",
                                    "%/prices.csv",
                                    "%/map.yaml",
                                    "%/out/new",
                                    "%/brief.yaml",
                                    "%/writable.yaml",
                                    "%/catalog/offers.csv",
                                    "%/out/x/../y.html",
                                    "%/log.csv/z",
                                    "-"));
            case "[PART]", "PART" ->
                    spoiler.pick(
                            List.of(
                                    "board",
                                    "memory",
                                    "graphics",
                                    "ostrel-twill-4",
                                    "drive-2",
                                    "%/x",
                                    "fans"));
            case "[STATE]", "STATE" -> spoiler.pick(STATES);
            case "PART=MONEY" ->
                    spoiler.pick(
                            List.of(
                                    "board=129.50",
                                    "board=",
                                    "=",
                                    "memory=0",
                                    "graphics=999999999",
                                    "x=1"));
            case "MONEY" -> spoiler.pick(List.of("0", "12.50", "999999999", "1000", "0.001", "-5"));
            case "NAME" ->
                    spoiler.pick(
                            List.of(
                                    "cost.total",
                                    "heat.processor-c",
                                    "frame_ms",
                                    "Ida",
                                    "nothing"));
            case "LINE", "LINE[=PART]" ->
                    spoiler.pick(
                            List.of(
                                    "4",
                                    "3=wattlemarsh-fen-500",
                                    "4=",
                                    "=",
                                    "0",
                                    "-1",
                                    "99999999"));
            case "DATE" ->
                    spoiler.pick(
                            List.of(
                                    "2026-12-01",
                                    "2026-02-30",
                                    "0000-01-01",
                                    "9999-12-31",
                                    "1.12.2026"));
            case "TIME" -> spoiler.pick(List.of("1ms", "50ms", "0s", "999999m", "1h", "-1s"));
            case "N", "FPS", "HZ", "PERCENT" ->
                    spoiler.pick(
                            List.of(
                                    "1",
                                    "2",
                                    "0",
                                    "-1",
                                    "48",
                                    "60",
                                    "100",
                                    "101",
                                    "2147483647",
                                    "2147483648",
                                    "9223372036854775807"));
            default -> spoiler.pick(Spoiler.ODD_VALUES);
        };
    }
}
