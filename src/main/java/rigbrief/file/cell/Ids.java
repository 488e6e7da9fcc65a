package rigbrief.file.cell;

/** Reads identities. */
public final class Ids {
    /** What ids of the client's own, described parts begin with. */
    public static final String OWNED = "owned";

    private static final int LONGEST = 100;

    private Ids() {}

    /**
     * Whether a text is lower-case letters, digits, dots and hyphens, with a letter or digit first.
     */
    public static boolean wellFormed(String text) {
        boolean right = !text.isEmpty() && text.length() <= LONGEST && !text.startsWith("-");
        for (int i = 0; right && i < text.length(); i++) {
            char c = text.charAt(i);
            right = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-' || c == '.' && i > 0;
        }
        return right;
    }

    /** Whether an id is one of those that only a described part bears. */
    public static boolean owned(String id) {
        return id.equals(OWNED) || id.startsWith(OWNED + "-");
    }

    /** The id, complained about where it is none. */
    static String checked(String text, String column, Row row) {
        if (!wellFormed(text)) {
            row.fault(
                    column,
                    text,
                    Expectation.ID.text(),
                    "write it in lower case with hyphens for blanks");
        } else if (owned(text)) {
            row.fault(
                    column,
                    text,
                    "an id that does not begin with owned",
                    "choose another: these ids are for parts that a brief describes");
        }
        return text;
    }

    /** The item number, complained about where it is none or its check digit is wrong. */
    static String gtin(String text, String column, Row row) {
        if (!CheckDigit.wellFormed(text)) {
            row.fault(
                    column,
                    text,
                    "a GS1 item number of 8, 12, 13 or 14 digits",
                    "copy it from the package, or " + row.leaveOut() + " if unknown");
        } else if (CheckDigit.of(text) != text.charAt(text.length() - 1) - '0') {
            row.fault(
                    column,
                    text,
                    "check digit " + CheckDigit.of(text) + " at the end",
                    "compare every digit with the package, or " + row.leaveOut() + " if unknown");
        }
        return text;
    }
}
