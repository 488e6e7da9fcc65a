package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.proposal.Proposals;

/** Whole scenarios on paper and on screens. */
class ProposalPaperTest {
    private static final int MOST_BYTES = 1_000_000;

    @ParameterizedTest
    @ValueSource(strings = {"potter", "forty-desks", "keeper", "streamer", "tight-600"})
    void paper_has_every_part_price_and_total_of_the_json(String scenario) throws Exception {
        Proposals answer = Offered.scenario(scenario);
        Words words = Words.of(Locale.UK);

        byte[] pdf = PageWriter.pdf(ProposalPage.of(answer, words), words);

        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            PaperText.of(text).holdsAll(answer);
            assertThat(text).contains(answer.brief().client());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"streamer", "editor", "forty-desks"})
    void a_page_is_under_a_megabyte(String scenario) throws Exception {
        Proposals answer = Offered.scenario(scenario);
        Words words = Words.of(Locale.GERMANY);

        String html = PageWriter.html(ProposalPage.of(answer, words), words);

        assertThat(html.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(MOST_BYTES);
    }

    @ParameterizedTest
    @ValueSource(strings = {"impossible"})
    void an_answer_without_builds_names_what_clashes(String scenario) throws Exception {
        Proposals answer = Offered.scenario(scenario);
        Words words = Words.of(Locale.UK);

        String html = PageWriter.html(ProposalPage.of(answer, words), words);

        assertThat(answer.clash().orElseThrow().needs())
                .isNotEmpty()
                .allSatisfy(need -> assertThat(html).contains(need.toString()));
    }
}
