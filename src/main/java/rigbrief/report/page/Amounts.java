package rigbrief.report.page;

import java.math.BigDecimal;
import java.util.Currency;
import rigbrief.quantity.Unit;

/** Fixed-point amounts as they are written where the reader is. */
final class Amounts {
    private Amounts() {}

    static String of(long amount, Unit unit, Currency currency, Words words) {
        if (unit == Unit.MINOR_MONEY) {
            return words.money(amount, currency);
        }
        String number = words.number(BigDecimal.valueOf(amount, unit.decimals()));
        return unit.symbol().isEmpty() ? number : number + "\u00a0" + unit.symbol();
    }
}
