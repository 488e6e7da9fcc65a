package rigbrief.report;

import java.util.List;
import rigbrief.assembly.AssemblyPlan;
import rigbrief.assembly.Caution;
import rigbrief.assembly.Check;
import rigbrief.assembly.Connection;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.assembly.Step;
import rigbrief.assembly.TightSpot;
import rigbrief.assembly.Tool;
import rigbrief.report.page.DocumentSubject;

/** An assembly plan in plain text. */
public final class AssemblyText implements Report<DocumentSubject> {
    private static final ReportInfo INFO =
            ReportInfo.text("assembly-text", "an assembly plan for people");
    private static final int LEAD_COLUMNS = 20;
    private static final int END_COLUMNS = 24;
    private static final int WHAT_COLUMNS = 34;
    private static final int EXPECT_COLUMNS = 38;

    /** The sentence that goes before all others. */
    static final String DEFERRAL =
            "The order of work, places and durations are usual practice. The part makers' manuals and"
                    + " local electrical codes go before them wherever they differ.";

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(DocumentSubject subject, Style style) {
        AssemblyPlan plan = AssemblyPlan.of(subject.bench());
        return new Writing(new TextPage(style), subject, plan).document();
    }

    private record Writing(TextPage page, DocumentSubject subject, AssemblyPlan plan) {

        String document() {
            page.chapter("ASSEMBLY PLAN", AssessmentText.counted(plan.steps().size(), "step"));
            page.paragraph(0, "For " + BenchWords.machines(subject) + ". " + DEFERRAL);
            cautions();
            lookAt();
            tight();
            tools();
            air();
            steps();
            connections();
            checks("First boot", plan.firstBoot());
            checks("Tests before handover", plan.tests());
            return page.blank().toString();
        }

        private void cautions() {
            page.section("Cautions");
            for (Caution caution : plan.cautions()) {
                page.hanging(
                        "  " + caution.head() + ": ",
                        caution.text() + " (" + caution.basis() + ")");
            }
        }

        private void lookAt() {
            if (!plan.lookAt().isEmpty()) {
                page.section("Look at this first");
                plan.lookAt()
                        .forEach(
                                finding ->
                                        page.hanging("  " + finding.rule() + ": ", finding.text()));
            }
        }

        private void tight() {
            page.section("Tight: measure first");
            if (plan.tight().isEmpty()) {
                page.paragraph(
                        2,
                        "Every clearance that was judged has at least %d mm to spare."
                                .formatted(TightSpot.UNDER_MM));
            }
            for (TightSpot spot : plan.tight()) {
                page.hanging("  " + spot.rule() + ": ", BenchWords.tight(spot));
            }
        }

        private void tools() {
            page.section("At hand");
            for (Tool tool : plan.tools()) {
                page.hanging("  [ ] ", tool.name() + ": " + tool.use());
            }
        }

        private void air() {
            page.section("Fans and air");
            FanDrawingText.lines(plan.fans()).forEach(line -> page.line("  " + line));
            page.blank();
            for (PlacedFan group : plan.fans().fans()) {
                page.hanging(
                        "  " + FanDrawingText.letter(plan.fans(), group) + "  ",
                        FanWords.group(group));
            }
            page.paragraph(2, FanWords.balance(plan.fans()));
            String free = FanWords.free(plan.fans());
            if (!free.isEmpty()) {
                page.paragraph(2, free);
            }
        }

        private void steps() {
            page.section("Order of work");
            int number = 0;
            for (Step step : plan.steps()) {
                number++;
                page.blank().hanging("[ ] %2d. ".formatted(number), step.title());
                step.actions().forEach(action -> page.hanging("        - ", action));
            }
        }

        private void connections() {
            page.section("Connections");
            TextTable table =
                    new TextTable()
                            .left("", "[ ]".length())
                            .left("plug", LEAD_COLUMNS)
                            .right("qty")
                            .left("from", END_COLUMNS)
                            .left("to", END_COLUMNS);
            for (Connection connection : plan.connections()) {
                table.remarked(
                        connection.remark(),
                        "[ ]",
                        connection.lead().title(),
                        BenchWords.count(connection),
                        connection.from(),
                        connection.to());
            }
            page.table(table);
        }

        private void checks(String head, List<Check> checks) {
            page.section(head);
            TextTable table =
                    new TextTable()
                            .left("", "[ ]".length())
                            .left("see to", WHAT_COLUMNS)
                            .left("has to come out", EXPECT_COLUMNS);
            checks.forEach(check -> table.row("[ ]", check.what(), check.expect()));
            page.table(table);
        }
    }
}
