package rigbrief.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rigbrief.diagnostic.Quotation;

/** A table in columns as wide as their widest cell, up to a limit beyond which cells wrap. */
final class TextTable {
    private static final String GAP = "  ";

    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    private record Column(String head, boolean rightAligned, int widest) {}

    private record Row(List<String> cells, String remark) {}

    /** Adds a column whose cells begin below each other. */
    TextTable left(String head, int widest) {
        columns.add(new Column(head, false, widest));
        return this;
    }

    /** Adds a column whose cells end below each other; they never wrap. */
    TextTable right(String head) {
        columns.add(new Column(head, true, TextPage.WIDTH));
        return this;
    }

    /** Adds a row, one cell per column. */
    TextTable row(String... cells) {
        return remarked("", cells);
    }

    /** Adds a row with a remark beneath it, from the second column on. */
    TextTable remarked(String remark, String... cells) {
        List<String> visible = new ArrayList<>(cells.length);
        for (String cell : cells) {
            visible.add(Quotation.visible(cell));
        }
        rows.add(new Row(visible, remark));
        return this;
    }

    /** Whether it has no rows. */
    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The lines: heads, a rule, rows. */
    List<String> lines() {
        int[] widths = new int[columns.size()];
        for (int c = 0; c < widths.length; c++) {
            widths[c] = width(c);
        }
        List<String> lines = new ArrayList<>();
        lines.addAll(lines(columns.stream().map(Column::head).toList(), widths));
        lines.add("-".repeat(Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1)));
        for (Row row : rows) {
            lines.addAll(lines(row.cells(), widths));
            addRemark(lines, row.remark(), widths[0] + GAP.length());
        }
        return lines;
    }

    private int width(int column) {
        int widest = TextPage.length(columns.get(column).head());
        for (Row row : rows) {
            String cell = row.cells().get(column);
            for (String line : TextPage.wrapped(cell, columns.get(column).widest())) {
                widest = Math.max(widest, TextPage.length(line));
            }
        }
        return widest;
    }

    private List<String> lines(List<String> cells, int[] widths) {
        List<List<String>> wrapped = new ArrayList<>();
        int height = 1;
        for (int c = 0; c < widths.length; c++) {
            wrapped.add(TextPage.wrapped(cells.get(c), widths[c]));
            height = Math.max(height, wrapped.get(c).size());
        }
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < height; i++) {
            lines.add(line(wrapped, i, widths));
        }
        return lines;
    }

    private String line(List<List<String>> wrapped, int index, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < widths.length; c++) {
            String cell = index < wrapped.get(c).size() ? wrapped.get(c).get(index) : "";
            String space = " ".repeat(Math.max(0, widths[c] - TextPage.length(cell)));
            line.append(c > 0 ? GAP : "");
            line.append(columns.get(c).rightAligned() ? space + cell : cell + space);
        }
        return line.toString().stripTrailing();
    }

    private static void addRemark(List<String> lines, String remark, int indent) {
        if (!remark.isEmpty()) {
            int width = TextPage.WIDTH - indent - 2;
            for (String line : TextPage.wrapped(remark, width)) {
                lines.add(" ".repeat(indent) + line);
            }
        }
    }
}
