package rigbrief.file.cell;

import java.math.BigDecimal;

/** Writes figures as the readers take them: digits and a point, no exponent. */
public final class Figures {
    private Figures() {}

    /** The shortest digits that read back as the same number. */
    public static String plain(double number) {
        return plain(BigDecimal.valueOf(number));
    }

    /** The digits without zeros at the end of a fraction. */
    public static String plain(BigDecimal number) {
        // stripTrailingZeros alone makes 1E+2 of 100 and leaves 0.0 as it is.
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
