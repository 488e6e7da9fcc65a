package rigbrief.report;

import java.util.List;
import rigbrief.audit.Audit;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.audit.MarginLine;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;
import rigbrief.rule.Margin;
import rigbrief.wording.Counted;

/** An audit in plain text, 80 columns wide. */
public final class AuditText implements Report<AuditAnswer> {
    private static final ReportInfo INFO = ReportInfo.text("audit-text", "an audit for people");
    private static final int RULE_COLUMNS = 20;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(AuditAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        new Writing(page, answer).document();
        return page.toString();
    }

    private static final class Writing {
        private final TextPage page;
        private final AuditAnswer answer;
        private final Audit audit;
        private final AssessmentText assessment;

        Writing(TextPage page, AuditAnswer answer) {
            this.page = page;
            this.answer = answer;
            this.audit = answer.audit();
            this.assessment = new AssessmentText(page, answer.brief(), answer.catalogue());
        }

        void document() {
            page.chapter(
                    verdict(),
                    Money.ofMinor(audit.cost().totalMinor(), answer.brief().currency()).toString());
            page.paragraph(
                    0,
                    "Build \"%s\" under the brief \"%s\" with catalogue \"%s\" of %s."
                            .formatted(
                                    answer.name(),
                                    answer.brief().name(),
                                    answer.catalogue().name(),
                                    answer.catalogue().asOf()));
            assessment.findings("Broken rules", audit.findings(), Level.BREACH);
            missing();
            assessment.findings("Cautions", audit.findings(), Level.CAUTION);
            assessment.findings("Notes", audit.findings(), Level.NOTE);
            margins();
            assessment.parts(audit, List.of());
            if (audit.figures().isPresent()) {
                assessment.needs(audit);
                assessment.score(audit);
                assessment.figures(audit);
            }
            page.blank();
        }

        private String verdict() {
            long breaches =
                    audit.findings().stream()
                            .filter(finding -> finding.level() == Level.BREACH)
                            .count();
            return audit.fits() ? "FITS" : "BREAKS " + Counted.of(breaches, "rule");
        }

        private void missing() {
            List<Slot> missing = audit.build().missing();
            if (!missing.isEmpty()) {
                page.section("Missing");
                page.hanging(
                        "  ",
                        String.join(", ", missing.stream().map(Slot::word).toList())
                                + "; what depends on "
                                + (missing.size() == 1 ? "it" : "them")
                                + " was not judged.");
            }
        }

        private void margins() {
            if (audit.margins().isEmpty()) {
                return;
            }
            page.section("Margins");
            TextTable table =
                    new TextTable()
                            .left("rule", RULE_COLUMNS)
                            .right("have")
                            .right("need")
                            .right("spare")
                            .left("", RULE_COLUMNS);
            for (MarginLine line : audit.margins()) {
                Margin margin = line.margin();
                table.row(
                        line.rule(),
                        amount(margin.have(), margin),
                        amount(margin.need(), margin),
                        amount(margin.spare(), margin),
                        margin.spare() < 0 ? "broken" : Printed.tight(margin) ? "tight" : "");
            }
            page.table(table);
        }

        private String amount(long amount, Margin margin) {
            return Printed.amount(amount, margin.unit(), answer.brief().currency());
        }
    }
}
