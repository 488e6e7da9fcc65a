package rigbrief.part;

/** The places in a build that parts fill. */
public enum Slot implements Word {
    PROCESSOR("processor", Kind.PROCESSOR, true, 1),
    BOARD("board", Kind.BOARD, true, 1),
    MEMORY("memory", Kind.MEMORY, true, 2),
    GRAPHICS("graphics", Kind.GRAPHICS, false, 1),
    DRIVE("drive", Kind.DRIVE, true, 1),
    SECOND_DRIVE("second-drive", Kind.DRIVE, false, 1),
    SUPPLY("supply", Kind.SUPPLY, true, 1),
    COOLER("cooler", Kind.COOLER, false, 1),
    CASE("case", Kind.CASE, true, 1),
    FANS("fans", Kind.FAN, false, 6),
    WIRELESS("wireless", Kind.WIRELESS, false, 1),
    BRACE("brace", Kind.BRACE, false, 1),
    CABLES("cables", Kind.CABLES, false, 1),
    SYSTEM("system", Kind.SYSTEM, false, 1),
    DISPLAY("display", Kind.DISPLAY, false, 2);

    private final String word;
    private final Kind kind;
    private final boolean required;
    private final int mostPieces;

    Slot(String word, Kind kind, boolean required, int mostPieces) {
        this.word = word;
        this.kind = kind;
        this.required = required;
        this.mostPieces = mostPieces;
    }

    @Override
    public String word() {
        return word;
    }

    /** The kind of part that fills it. */
    public Kind kind() {
        return kind;
    }

    /** Whether no machine works without it. A cooler is not: some processors bring their own. */
    public boolean required() {
        return required;
    }

    /** How many packs of one part the search may put here. */
    public int mostPieces() {
        return mostPieces;
    }
}
