package rigbrief.file;

import java.math.BigDecimal;
import java.util.Currency;
import rigbrief.part.Cells;
import rigbrief.quantity.Money;

/**
 * Reads an exact amount of money: digits, and a point with as many decimals as the currency has.
 *
 * @param currency the currency
 * @param free whether nothing at all will do
 */
record MoneyForm(Currency currency, boolean free) implements Cells.Form<Money> {
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000_000);

    @Override
    public Money read(String entry) throws Cells.Malformed {
        BigDecimal amount = Forms.decimal(entry, expected(), example());
        if (amount.signum() < 0 || amount.signum() == 0 && !free || amount.compareTo(MOST) > 0) {
            throw new Cells.Malformed(expected(), example());
        }
        int decimals = currency.getDefaultFractionDigits();
        if (amount.stripTrailingZeros().scale() > decimals) {
            throw new Cells.Malformed(
                    "at most %d decimals, as %s has".formatted(decimals, currency),
                    "round it to " + rounded(amount, decimals));
        }
        return new Money(amount, currency);
    }

    private String expected() {
        return free ? "an amount from 0 to 100000000" : "an amount above 0, at most 100000000";
    }

    private String example() {
        return "write it in %s, such as %s".formatted(currency, rounded(new BigDecimal("1900"), 0));
    }

    private static String rounded(BigDecimal amount, int decimals) {
        return amount.setScale(decimals, java.math.RoundingMode.HALF_UP).toPlainString();
    }
}
