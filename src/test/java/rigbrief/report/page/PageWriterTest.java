package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BriefFixture.aBrief;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.aCatalogue;
import static rigbrief.fixture.MemoryFixture.aMemoryKit;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.build.Build;
import rigbrief.proposal.Proposals;

class PageWriterTest {
    private static final Words ENGLISH = Words.of(Locale.UK);

    private static Proposals named(String maker) {
        Build lean = aBuild().make();
        Build full = aBuild().with(aMemoryKit().id("other").maker(maker), 2).make();
        return Offered.of(aBrief(), aCatalogue().offering(full).offering(lean), lean, full);
    }

    private static String html(Proposals answer) {
        return PageWriter.html(ProposalPage.of(answer, ENGLISH), ENGLISH);
    }

    private static String paper(Proposals answer) throws Exception {
        return text(PageWriter.pdf(ProposalPage.of(answer, ENGLISH), ENGLISH));
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void markup_in_a_name_is_text_wherever_it_stands() {
        String page = html(named("\"><img src=x onerror=alert(1)></script><script>alert(2)//"));

        assertThat(page).doesNotContain("<img", "onerror=alert(1)>", "<script>alert");
        assertThat(page).contains("&lt;script&gt;alert(2)//", "\\u003cscript\\u003ealert(2)//");
    }

    @Test
    void characters_that_print_nothing_are_spelt_out() {
        String page = html(named("Evil\u202egnp.exe\u0007"));

        assertThat(page).doesNotContain("\u202e", "\u0007").contains("Evil\\u202Egnp.exe");
    }

    /** Content Security Policy Level 3, W3C, section 6.7.2.3: base64 of the SHA-256 in UTF-8. */
    @Test
    void the_policy_knows_the_pages_style_and_script_by_their_digests() throws Exception {
        String page = html(named("Plain"));

        assertThat(page).contains("default-src &#39;none&#39;");
        assertThat(page).contains("style-src &#39;" + digest(page, "style"));
        assertThat(page).contains("script-src &#39;" + digest(page, "script"));
        assertThat(page).doesNotContain(" style=\"", " onclick=", "http-equiv=\"refresh\"");
    }

    private static String digest(String page, String element) throws Exception {
        Matcher found =
                Pattern.compile("(?s)<" + element + ">(.*?)</" + element + ">").matcher(page);
        assertThat(found.find()).isTrue();
        byte[] digest =
                MessageDigest.getInstance("SHA-256")
                        .digest(found.group(1).getBytes(StandardCharsets.UTF_8));
        return "sha256-" + Base64.getEncoder().encodeToString(digest);
    }

    @Test
    void a_page_names_nothing_on_a_network() {
        String page = html(named("Plain"));

        assertThat(page.replace("http://www.w3.org/", ""))
                .doesNotContain("http:", "https:", "src=\"", "@import", "url(http");
    }

    @Test
    void the_same_answer_gives_the_same_bytes() {
        Proposals answer = named("Plain");

        assertThat(html(answer)).isEqualTo(html(answer));
        assertThat(PageWriter.pdf(ProposalPage.of(answer, ENGLISH), ENGLISH))
                .isEqualTo(PageWriter.pdf(ProposalPage.of(answer, ENGLISH), ENGLISH));
    }

    /** One word per script and sign; those without a font are spelt by their Unicode number. */
    @ParameterizedTest
    @CsvSource({
        "Größe àçéñø Œuvre Łódź, Größe àçéñø Œuvre Łódź",
        "Ήλιος Дыня, Ήλιος Дыня",
        "€ £ – “x” ≥ ±, € £ – “x” ≥ ±",
        "漢字, [U+6F22][U+5B57]",
        "שלום, [U+05E9][U+05DC][U+05D5][U+05DD]"
    })
    void no_character_is_lost_on_paper(String name, String shown) throws Exception {
        String text = paper(named(name));

        assertThat(PaperText.of(text).contains(shown)).as(text).isTrue();
    }

    /** ISO 216 A4 is 595.3 by 841.9 points, ANSI A (Letter) 612 by 792. */
    @ParameterizedTest
    @CsvSource({"en-GB,595,842", "de-DE,595,842", "en-US,612,792", "fr-CA,612,792"})
    void paper_is_what_the_readers_country_uses(String tag, float widthPt, float heightPt)
            throws Exception {
        Words words = Words.of(Locale.forLanguageTag(tag));

        byte[] pdf = PageWriter.pdf(ProposalPage.of(named("Plain"), words), words);

        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(Math.round(document.getPage(0).getMediaBox().getWidth()))
                    .isEqualTo(Math.round(widthPt));
            assertThat(Math.round(document.getPage(0).getMediaBox().getHeight()))
                    .isEqualTo(Math.round(heightPt));
        }
    }

    @Test
    void words_on_paper_can_be_searched_for_since_no_letters_are_joined() throws Exception {
        String text = paper(named("Offshift Drafting Office"));

        assertThat(text).contains("Offshift Drafting Office");
    }
}
