package rigbrief.report;

/**
 * How text is laid out: whether letters are set off, and how wide the page is.
 *
 * @param setOff whether words may be bold or faint, as on a terminal
 * @param width columns of the page, {@value #NARROWEST} to {@value #WIDEST}
 */
public record Style(boolean setOff, int width) {
    /** What every page may count on. */
    public static final int NARROWEST = 80;

    /** Lines longer than this lose the eye on the way back. */
    public static final int WIDEST = 160;

    /** Letters only, 80 columns. */
    public static final Style PLAIN = new Style(false, NARROWEST);

    /** Bold and faint letters, 80 columns. */
    public static final Style TERMINAL = new Style(true, NARROWEST);

    // Select Graphic Rendition of ECMA-48: 1 is bold, 2 is faint, 0 ends either.
    private static final String BOLD = "\u001b[1m";
    private static final String FAINT = "\u001b[2m";
    private static final String END = "\u001b[0m";

    public Style {
        width = Math.max(NARROWEST, Math.min(WIDEST, width));
    }

    /** The same on a page of so many columns, as near to that as a page may be. */
    public Style wide(int columns) {
        return new Style(setOff, columns);
    }

    /** The same without any letters set off. */
    public Style plain() {
        return new Style(false, width);
    }

    /** Words that stand out. */
    public String bold(String words) {
        return setOff ? BOLD + words + END : words;
    }

    /** Words that stand back. */
    public String faint(String words) {
        return setOff ? FAINT + words + END : words;
    }
}
