package rigbrief.report;

import rigbrief.explain.Explanation;
import rigbrief.explain.Input;
import rigbrief.explain.Topic;

/** An explanation in plain text, 80 columns wide. */
public final class ExplanationText implements Report<ExplanationAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("explanation-text", "how a number came about, for people");
    private static final int NAME_COLUMNS = 38;
    private static final int TITLE_COLUMNS = 40;
    private static final int INPUT_COLUMNS = 26;
    private static final int VALUE_COLUMNS = 20;
    private static final int FROM_COLUMNS = 28;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(ExplanationAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        if (answer.explanation().isPresent()) {
            explanation(page, answer, answer.explanation().get());
        } else {
            names(page, answer);
        }
        return page.blank().toString();
    }

    private static void names(TextPage page, ExplanationAnswer answer) {
        page.chapter("Numbers that can be explained", "");
        about(page, answer);
        page.blank();
        TextTable table =
                new TextTable().left("number", NAME_COLUMNS).left("what it is", TITLE_COLUMNS);
        for (Topic topic : answer.topics()) {
            table.row(topic.name(), topic.title());
        }
        page.table(table);
    }

    private static void explanation(TextPage page, ExplanationAnswer answer, Explanation it) {
        page.chapter(it.number(), value(it));
        page.paragraph(0, it.title() + ".");
        about(page, answer);
        page.section("Formula").paragraph(2, it.formula());
        if (!it.inputs().isEmpty()) {
            page.section("Inputs").table(inputs(it));
        }
        steps(page, it);
        page.section("Source").paragraph(2, it.source());
        if (!it.remarks().isEmpty()) {
            page.section("Remarks");
            it.remarks().forEach(remark -> page.hanging("  ", remark + "."));
        }
    }

    private static void about(TextPage page, ExplanationAnswer answer) {
        page.paragraph(
                0, "Build \"%s\" under the brief \"%s\".".formatted(answer.name(), answer.brief()));
    }

    private static String value(Explanation it) {
        return it.value()
                .map(number -> (number.toPlainString() + " " + it.unit()).stripTrailing())
                .orElse("-");
    }

    private static TextTable inputs(Explanation it) {
        TextTable table =
                new TextTable()
                        .left("input", INPUT_COLUMNS)
                        .left("value", VALUE_COLUMNS)
                        .left("from", FROM_COLUMNS);
        for (Input input : it.inputs()) {
            table.row(input.name(), input.value(), input.from());
        }
        return table;
    }

    private static void steps(TextPage page, Explanation it) {
        if (it.steps().isEmpty()) {
            return;
        }
        page.section("Steps");
        int number = 1;
        for (String step : it.steps()) {
            page.hanging("  %2d. ".formatted(number++), step);
        }
    }
}
