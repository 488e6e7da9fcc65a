package rigbrief.report;

import java.util.List;
import java.util.Locale;
import rigbrief.assembly.AssemblyPlan;
import rigbrief.assembly.Caution;
import rigbrief.assembly.Check;
import rigbrief.assembly.Connection;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.assembly.Step;
import rigbrief.assembly.TightSpot;
import rigbrief.assembly.Tool;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Words;

/** An assembly plan in plain text. */
public final class AssemblyText implements Report<DocumentSubject> {
    private static final ReportInfo INFO =
            ReportInfo.text("assembly-text", "an assembly plan for people");
    private static final int LEAD_COLUMNS = 20;
    private static final int END_COLUMNS = 24;
    private static final int WHAT_COLUMNS = 34;
    private static final int EXPECT_COLUMNS = 38;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(DocumentSubject subject, Style style) {
        return write(subject, style, Words.of(Locale.ENGLISH));
    }

    /** The same in the reader's language. */
    public String write(DocumentSubject subject, Style style, Words words) {
        AssemblyPlan plan = AssemblyPlan.of(subject.bench(words.texts()));
        return new Writing(new TextPage(style), subject, plan, words).document();
    }

    private record Writing(TextPage page, DocumentSubject subject, AssemblyPlan plan, Words words) {

        String document() {
            page.chapter(words.text("plan.head"), words.text("count.step", plan.steps().size()));
            page.paragraph(
                    0,
                    words.text("bench.for-whom", BenchWords.machines(subject, words))
                            + " "
                            + words.text("plan.deferral"));
            cautions();
            lookAt();
            tight();
            tools();
            air();
            steps();
            connections();
            checks(words.text("plan.first-boot"), plan.firstBoot());
            checks(words.text("plan.tests"), plan.tests());
            return page.blank().toString();
        }

        private void cautions() {
            page.section(words.text("plan.cautions"));
            for (Caution caution : plan.cautions()) {
                page.hanging(
                        "  " + caution.head() + ": ",
                        caution.text() + " (" + caution.basis() + ")");
            }
        }

        private void lookAt() {
            if (!plan.lookAt().isEmpty()) {
                page.section(words.text("plan.look"));
                plan.lookAt()
                        .forEach(
                                finding ->
                                        page.hanging(
                                                "  " + finding.rule() + ": ",
                                                words.say(finding.phrase())));
            }
        }

        private void tight() {
            page.section(words.text("plan.tight"));
            if (plan.tight().isEmpty()) {
                page.paragraph(2, words.text("plan.tight.none", TightSpot.UNDER_MM));
            }
            for (TightSpot spot : plan.tight()) {
                page.hanging("  " + spot.rule() + ": ", BenchWords.tight(spot, words));
            }
        }

        private void tools() {
            page.section(words.text("plan.tools"));
            for (Tool tool : plan.tools()) {
                page.hanging("  [ ] ", tool.name() + ": " + tool.use());
            }
        }

        private void air() {
            page.section(words.text("plan.air"));
            FanDrawingText.lines(plan.fans()).forEach(line -> page.line("  " + line));
            page.blank();
            for (PlacedFan group : plan.fans().fans()) {
                page.hanging(
                        "  " + FanDrawingText.letter(plan.fans(), group) + "  ",
                        FanWords.group(group, words));
            }
            page.paragraph(2, FanWords.balance(plan.fans(), words));
            String free = FanWords.free(plan.fans(), words);
            if (!free.isEmpty()) {
                page.paragraph(2, free);
            }
        }

        private void steps() {
            page.section(words.text("plan.work"));
            int number = 0;
            for (Step step : plan.steps()) {
                number++;
                page.blank().hanging("[ ] %2d. ".formatted(number), step.title());
                step.actions().forEach(action -> page.hanging("        - ", action));
            }
        }

        private void connections() {
            page.section(words.text("plan.connections"));
            TextTable table =
                    new TextTable()
                            .left("", "[ ]".length())
                            .left(words.text("column.plug"), LEAD_COLUMNS)
                            .right(words.text("column.qty"))
                            .left(words.text("column.from"), END_COLUMNS)
                            .left(words.text("column.to"), END_COLUMNS);
            for (Connection connection : plan.connections()) {
                table.remarked(
                        connection.remark(),
                        "[ ]",
                        connection.lead().title(words.texts()),
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
                            .left(words.text("plan.see-to"), WHAT_COLUMNS)
                            .left(words.text("plan.expect"), EXPECT_COLUMNS);
            checks.forEach(check -> table.row("[ ]", check.what(), check.expect()));
            page.table(table);
        }
    }
}
