package rigbrief.quantity;

/** The units that findings, margins and promised values are printed in. */
public enum Unit {
    MILLIMETRE("mm", 0),
    GRAM("g", 0),
    WATT("W", 0),
    MILLIAMPERE("mA", 0),
    PIECE("pcs", 0),
    GB("GB", 0),
    /** Hundredths of a decibel, A-weighted. */
    CENTIDECIBEL("dB(A)", 2),
    /** Hundredths of a frame per second. */
    CENTIFRAME("fps", 2),
    /** Hundredths of a second. */
    CENTISECOND("s", 2),
    /** Tenths of a kelvin. */
    DECIKELVIN("K", 1),
    /** Tenths of a litre. */
    DECILITRE("l", 1),
    /** Minor units of the currency in force. */
    MINOR_MONEY("money", 2),
    DAY("days", 0),
    /** Megabit per second. */
    MEGABIT("Mbit/s", 0),
    /** A condition that is met or not. */
    CONDITION("", 0);

    private final String symbol;
    private final int decimals;

    Unit(String symbol, int decimals) {
        this.symbol = symbol;
        this.decimals = decimals;
    }

    /** The symbol as printed; empty for a bare condition. */
    public String symbol() {
        return symbol;
    }

    /** How many decimal places the fixed-point amount carries. */
    public int decimals() {
        return decimals;
    }

    /**
     * A fixed-point amount in its printed form, with the symbol: {@code 16600} centidecibels give
     * {@code 166.00 dB(A)}.
     */
    public String print(long amount) {
        String number = java.math.BigDecimal.valueOf(amount, decimals).toPlainString();
        return symbol.isEmpty() ? number : number + " " + symbol;
    }
}
