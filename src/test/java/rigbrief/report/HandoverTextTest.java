package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.report.page.DocumentSubject;

class HandoverTextTest {
    static List<DocumentSubject> subjects() {
        return Subjects.some();
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void an_owner_finds_parts_promises_settings_care_and_what_fits_next(DocumentSubject subject) {
        String text = new HandoverText().write(subject, Style.PLAIN);

        assertThat(Subjects.narrow(text)).isTrue();
        String flat = Subjects.flat(text);
        subject.filed()
                .lines()
                .forEach(line -> assertThat(flat).contains(line.part().listing().maker()));
        assertThat(flat)
                .contains("What it is", "What was promised", "In use", "How it is set", "Care")
                .contains("What fits next", "Keep together", "from purchase");
        long blanks = text.lines().filter(line -> line.contains("__________")).count();
        assertThat(blanks)
                .isGreaterThanOrEqualTo(
                        subject.filed().lines().size()
                                + NeedLine.of(subject.brief(), subject.audit()).size());
    }
}
