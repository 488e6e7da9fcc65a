package rigbrief.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rigbrief.diagnostic.Quotation;

/**
 * A table in columns as wide as their widest cell, up to a limit beyond which cells wrap. On a
 * wider page the limits give way; on none is the table wider than the page as long as its words
 * allow.
 */
final class TextTable {
    private static final String GAP = "  ";

    /** Below this a column of words is a column of syllables. */
    private static final int NARROWEST = 8;

    /** A remark is a sentence: longer lines lose the eye. */
    private static final int LONGEST_REMARK = 100;

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
        columns.add(new Column(head, true, Style.WIDEST));
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

    /** The lines on the narrowest page. */
    List<String> lines() {
        return lines(TextPage.WIDTH - TextPage.TABLE_INDENT);
    }

    /**
     * The lines: heads, a rule, rows.
     *
     * @param width columns there are; what is beyond those of the narrowest page goes to the
     *     columns whose cells wrap, and a table that would be wider is narrowed until it fits
     */
    List<String> lines(int width) {
        int[] widths = widths(width);
        List<String> lines = new ArrayList<>();
        lines.addAll(lines(columns.stream().map(Column::head).toList(), widths));
        lines.add("-".repeat(Arrays.stream(widths).sum() + gaps()));
        for (Row row : rows) {
            lines.addAll(lines(row.cells(), widths));
            addRemark(lines, row.remark(), widths[0] + GAP.length(), width);
        }
        return lines;
    }

    private int gaps() {
        return GAP.length() * (columns.size() - 1);
    }

    private int[] widths(int width) {
        int[] limits = columns.stream().mapToInt(Column::widest).toArray();
        int[] widths = widths(limits);
        int spare = width - (TextPage.WIDTH - TextPage.TABLE_INDENT);
        spare = Math.min(spare, width - Arrays.stream(widths).sum() - gaps());
        if (spare > 0) {
            widen(limits, spare);
            widths = widths(limits);
        }
        narrow(widths, Arrays.stream(widths).sum() + gaps() - width);
        return widths;
    }

    /** Each column as wide as its widest line when its cells wrap at its limit. */
    private int[] widths(int[] limits) {
        int[] widths = new int[limits.length];
        for (int c = 0; c < widths.length; c++) {
            widths[c] = width(c, limits[c]);
        }
        return widths;
    }

    /** Hands columns out, one by one in turn, to those that still wrap. */
    private void widen(int[] limits, int spare) {
        int[] natural = new int[limits.length];
        Arrays.setAll(natural, c -> width(c, Integer.MAX_VALUE));
        int left = spare;
        boolean handedOut = true;
        while (left > 0 && handedOut) {
            handedOut = false;
            for (int c = 0; c < limits.length && left > 0; c++) {
                if (natural[c] > limits[c]) {
                    limits[c]++;
                    left--;
                    handedOut = true;
                }
            }
        }
    }

    /** Takes columns away, one by one, from the widest that may wrap. */
    private void narrow(int[] widths, int excess) {
        for (int left = excess; left > 0; left--) {
            int widest = -1;
            for (int c = 0; c < widths.length; c++) {
                boolean wraps = !columns.get(c).rightAligned() && widths[c] > NARROWEST;
                widest = wraps && (widest < 0 || widths[c] > widths[widest]) ? c : widest;
            }
            if (widest < 0) {
                return;
            }
            widths[widest]--;
        }
    }

    private int width(int column, int limit) {
        int widest = TextPage.length(columns.get(column).head());
        for (Row row : rows) {
            for (String line : TextPage.wrapped(row.cells().get(column), limit)) {
                widest = Math.max(widest, TextPage.length(line));
            }
        }
        return widest;
    }

    private List<String> lines(List<String> cells, int[] widths) {
        List<List<String>> wrapped = new ArrayList<>();
        int height = 1;
        for (int c = 0; c < widths.length; c++) {
            wrapped.add(TextPage.folded(cells.get(c), widths[c]));
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

    private static void addRemark(List<String> lines, String remark, int indent, int width) {
        if (!remark.isEmpty()) {
            int room = Math.min(width, LONGEST_REMARK) - indent;
            for (String line : TextPage.wrapped(remark, room)) {
                lines.add(" ".repeat(indent) + line);
            }
        }
    }
}
