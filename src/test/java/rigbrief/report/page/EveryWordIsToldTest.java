package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.assembly.ScenarioBuilds;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Board;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.rule.Rules;
import rigbrief.wording.Texts;

/**
 * No document says anything that is not in the bundles, but for data: every text of the German
 * bundles is marked before its places are filled, and whatever words stand outside of the marks and
 * are no name of the catalogue or the brief, no unit and no standard came from nowhere.
 */
class EveryWordIsToldTest {
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
                    "atx",
                    "itx",
                    "mini",
                    "micro",
                    "matx",
                    "ddr4",
                    "ddr5",
                    "udimm",
                    "sodimm",
                    "wifi5",
                    "wifi6",
                    "wifi6e",
                    "wifi7",
                    "atx2",
                    "atx3",
                    "pci",
                    "uefi",
                    "tpm",
                    "UEFI",
                    "secure",
                    "boot",
                    "low",
                    "RBv1",
                    "RBv2",
                    "RBv3",
                    "November",
                    "quality",
                    "performance",
                    "gold",
                    "silver",
                    "bronze",
                    "platinum",
                    "titanium",
                    "plus",
                    "usb3",
                    "usb",
                    "true",
                    "false",
                    "displayport",
                    "hdmi2",
                    "Hz",
                    "sfx",
                    "std",
                    "any",
                    "ffffff",
                    "rigbrief");

    /** Unlike each other: a liquid cooler, many machines, parts kept, no card. */
    private static final Set<String> SOME =
            Set.of(
                    "potter, full",
                    "forty-desks, lean",
                    "cad, balanced",
                    "keeper, full",
                    "writer, lean",
                    "streamer, full",
                    "school-workshop, lean");

    private static Catalogue catalogue;
    private static List<String> names;
    private static final Set<String> MENUS = new LinkedHashSet<>();

    @BeforeAll
    static void read() throws Exception {
        catalogue = CatalogueReader.read(Path.of("catalog-sample"));
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
                            if (each instanceof FrameRate game) {
                                MENUS.addAll(words(game.toString()));
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

    static List<Arguments> sheets() {
        List<Arguments> sheets = new ArrayList<>();
        for (var filed : ScenarioBuilds.all()) {
            if (!SOME.contains(filed.name())) {
                continue;
            }
            for (Document document : Documents.ALL) {
                sheets.add(Arguments.of(filed.name() + ", " + document.word(), filed, document));
            }
        }
        return sheets;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void a_document_says_nothing_that_is_in_no_bundle(
            String name, ScenarioBuilds.Filed filed, Document document) {
        DocumentSubject subject =
                new DocumentSubject(
                        "file",
                        filed.record(),
                        filed.brief(),
                        filed.catalogue(),
                        new Auditor(filed.brief(), filed.catalogue()).audit(filed.record()));
        Words words = marking();

        assertThat(untold(PageWriter.html(document.page(subject, words), words), filed.brief()))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"potter", "impossible", "forty-desks"})
    void a_proposal_says_nothing_that_is_in_no_bundle(String scenario) throws Exception {
        Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), catalogue);
        Proposals answer =
                new Proposer(new SearchLimits(1, 500, 4_000, Optional.empty()))
                        .propose(brief, catalogue);
        Words words = marking();

        assertThat(untold(PageWriter.html(ProposalPage.of(answer, words), words), brief)).isEmpty();
    }

    @Test
    void a_word_from_nowhere_would_be_found() throws Exception {
        Brief brief = BriefReader.read(Path.of("scenarios", "potter.yaml"), catalogue);

        assertThat(untold("<p>" + OPEN + "ja" + SHUT + " 3.2 GB cooler</p>", brief))
                .containsExactly("cooler");
    }

    /** The names and values of a game's own menu, which are data. */
    private static List<String> words(String menu) {
        return Pattern.compile("(?:name|label|id|word|value)=([^,\\]]+)")
                .matcher(menu)
                .results()
                .flatMap(found -> Stream.of(found.group(1).split("[^\\p{L}\\d]+")))
                .toList();
    }

    private static Words marking() {
        return Words.of(Texts.of(Locale.GERMANY).through(EveryWordIsToldTest::marked));
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

    private static Set<String> untold(String html, Brief brief) {
        String text =
                html.replaceAll("(?s)<style>.*?</style>", " ")
                        .replaceAll("(?s)<script>.*?</script>", " ")
                        .replaceAll("(?s)<meta [^>]*>", " ")
                        .replaceAll(
                                "(?s)\\s(?:aria-label|title|alt|value|data-[a-z]+)=\"([^\"]*)\"",
                                "> $1 <")
                        .replaceAll("(?s)<[^>]*>", " ")
                        .replaceAll("(?s)\"(?:[a-zA-Z]+)\":", " ")
                        .replaceAll("\\\\u[0-9a-fA-F]{4}", " ")
                        .replaceAll("&#?\\w+;", " ");
        text = text.replaceAll(Pattern.quote("" + OPEN) + "[^" + SHUT + "]*" + SHUT, " ");
        for (String name : names) {
            text = text.replace(name, " ");
        }
        for (Kept kept : brief.keep()) {
            text =
                    text.replace(kept.part().name(), " ")
                            .replace(kept.part().listing().model(), " ");
        }
        text = text.replace(brief.client(), " ").replace(brief.name(), " ");
        Set<String> left = new TreeSet<>();
        Pattern.compile("\\p{L}[\\p{L}\\d]{2,}")
                .matcher(text)
                .results()
                .forEach(word -> left.add(word.group()));
        left.removeAll(ALIKE);
        left.removeAll(MENUS);
        return left;
    }
}
