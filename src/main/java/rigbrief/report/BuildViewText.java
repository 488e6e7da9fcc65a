package rigbrief.report;

import java.util.List;
import rigbrief.report.page.BuildView;
import rigbrief.report.page.BuildView.Remark;
import rigbrief.report.page.Figure;
import rigbrief.report.page.NeedRow;
import rigbrief.report.page.NeedView;
import rigbrief.report.page.PartLine;
import rigbrief.report.page.Words;

/** One build of a proposal in plain text, in the reader's language. */
public final class BuildViewText {
    private static final int PLACE_COLUMNS = 18;
    private static final int PART_COLUMNS = 28;
    private static final int SUPPLIER_COLUMNS = 18;

    private final TextPage page = new TextPage(Style.PLAIN);
    private final Words words;

    private BuildViewText(Words words) {
        this.words = words;
    }

    /** The text, with line feeds alone and one at the end. */
    public static String write(
            String title, String lead, List<NeedRow> needs, BuildView build, Words words) {
        BuildViewText text = new BuildViewText(words);
        text.page.chapter(title, build.total());
        text.page.paragraph(0, lead);
        text.parts(build);
        text.needs(needs, build.needs());
        text.figures(build.figures());
        text.list(words.text("build.given"), build.given());
        text.remarks(build);
        text.page.section(words.text("build.proof")).paragraph(2, build.proof());
        return text.page.blank().toString();
    }

    private void parts(BuildView build) {
        page.section(words.text("slider.parts"));
        TextTable table =
                new TextTable()
                        .left("", PLACE_COLUMNS)
                        .left(words.text("col.part"), PART_COLUMNS)
                        .left(words.text("col.supplier"), SUPPLIER_COLUMNS)
                        .right(words.text("col.price"));
        for (PartLine part : build.parts()) {
            String name = part.number().equals("1") ? "" : part.number() + " x ";
            table.remarked(
                    part.what(), part.place(), name + part.name(), part.supplier(), part.price());
        }
        build.sums().forEach(sum -> table.row(sum.get(0), "", "", sum.get(1)));
        page.table(table);
        page.blank().paragraph(2, build.delivery());
    }

    private void needs(List<NeedRow> needs, List<NeedView> views) {
        if (views.isEmpty()) {
            return;
        }
        page.section(words.text("slider.promises"));
        for (int i = 0; i < views.size(); i++) {
            NeedRow row = needs.get(i);
            NeedView view = views.get(i);
            String title =
                    row.measure().isEmpty() ? row.title() : row.title() + ", " + row.measure();
            page.hanging(
                    "  - ",
                    "%s (%s): %s, %s; %s"
                            .formatted(
                                    title,
                                    row.asked(),
                                    view.promised(),
                                    view.range(),
                                    view.verdict()));
        }
    }

    private void figures(List<Figure> figures) {
        if (!figures.isEmpty()) {
            page.section(words.text("figures.head"));
        }
        for (Figure figure : figures) {
            page.hanging("  - ", figure.name() + ": " + figure.words());
            page.hanging("    ", figure.numbers());
        }
    }

    private void list(String head, List<String> items) {
        page.section(head);
        if (items.isEmpty()) {
            page.paragraph(2, words.text("build.given.none"));
        }
        items.forEach(item -> page.hanging("  - ", item));
    }

    private void remarks(BuildView build) {
        page.section(words.text("cautions.head"));
        remarks(words.text("cautions.broken"), build.breaches());
        remarks(words.text("cautions.caution"), build.cautions());
        remarks(words.text("cautions.note"), build.notes());
        boolean none =
                build.breaches().isEmpty() && build.cautions().isEmpty() && build.notes().isEmpty();
        if (none) {
            page.paragraph(2, words.text("cautions.none"));
        }
    }

    private void remarks(String label, List<Remark> remarks) {
        for (Remark remark : remarks) {
            String text = remark.text() + " (" + remark.title() + ")";
            page.hanging("  - ", label + ": " + text);
        }
    }
}
