package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.diagnostic.Quotation;

/**
 * Lines of text, at most 80 columns wide unless a single word is wider.
 *
 * <p>Whatever is put on it is made safe to print: names and remarks come out of files.
 */
final class TextPage {
    static final int WIDTH = 80;
    private static final String UNDERLINE = "-".repeat(WIDTH);

    private final StringBuilder text = new StringBuilder();
    private final Style style;

    TextPage(Style style) {
        this.style = style;
    }

    /** One line as it is. */
    TextPage line(String words) {
        text.append(Quotation.visible(words).stripTrailing()).append('\n');
        return this;
    }

    /** An empty line. */
    TextPage blank() {
        text.append('\n');
        return this;
    }

    /** The head of a chapter: a line with something at its right end, underlined. */
    TextPage chapter(String left, String right) {
        String gap = " ".repeat(Math.max(1, WIDTH - length(left) - length(right)));
        return bold(left + gap + right).line(UNDERLINE);
    }

    /** The head of a section, with an empty line before it. */
    TextPage section(String words) {
        return blank().bold(words);
    }

    /** Words in lines as wide as the page, all of them indented. */
    TextPage paragraph(int indent, String words) {
        return hanging(" ".repeat(indent), words);
    }

    /** Words behind a lead; further lines are indented by the lead's width. */
    TextPage hanging(String lead, String words) {
        String before = lead;
        for (String part : wrapped(words, WIDTH - length(lead))) {
            line(before + part);
            before = " ".repeat(length(lead));
        }
        return this;
    }

    /** A table, indented by two. */
    TextPage table(TextTable table) {
        table.lines().forEach(line -> line("  " + line));
        return this;
    }

    private TextPage bold(String words) {
        text.append(style.bold(Quotation.visible(words).stripTrailing())).append('\n');
        return this;
    }

    /** Words broken at spaces into lines of at most a width; a longer word keeps its length. */
    static List<String> wrapped(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int used = 0;
        for (String word : Quotation.visible(words).split(" +")) {
            int wide = length(word);
            if (used > 0 && used + 1 + wide > width) {
                lines.add(line.toString());
                line.setLength(0);
                used = 0;
            }
            line.append(used > 0 ? " " : "").append(word);
            used += wide + (used > 0 ? 1 : 0);
        }
        lines.add(line.toString());
        return lines;
    }

    /** How many characters words have on a screen. */
    static int length(String words) {
        return words.codePointCount(0, words.length());
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
