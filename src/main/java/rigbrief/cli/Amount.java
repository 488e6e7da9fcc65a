package rigbrief.cli;

import java.math.BigDecimal;
import java.util.Currency;
import rigbrief.diagnostic.Quotation;
import rigbrief.quantity.Money;

/** Reads an amount of money on a command line: {@code 129} or {@code 129.50}. */
final class Amount {
    private static final String FORM = "[0-9]{1,9}([.][0-9]{1,4})?";

    private Amount() {}

    /**
     * The amount.
     *
     * @param option the option it stands behind, for the refusal
     * @throws IllegalArgumentException with what was found and what was expected
     */
    static Money of(String option, String word, Currency currency) {
        int decimals = currency.getDefaultFractionDigits();
        boolean right =
                word.matches(FORM) && new BigDecimal(word).stripTrailingZeros().scale() <= decimals;
        if (!right) {
            throw new IllegalArgumentException(
                    "%s: found %s, expected an amount of %s with at most %d decimals; write %s"
                            .formatted(
                                    option,
                                    Quotation.of(word),
                                    currency.getCurrencyCode(),
                                    decimals,
                                    Money.ofMinor(12950, currency).plain()));
        }
        return new Money(new BigDecimal(word), currency);
    }
}
