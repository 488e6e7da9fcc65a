package rigbrief.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rigbrief.quantity.Unit;

/**
 * A number with all its decimals, to be written with the reader's decimal mark.
 *
 * @param number the number
 * @param unit unit behind it; empty for none
 */
public record Measured(BigDecimal number, String unit) {
    /** A fixed-point amount of a unit, as {@link Unit#print(long)} prints it. */
    public static Measured of(long amount, Unit unit) {
        return new Measured(BigDecimal.valueOf(amount, unit.decimals()), unit.symbol());
    }

    /** A figure rounded half up to that many decimals. */
    public static Measured rounded(int decimals, double figure, String unit) {
        return new Measured(
                BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP), unit);
    }

    /** The same in English. */
    @Override
    public String toString() {
        return Texts.ENGLISH.figure(this);
    }
}
