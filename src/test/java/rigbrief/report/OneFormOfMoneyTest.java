package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.report.page.Document;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Documents;
import rigbrief.report.page.PageWriter;
import rigbrief.report.page.Words;

/**
 * Money has one form in each language, in sentences as in tables: {@code EUR 1,100.00} and {@code
 * 1.100,00 €} (sources in {@code WordsTest}).
 */
class OneFormOfMoneyTest {
    private static final Pattern ENGLISH =
            Pattern.compile("\\bEUR[ \u00a0][+-]?\\d{1,3}(,\\d{3})*(\\.\\d\\d)?(?![\\d,]*\\d)");
    private static final Pattern GERMAN =
            Pattern.compile("(?<![\\d.])\\d{1,3}(\\.\\d{3})*(,\\d\\d)?[ \u00a0]€");

    /** A currency beside a number, whatever the order and the number. */
    private static final Pattern ANY =
            Pattern.compile("(EUR|€)[ \u00a0]?[+-]?\\d|\\d[ \u00a0]?(EUR|€)");

    /** Amounts of a column, whose head names the currency. */
    private static final Pattern NOT_GROUPED = Pattern.compile("(?<![\\d#-])\\d{4,}[.,]\\d\\d\\b");

    /** The handover sheet of one machine alone: what fits next has to be searched for. */
    static List<Arguments> documents() {
        List<Arguments> documents = new ArrayList<>();
        for (DocumentSubject subject : Subjects.some()) {
            for (Document document : Documents.ALL) {
                if (subject.brief().quantity() == 1 || !(document instanceof HandoverDocument)) {
                    documents.add(Arguments.of(document.word(), document, subject));
                }
            }
        }
        return documents;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void in_every_document(String word, Document document, DocumentSubject subject) {
        holds(document, subject, Words.of(Locale.ENGLISH), ENGLISH);
        holds(document, subject, Words.of(Locale.GERMANY), GERMAN);
    }

    private static void holds(
            Document document, DocumentSubject subject, Words words, Pattern form) {
        String text = document.text(subject, words);
        assertThat(form.matcher(text).find()).isEqualTo(!document.word().equals("assembly"));
        holds(text, form);
        String page = PageWriter.html(document.page(subject, words), words);
        holds(page.replaceAll("(?s)<(style|script|path).*?</\\1>|<[^>]*>", " | "), form);
    }

    private static void holds(String text, Pattern form) {
        String rest = form.matcher(text).replaceAll("money");
        assertThat(ANY.matcher(rest).results().map(it -> around(rest, it.start()))).isEmpty();
        assertThat(NOT_GROUPED.matcher(rest).results().map(it -> around(rest, it.start())))
                .isEmpty();
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 30), Math.min(text.length(), at + 30));
    }
}
