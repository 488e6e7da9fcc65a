package rigbrief.report;

/** How text is set off on a terminal: not at all, or in bold and faint letters. */
public enum Style {
    /** Letters only. */
    PLAIN("", "", ""),
    /** Select Graphic Rendition of ECMA-48: 1 is bold, 2 is faint, 0 ends either. */
    TERMINAL("\u001b[1m", "\u001b[2m", "\u001b[0m");

    private final String bold;
    private final String faint;
    private final String end;

    Style(String bold, String faint, String end) {
        this.bold = bold;
        this.faint = faint;
        this.end = end;
    }

    /** Words that stand out. */
    public String bold(String words) {
        return bold + words + end;
    }

    /** Words that stand back. */
    public String faint(String words) {
        return faint + words + end;
    }
}
