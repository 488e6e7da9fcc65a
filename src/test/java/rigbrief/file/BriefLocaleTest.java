package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;

/** Where a brief says that its client lives. */
class BriefLocaleTest {
    private static Catalogue catalogue;

    @BeforeAll
    static void read(@TempDir Path folder) throws BadInput, IOException {
        catalogue = CatalogueReader.read(aFolder().write(folder));
    }

    private static Brief brief(String more) throws BadInput {
        String text = "client: Marsh Lane Pottery\ncurrency: EUR\nceiling: 1000\n" + more;
        return BriefReader.read(
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                "brief.yaml",
                catalogue);
    }

    @Test
    void a_brief_that_says_nothing_is_british_on_230_volts() throws BadInput {
        Brief brief = brief("");

        assertThat(brief.locale()).isEqualTo(Locale.UK);
        assertThat(brief.place().mainsV()).isEqualTo(230);
    }

    /** Mains of the United States after World Plugs, IEC, from memory: 120 V. */
    @Test
    void the_country_decides_the_mains_where_the_place_does_not() throws BadInput {
        assertThat(brief("locale: en-US\n").place().mainsV()).isEqualTo(115);
        assertThat(brief("locale: en-US\nplace: { room-c: 25 }\n").place().mainsV()).isEqualTo(115);
        assertThat(brief("locale: en-US\nplace: { mains-v: 230 }\n").place().mainsV())
                .isEqualTo(230);
    }

    @Test
    void a_locale_is_written_and_read_back() throws BadInput {
        Brief german = brief("locale: de-AT\n");

        String written = BriefWriter.write(german);

        assertThat(written).contains("locale: de-AT\n");
        assertThat(german.locale()).isEqualTo(new Locale("de", "AT"));
        assertThat(BriefWriter.write(brief(""))).doesNotContain("locale");
    }

    @ParameterizedTest
    @ValueSource(strings = {"german", "de", "de_DE", "de-XQ", "qq-DE", "DE-de"})
    void what_is_no_language_and_country_is_a_fault_with_advice(String locale) {
        assertThatThrownBy(() -> brief("locale: " + locale + "\n"))
                .isInstanceOfSatisfying(
                        BadInput.class,
                        bad ->
                                assertThat(bad.faults())
                                        .singleElement()
                                        .satisfies(
                                                fault ->
                                                        assertThat(fault.text())
                                                                .contains(
                                                                        "4:9: locale: ",
                                                                        "such as de-DE")));
    }
}
