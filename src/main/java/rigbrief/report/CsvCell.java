package rigbrief.report;

/** One cell of a CSV file that a person will open in a spreadsheet. */
final class CsvCell {
    /** What a spreadsheet may take for the beginning of a formula, or for a new cell or line. */
    private static final String RISKY = "=+-@\t\r\n";

    private CsvCell() {}

    /**
     * A text as one cell: led by an apostrophe where it begins with {@code = + - @}, a tab or a
     * line break, so that a spreadsheet shows it instead of running it; quoted where it holds a
     * comma, a quotation mark or a line break.
     *
     * <p>Source: common advice against formula injection in CSV; RFC 4180, 2.6 and 2.7.
     */
    static String of(String text) {
        boolean risky = !text.isEmpty() && RISKY.indexOf(text.charAt(0)) >= 0;
        String safe = risky ? "'" + text : text;
        boolean quoted = safe.chars().anyMatch(c -> ",\"\n\r\t;".indexOf(c) >= 0);
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
