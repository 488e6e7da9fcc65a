package rigbrief.report.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * Text as far as the fonts on paper go.
 *
 * <p>A character that none of them has, or that is written from right to left, which the printer
 * can't set, is spelt out by its number: visible, never dropped.
 */
final class Covered {
    private static final int LAST_OF_LATIN_1 = 0xff;

    private Covered() {}

    static String text(String text) {
        if (text.chars().allMatch(c -> c <= LAST_OF_LATIN_1)) {
            return text;
        }
        List<CmapLookup> fonts = lookups();
        StringBuilder covered = new StringBuilder(text.length());
        text.codePoints()
                .forEach(
                        point -> {
                            if (point <= LAST_OF_LATIN_1 || has(fonts, point)) {
                                covered.appendCodePoint(point);
                            } else {
                                covered.append("[U+%04X]".formatted(point));
                            }
                        });
        return covered.toString();
    }

    private static boolean has(List<CmapLookup> fonts, int point) {
        byte direction = Character.getDirectionality(point);
        boolean rightToLeft =
                direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
        return !rightToLeft && fonts.stream().anyMatch(font -> font.getGlyphId(point) > 0);
    }

    /** One regular cut and the last resort; the heavier cuts have the same characters. */
    private static List<CmapLookup> lookups() {
        List<CmapLookup> lookups = new ArrayList<>();
        for (PaperFont font : PaperFont.ALL) {
            if (!font.bold()) {
                lookups.add(lookup(font));
            }
        }
        return lookups;
    }

    private static CmapLookup lookup(PaperFont font) {
        try (TrueTypeFont parsed = font.parsed()) {
            return parsed.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
