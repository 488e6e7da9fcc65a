package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.diagnostic.Quotation;

/**
 * Lines of text, at most as wide as the page unless a single word is wider.
 *
 * <p>The narrowest page has 80 columns. Tables and heads use all of a wider one; sentences stop at
 * {@value #LONGEST_SENTENCE} columns, since the eye loses longer lines.
 *
 * <p>Whatever is put on it is made safe to print: names and remarks come out of files.
 */
final class TextPage {
    /** Columns of the narrowest page. */
    static final int WIDTH = Style.NARROWEST;

    /** By how much a table is indented. */
    static final int TABLE_INDENT = 2;

    private static final int LONGEST_SENTENCE = 100;

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
        String gap = " ".repeat(Math.max(1, style.width() - length(left) - length(right)));
        return bold(left + gap + right).line("-".repeat(style.width()));
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
        int width = Math.min(style.width(), LONGEST_SENTENCE) - length(lead);
        for (String part : wrapped(words, width)) {
            line(before + part);
            before = " ".repeat(length(lead));
        }
        return this;
    }

    /** A table, indented by two. */
    TextPage table(TextTable table) {
        String indent = " ".repeat(TABLE_INDENT);
        table.lines(style.width() - TABLE_INDENT).forEach(line -> line(indent + line));
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

    /**
     * As {@link #wrapped}, but a word wider than a line is broken too, behind a hyphen if it can.
     */
    static List<String> folded(String words, int width) {
        List<String> lines = new ArrayList<>();
        for (String line : wrapped(words, width)) {
            String rest = line;
            for (int cut = cut(rest, width); cut < rest.length(); cut = cut(rest, width)) {
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            lines.add(rest);
        }
        return lines;
    }

    /** Where to break a word: its end if it fits, else behind at least one whole character. */
    private static int cut(String word, int width) {
        if (word.isEmpty() || length(word) <= width) {
            return word.length();
        }
        int end = Character.charCount(word.codePointAt(0));
        int behindHyphen = 0;
        while (length(word.substring(0, end)) < width) {
            if ("-/_;,.".indexOf(word.charAt(end - 1)) >= 0) {
                behindHyphen = end;
            }
            int next = end + Character.charCount(word.codePointAt(end));
            if (length(word.substring(0, next)) > width) {
                break;
            }
            end = next;
        }
        return behindHyphen > end / 2 ? behindHyphen : end;
    }

    /** How many columns words take on a screen. */
    static int length(String words) {
        return Columns.of(words);
    }

    @Override
    public String toString() {
        // Spaces that do not break have done their work; a terminal needs no other than its own.
        return text.toString().replace('\u00a0', ' ').replace('\u202f', ' ');
    }
}
