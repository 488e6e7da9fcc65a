package rigbrief.measurement.accept;

/** What a line of the acceptance sheet is measured in. */
public enum LineUnit {
    FPS("fps", 1),
    SECONDS("s", 1),
    CELSIUS("°C", 0),
    DBA("dB(A)", 1),
    WATTS("W", 0),
    MTS("MT/s", 0),
    GB("GB", 0),
    PIECES("", 0),
    LANES("lanes", 0),
    PERCENT("%", 0),
    /** Answered with pass or fail, which count 1 and 0. */
    CHECK("", 0);

    private final String symbol;
    private final int decimals;

    LineUnit(String symbol, int decimals) {
        this.symbol = symbol;
        this.decimals = decimals;
    }

    /** The unit as it is printed; empty where there is none. */
    public String symbol() {
        return symbol;
    }

    /** Whether a larger figure is the better one. */
    public boolean moreIsBetter() {
        return switch (this) {
            case FPS, MTS, GB, PIECES, LANES, CHECK -> true;
            case SECONDS, CELSIUS, DBA, WATTS, PERCENT -> false;
        };
    }

    /** How many decimals are printed. */
    public int decimals() {
        return decimals;
    }
}
