package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ImportTextTest {

    @Test
    void a_refused_list_reads_as_it_did() {
        Keep.assertKept("import-refused.txt", text(ImportAnswers.refused()));
    }

    @Test
    void a_list_that_was_taken_in_reads_as_it_did() {
        Keep.assertKept("import-changed.txt", text(ImportAnswers.changed()));
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(text(ImportAnswers.refused()).lines()).allMatch(line -> line.length() <= 80);
    }

    private static String text(ImportAnswer answer) {
        return new ImportText().write(answer, Style.PLAIN);
    }
}
