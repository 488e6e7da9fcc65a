package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.assembly.AssemblyPlan;
import rigbrief.quantity.Money;
import rigbrief.report.page.Document;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.PageWriter;
import rigbrief.report.page.Words;
import rigbrief.wording.Texts;

/** The sheets for counter, bench and owner as pages and on paper. */
class BenchDocumentsTest {
    private static final Words WORDS = Words.of(Locale.UK);

    private static final List<FanDrawing.Look> FANS =
            List.of(FanDrawing.Look.FAN, FanDrawing.Look.BOUGHT, FanDrawing.Look.RADIATOR);

    static List<Arguments> sheets() {
        List<Arguments> sheets = new ArrayList<>();
        for (DocumentSubject subject : Subjects.some()) {
            for (Document document :
                    List.of(
                            new OrderListDocument(),
                            new AssemblyDocument(),
                            new HandoverDocument())) {
                sheets.add(Arguments.of(document.word(), document, subject));
            }
        }
        return sheets;
    }

    static List<DocumentSubject> subjects() {
        return Subjects.some();
    }

    private static String paper(Document document, DocumentSubject subject) throws Exception {
        byte[] pdf = PageWriter.pdf(document.page(subject, WORDS), WORDS);
        try (PDDocument read = Loader.loadPDF(pdf)) {
            // Lines break anywhere, so what is looked for is looked for without its spaces.
            return squeezed(new PDFTextStripper().getText(read));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void a_sheet_is_one_well_formed_page_that_loads_nothing(
            String word, Document document, DocumentSubject subject) throws Exception {
        String html = PageWriter.html(document.page(subject, WORDS), WORDS);

        String xml = html.replaceFirst("(?i)<!doctype html>", "").replace("&nbsp;", "&#160;");
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
        assertThat(html)
                .doesNotContain(" src=", "href=\"http", "url(http", "<script")
                .contains("Content-Security-Policy", "default-src");
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void the_order_list_on_paper_has_every_part_every_price_and_the_total(DocumentSubject subject)
            throws Exception {
        String text = paper(new OrderListDocument(), subject);

        for (var line : subject.audit().cost().lines()) {
            holds(text, subject.filed().build().part(line.slot()).name());
            holds(text, amount(line.unitMinor(), subject));
        }
        holds(text, "All in " + amount(subject.audit().cost().totalMinor(), subject));
    }

    private static String squeezed(String text) {
        return text.replaceAll("[\\s\u00a0]+", "");
    }

    private static void holds(String text, String words) {
        assertThat(text).contains(squeezed(words));
    }

    private static String amount(long minor, DocumentSubject subject) {
        Money money = Money.ofMinor(minor, subject.brief().currency());
        return WORDS.amount(money.minorUnits(), money.currency());
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void the_assembly_plan_on_paper_has_every_step_and_the_drawing(DocumentSubject subject)
            throws Exception {
        AssemblyPlan plan = AssemblyPlan.of(subject.bench(Texts.ENGLISH));

        String text = paper(new AssemblyDocument(), subject);

        for (int i = 0; i < plan.steps().size(); i++) {
            holds(text, "%d. %s".formatted(i + 1, plan.steps().get(i).title()));
        }
        assertThat(text).contains("cooler", "board", "rear", "front", "Storedcharge");
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void the_drawing_has_a_fan_for_every_fan_and_words_for_those_who_cannot_see_it(
            DocumentSubject subject) {
        AssemblyPlan plan = AssemblyPlan.of(subject.bench(Texts.ENGLISH));

        FanDrawing drawing = FanDrawing.of(plan.build(), plan.fans(), WORDS);
        String html = PageWriter.html(new AssemblyDocument().page(subject, WORDS), WORDS);

        assertThat(drawing.boxes().stream().filter(box -> FANS.contains(box.look())).count())
                .isEqualTo(plan.fans().count());
        assertThat(html)
                .contains("role=\"img\"", "aria-labelledby=\"fans-title fans-words\"")
                .contains("<desc id=\"fans-words\">Side view of the case");
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void the_handover_sheet_on_paper_names_every_part_and_leaves_room_for_its_number(
            DocumentSubject subject) throws Exception {
        String text = paper(new HandoverDocument(), subject);

        subject.filed().lines().forEach(line -> holds(text, line.part().name()));
        holds(text, "Serial number");
        holds(text, "Measured");
        holds(text, "What fits next");
    }
}
