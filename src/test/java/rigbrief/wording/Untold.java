package rigbrief.wording;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.part.Board;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.rule.Rules;

/**
 * Finds words that come from no bundle: every text of the German bundles is marked before its
 * places are filled, and whatever words stand outside of the marks and are no name of the
 * catalogue, no unit and no standard came from nowhere.
 */
public final class Untold {
    private static final char OPEN = '\u2997';
    private static final char SHUT = '\u2998';

    /** Units, standards and codes read alike in both languages. */
    private static final Set<String> ALIKE =
            Set.of(
                    "dB",
                    "MT",
                    "Mbit",
                    "Gbit",
                    "kWh",
                    "EUR",
                    "GTIN",
                    "HDMI",
                    "DisplayPort",
                    "fps",
                    "ATX",
                    "SATA",
                    "CVT",
                    "DDR4",
                    "DDR5",
                    "USB",
                    "mA",
                    "mm",
                    "GB",
                    "TB",
                    "kg",
                    "UEFI",
                    "Hz",
                    "rigbrief",
                    "RBv1",
                    "RBv2",
                    "RBv3",
                    "November",
                    "low",
                    "quality",
                    "performance");

    private final Set<String> menus = new LinkedHashSet<>();
    private final List<String> names;

    /** Words beside the names of a catalogue, the sample. */
    public Untold(Catalogue catalogue) throws IOException {
        Set<String> data = new LinkedHashSet<>(List.of(catalogue.name()));
        for (Kind kind : Kind.values()) {
            catalogue
                    .parts(kind)
                    .forEach(
                            part ->
                                    data.addAll(
                                            List.of(
                                                    part.name(),
                                                    part.listing().makerNumber(),
                                                    part.listing().maker(),
                                                    part.id())));
        }
        catalogue.suppliers().forEach(each -> data.addAll(List.of(each.name(), each.id())));
        catalogue.workloads().forEach(each -> data.addAll(List.of(each.title(), each.id())));
        catalogue
                .workloads()
                .forEach(
                        each -> {
                            if (each instanceof TaskTime task) {
                                data.add(task.job());
                            }
                            if (each instanceof FrameRate game) {
                                Stream.of(game.presets(), game.rays(), game.upscaling())
                                        .flatMap(steps -> steps.keySet().stream())
                                        .forEach(step -> menus.addAll(List.of(step.split(" "))));
                                menus.addAll(words(game.toString()));
                            }
                        });
        Rules.ALL.forEach(rule -> data.add(rule.info().id()));
        catalogue
                .parts(Kind.BOARD)
                .forEach(
                        part -> {
                            Board board = (Board) part;
                            data.add(board.socket());
                            data.addAll(board.features());
                        });
        for (Part part : catalogue.parts(Kind.PROCESSOR)) {
            data.add(((Processor) part).family());
        }
        data.addAll(columns());
        data.addAll(List.of("1920x1080", "2560x1440", "3840x2160", "3440x1440"));
        data.remove("");
        names = new ArrayList<>(data);
        names.sort(Comparator.comparingInt(String::length).reversed());
    }

    /** Columns of the catalogue's files whose names are no words, such as {@code height_mm}. */
    private static Set<String> columns() throws IOException {
        Set<String> columns = new LinkedHashSet<>();
        try (Stream<Path> files = Files.list(Path.of("catalog-sample"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".csv")).toList()) {
                try (Stream<String> lines = Files.lines(file)) {
                    lines.findFirst().stream()
                            .flatMap(head -> Stream.of(head.split(",")))
                            .filter(column -> column.contains("_"))
                            .forEach(columns::add);
                }
            }
        }
        return columns;
    }

    /** The names and values of a game's own menu, which are data. */
    private static List<String> words(String menu) {
        return Pattern.compile("(?:name|label|id|word|value)=([^,\\]]+)")
                .matcher(menu)
                .results()
                .flatMap(found -> Stream.of(found.group(1).split("[^\\p{L}\\d]+")))
                .toList();
    }

    /** The German texts with their marks. */
    public static Texts marking() {
        return Texts.of(Locale.GERMANY).through(Untold::marked);
    }

    /** A text as it is when it comes from a bundle. */
    public static String mark(String text) {
        return OPEN + text + SHUT;
    }

    /** Marks what a pattern says itself; what fills its places stays outside. */
    private static String marked(String pattern) {
        if (pattern.matches("[a-z0-9-]+(?:,[a-z0-9-]+)+")) {
            // The list of the glossary's words: keys, and never shown.
            return pattern;
        }
        StringBuilder marked = new StringBuilder().append(OPEN);
        int depth = 0;
        for (int i = 0; i < pattern.length(); i++) {
            char letter = pattern.charAt(i);
            boolean choice = pattern.startsWith("choice", Math.min(i + 3, pattern.length()));
            if (letter == '{' && depth++ == 0 && !choice) {
                marked.append(SHUT);
            }
            marked.append(letter);
            if (letter == '}' && --depth == 0) {
                marked.append(SHUT).append(OPEN);
            }
        }
        return marked.append(SHUT).toString();
    }

    /**
     * The words of a text that come from nowhere.
     *
     * @param said the text, with marks
     * @param data what else are names
     */
    public Set<String> in(String said, Collection<String> data) {
        String text = said.replaceAll(Pattern.quote("" + OPEN) + "[^" + SHUT + "]*" + SHUT, " ");
        for (String name : data) {
            text =
                    text.replaceAll(
                            "(?<![\\p{L}\\d])" + Pattern.quote(name) + "(?![\\p{L}\\d])", " ");
        }
        for (String name : names) {
            text = text.replace(name, " ");
        }
        Set<String> left = new TreeSet<>();
        Pattern.compile("\\p{L}[\\p{L}\\d]{2,}")
                .matcher(text)
                .results()
                .forEach(word -> left.add(word.group()));
        left.removeAll(ALIKE);
        left.removeAll(menus);
        return left;
    }

    /** The same of a page. */
    public Set<String> inPage(String html, Collection<String> data) {
        return in(
                html.replaceAll("(?s)<style>.*?</style>", " ")
                        .replaceAll("(?s)<script>.*?</script>", " ")
                        .replaceAll("(?s)<meta [^>]*>", " ")
                        .replaceAll(
                                "(?s)\\s(?:aria-label|title|alt|value|label|data-[a-z]+)=\"([^\"]*)\"",
                                "> $1 <")
                        .replaceAll("(?s)<[^>]*>", " ")
                        .replaceAll("\":(?:true|false)\\b", "\": ")
                        .replaceAll("(?s)\"(?:[a-zA-Z]+)\":", " ")
                        .replaceAll("\\\\u[0-9a-fA-F]{4}", " ")
                        .replace("&amp;", "&")
                        .replaceAll("&#?\\w+;", " "),
                data);
    }
}
