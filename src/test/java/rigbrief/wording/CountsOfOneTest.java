package rigbrief.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A text whose numbers are all one has its nouns in the singular, in both languages. */
class CountsOfOneTest {
    private static final int MOST_PLACES = 12;

    /** What is never said of one, and what only the page's script fills in. */
    private static final Set<String> OF_SEVERAL =
            Set.of(
                    "ask.ceiling-of-all",
                    "bench.each",
                    "build.caption.many",
                    "caution.circuit.text",
                    "form.say.cap",
                    "form.say.faults",
                    "expected.text",
                    "form.say.pieces",
                    "mix.lead",
                    "proposal.kind.many",
                    "slider.chart.words");

    /** What ends in an s in English behind a number and is no noun in the plural. */
    private static final Set<String> NO_PLURAL =
            Set.of(
                    ("asks carries corrects fps has is leaves less lies mains ms needs reads reports"
                                    + " requires stops switches takes")
                            .split(" "));

    /** Rates, bits, volts and litres, which are measured and not counted. */
    private static final Pattern MEASURED =
            Pattern.compile(
                    ".*(pictures a second|picture points|frames a second|bits|litres|volts|degrees"
                            + "|million points|Bilder je Sekunde|Bilder/s|Millionen Punkten).*");

    private static final Pattern ENGLISH =
            Pattern.compile(
                    "(?<![\\d.,])1 (?:(?:SATA|added|case|cheaper|memory) )?([a-z]+s)\\b.{0,20}");

    /** Plurals of the German texts, by their ends. */
    private static final Pattern GERMAN =
            Pattern.compile(
                    "(?<![\\d.,])1 (?:zusätzlichen |SATA-)?(Anschlüssen?|Antworten|Ausgänge|Bilder"
                            + "|Bildschirmen?|Buchstaben|Geräten?|Jahren?|Kerne|Laufwerken?"
                            + "|Lieferanten|Lüftern|Modulen?|Nachkommastellen|Plätzen?|Schritten?"
                            + "|Sekunden|Steckplätzen?|Stunden|Tagen?|Teilen?|billigeren)\\b.{0,20}");

    private static List<String> ones(Locale language, Pattern plural) {
        Object[] ones = new Object[MOST_PLACES];
        Arrays.fill(ones, 1);
        Texts texts = Texts.of(language);
        return Texts.BUNDLES.stream()
                .map(name -> ResourceBundle.getBundle("rigbrief.words." + name, language))
                .flatMap(bundle -> bundle.keySet().stream())
                .filter(key -> !OF_SEVERAL.contains(key))
                .flatMap(key -> found(key, texts.text(key, ones), plural))
                .sorted()
                .toList();
    }

    private static Stream<String> found(String key, String text, Pattern plural) {
        return plural.matcher(text)
                .results()
                .filter(found -> !NO_PLURAL.contains(found.group(1)))
                .map(MatchResult::group)
                .filter(found -> !MEASURED.matcher(found).matches())
                .map(found -> key + ": " + found);
    }

    @Test
    void in_english() {
        assertThat(ones(Locale.ENGLISH, ENGLISH)).isEmpty();
    }

    @Test
    void in_german() {
        assertThat(ones(Locale.GERMAN, GERMAN)).isEmpty();
    }
}
