package rigbrief.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Currency;
import java.util.Locale;

/**
 * An exact amount of one currency, held to the currency's minor unit.
 *
 * @param amount decimal amount, scale equal to the currency's number of minor digits
 * @param currency ISO 4217 currency
 */
public record Money(BigDecimal amount, Currency currency) implements Comparable<Money> {
    public Money {
        int digits = Math.max(0, currency.getDefaultFractionDigits());
        // Refuses a finer amount instead of rounding it: a third of a cent in a price list is a
        // typing error.
        amount = amount.setScale(digits, RoundingMode.UNNECESSARY);
    }

    /** The amount a number of minor units (cents, say) makes. */
    public static Money ofMinor(long minorUnits, Currency currency) {
        int digits = Math.max(0, currency.getDefaultFractionDigits());
        return new Money(BigDecimal.valueOf(minorUnits, digits), currency);
    }

    /** Nothing, in that currency. */
    public static Money zero(Currency currency) {
        return ofMinor(0, currency);
    }

    /** The sum. */
    public Money plus(Money other) {
        return new Money(amount.add(sameCurrency(other).amount), currency);
    }

    /** The difference, which may be negative. */
    public Money minus(Money other) {
        return new Money(amount.subtract(sameCurrency(other).amount), currency);
    }

    /** This amount that many times. */
    public Money times(int count) {
        return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
    }

    /** A share of this amount, rounded half up to the minor unit. */
    public Money share(BigDecimal factor) {
        return new Money(
                amount.multiply(factor).setScale(amount.scale(), RoundingMode.HALF_UP), currency);
    }

    /** The whole number of minor units. */
    public long minorUnits() {
        return amount.movePointRight(amount.scale()).longValueExact();
    }

    /** The amount with its decimal point and no currency, as files carry it. */
    public String plain() {
        return amount.toPlainString();
    }

    /** The amount with its decimal point and its thousands parted, as reports print it. */
    public String grouped() {
        return grouped(amount);
    }

    /** The same of an amount that need not have the currency's own number of decimals. */
    public static String grouped(BigDecimal amount) {
        DecimalFormat format =
                new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ROOT));
        int decimals = Math.max(0, amount.scale());
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(amount);
    }

    @Override
    public int compareTo(Money other) {
        return amount.compareTo(sameCurrency(other).amount);
    }

    /** The amount as reports print it, behind the currency's code. */
    @Override
    public String toString() {
        return currency.getCurrencyCode() + " " + grouped();
    }

    private Money sameCurrency(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(
                    "found %s beside %s, expected one currency; convert before adding"
                            .formatted(other, this));
        }
        return other;
    }
}
