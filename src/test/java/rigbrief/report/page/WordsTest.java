package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.quantity.Unit;
import rigbrief.rule.Rules;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;
import rigbrief.wording.Texts;

class WordsTest {
    private static final Currency EURO = Currency.getInstance("EUR");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");

    /**
     * Expected as the style guides of both languages have it: Duden; common British use, for money
     * the Union's Interinstitutional Style Guide, 7.3.3 (from memory): in English the code stands
     * before the amount.
     */
    @Test
    void numbers_money_and_dates_are_written_as_where_the_reader_is() {
        Words english = Words.of(Locale.UK);
        Words german = Words.of(Locale.GERMANY);

        assertThat(english.money(118_590, EURO)).isEqualTo("EUR\u00a01,185.90");
        assertThat(german.money(118_590, EURO)).isEqualTo("1.185,90\u00a0€");
        assertThat(english.number(1, 37.94)).isEqualTo("37.9");
        assertThat(german.number(1, 37.94)).isEqualTo("37,9");
        assertThat(english.date(LocalDate.of(2026, 11, 20))).isEqualTo("20 November 2026");
        assertThat(german.date(LocalDate.of(2026, 11, 20))).isEqualTo("20. November 2026");
    }

    /** ISO 4217: the yen has no minor unit. */
    @Test
    void money_has_as_many_decimals_as_its_currency() {
        Words words = Words.of(Locale.UK);

        assertThat(words.amount(1_234, Currency.getInstance("JPY"))).isEqualTo("1,234");
        assertThat(words.amount(1_234, EURO)).isEqualTo("12.34");
    }

    @Test
    void a_language_without_texts_of_its_own_is_answered_in_english() {
        Words words = Words.of(new Locale("fi", "FI"));

        assertThat(words.language()).isEqualTo("en");
        assertThat(words.text("sum.total")).isEqualTo("Total");
        assertThat(words.number(1, 37.94)).isEqualTo("37,9");
    }

    @Test
    void a_text_that_is_not_there_is_a_fault_that_names_it() {
        assertThatThrownBy(() -> Words.of(Locale.UK).text("no.such"))
                .isInstanceOf(MissingResourceException.class)
                .hasMessageContaining("no.such");
    }

    /** Rounding half up is the rule of everyday arithmetic (DIN 1333, 4.5.1, from memory). */
    @Test
    void a_phrase_reads_alike_whatever_the_hosts_locale_and_rounds_half_up() {
        Phrase noise =
                Phrase.of(
                        "finding.noise",
                        Measured.of(3_405, Unit.CENTIDECIBEL),
                        1.25,
                        Measured.of(3_000, Unit.CENTIDECIBEL));
        Locale before = Locale.getDefault();
        for (Locale host : List.of(Locale.ROOT, Locale.GERMANY, new Locale("ar", "EG"))) {
            Locale.setDefault(host);
            try {
                assertThat(noise.toString())
                        .as(host.toString())
                        .isEqualTo(
                                "34.05 dB(A) at 1.3 m under the heaviest workload, 30.00 dB(A) allowed");
                assertThat(Texts.of(Locale.GERMAN).say(noise)).startsWith("34,05 dB(A) in 1,3 m");
            } finally {
                Locale.setDefault(before);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void both_languages_have_the_same_texts_with_the_same_places(String bundle) throws Exception {
        Properties english = properties(bundle + ".properties");
        Properties german = properties(bundle + "_de.properties");
        english.remove("glossary.words");
        // English has the rules' own titles.
        german.stringPropertyNames().stream()
                .filter(key -> key.startsWith("rule."))
                .forEach(german::remove);

        assertThat(german.stringPropertyNames()).isEqualTo(english.stringPropertyNames());
        for (String key : new TreeSet<>(english.stringPropertyNames())) {
            assertThat(places(german.getProperty(key)))
                    .as(key)
                    .isEqualTo(places(english.getProperty(key)));
        }
    }

    static List<String> bundles() {
        return Texts.BUNDLES;
    }

    /** {@link java.text.MessageFormat}: one apostrophe quotes what follows, two print one. */
    @ParameterizedTest
    @MethodSource("bundles")
    void no_text_has_an_apostrophe_that_the_format_would_swallow(String bundle) throws Exception {
        for (String ending : List.of(".properties", "_de.properties")) {
            Properties texts = properties(bundle + ending);
            texts.stringPropertyNames()
                    .forEach(
                            key ->
                                    assertThat(texts.getProperty(key).replace("''", ""))
                                            .as(key)
                                            .doesNotContain("'"));
        }
    }

    /** A key in two bundles would be told by whichever is looked through first. */
    @Test
    void no_key_is_in_two_bundles() throws Exception {
        List<String> keys = new ArrayList<>();
        for (String bundle : Texts.BUNDLES) {
            keys.addAll(properties(bundle + ".properties").stringPropertyNames());
        }

        assertThat(keys).doesNotHaveDuplicates();
    }

    @Test
    void every_rule_has_a_title_in_german() throws Exception {
        Properties german = properties("rules_de.properties");

        assertThat(Rules.ALL)
                .allSatisfy(
                        rule ->
                                assertThat(german.stringPropertyNames())
                                        .contains("rule." + rule.info().id()));
    }

    @Test
    void every_word_of_the_glossary_has_a_term_and_a_meaning() {
        Words words = Words.of(Locale.UK);

        assertThat(words.text("glossary.words").split(","))
                .allSatisfy(
                        word -> {
                            assertThat(words.has("term." + word)).isTrue();
                            assertThat(words.has("gloss." + word)).isTrue();
                        });
    }

    private static List<String> places(String text) {
        return new ArrayList<>(
                new TreeSet<>(PLACE.matcher(text).results().map(MatchResult::group).toList()));
    }

    private static Properties properties(String name) throws IOException {
        Properties properties = new Properties();
        try (Reader in =
                new InputStreamReader(
                        Words.class.getResourceAsStream("/rigbrief/words/" + name),
                        StandardCharsets.UTF_8)) {
            properties.load(in);
        }
        return properties;
    }
}
