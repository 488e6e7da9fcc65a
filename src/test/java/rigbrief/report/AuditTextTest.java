package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.audit.Audit;
import rigbrief.build.Build;

class AuditTextTest {

    @Test
    void an_audit_of_a_broken_build_is_laid_out_as_before() {
        Keep.assertKept("audit.txt", text(fixed(FixedAudit.ofBrokenBuild())));
    }

    @Test
    void the_verdict_comes_first() {
        assertThat(text(fixed(FixedAudit.ofOrdinaryBuild()))).startsWith("FITS ");
        assertThat(text(fixed(FixedAudit.ofBrokenBuild()))).startsWith("BREAKS 1 rule ");
    }

    @Test
    void a_margin_under_ten_millimetres_is_called_tight() {
        String text = text(fixed(FixedAudit.ofOrdinaryBuild()));

        assertThat(text)
                .containsPattern("cooler-height +165 mm +158 mm +7 mm +tight\n")
                .containsPattern("card-length +330 mm +300 mm +30 mm\n");
    }

    @Test
    void an_unfinished_build_names_what_is_missing() {
        assertThat(text(Answers.unfinished()).replaceAll("\\s+", " "))
                .contains("Missing case; what depends on it was not judged.");
        assertThat(text(Answers.audited(Build.empty())).replaceAll("\\s+", " "))
                .contains("what depends on them was not judged.");
    }

    private static AuditAnswer fixed(Audit audit) {
        return new AuditAnswer(
                "potter.build.yaml", Answers.brief().make(), Answers.catalogue().make(), audit);
    }

    private static String text(AuditAnswer answer) {
        return new AuditText().write(answer, Style.PLAIN);
    }
}
