package rigbrief.diagnostic;

import java.util.stream.Collectors;

/** Text out of a file, made safe to print. */
public final class Quotation {
    private static final int LONGEST = 80;
    private static final String CUT = "...";

    private Quotation() {}

    /** The text between quotes, shortened to 80 characters, with nothing in it that acts. */
    public static String of(String text) {
        String escaped = shortened(text).replace("\\", "\\\\").replace("\"", "\\\"");
        return "\"" + visible(escaped) + "\"";
    }

    /**
     * The whole text with each character that prints nothing of its own as {@code \}{@code uXXXX}.
     */
    public static String visible(String text) {
        if (allPrints(text)) {
            return text;
        }
        return text.codePoints().mapToObj(Quotation::spelt).collect(Collectors.joining());
    }

    /** Whether every character of a text shows as itself. */
    public static boolean allPrints(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c >= 0x7f) {
                return text.codePoints().allMatch(Quotation::prints);
            }
        }
        return true;
    }

    /**
     * Whether a character shows as itself: no control, no bidirectional mark, no half of a pair.
     */
    public static boolean prints(int codePoint) {
        if (codePoint < 0x7f) {
            return codePoint >= ' ';
        }
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    false;
            default -> true;
        };
    }

    private static String spelt(int codePoint) {
        if (prints(codePoint)) {
            return Character.toString(codePoint);
        }
        StringBuilder units = new StringBuilder();
        for (char unit : Character.toChars(codePoint)) {
            units.append("\\u%04X".formatted((int) unit));
        }
        return units.toString();
    }

    private static String shortened(String text) {
        if (text.codePointCount(0, text.length()) <= LONGEST) {
            return text;
        }
        return text.substring(0, text.offsetByCodePoints(0, LONGEST - CUT.length())) + CUT;
    }
}
