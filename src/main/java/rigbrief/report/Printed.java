package rigbrief.report;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import rigbrief.assembly.TightSpot;
import rigbrief.audit.AuditFinding;
import rigbrief.quantity.Money;
import rigbrief.quantity.Unit;
import rigbrief.rule.Margin;

/** How amounts, units and levels are spelt on paper. */
final class Printed {

    /** Anything else measured with less to spare than this share is called tight, in percent. */
    private static final long TIGHT_PERCENT = 10;

    private Printed() {}

    /** A fixed-point amount as the number it stands for. */
    static BigDecimal number(long amount, Unit unit, Currency currency) {
        int decimals =
                unit == Unit.MINOR_MONEY ? Money.zero(currency).amount().scale() : unit.decimals();
        return BigDecimal.valueOf(amount, decimals);
    }

    /** A unit's symbol; the currency's code for money. */
    static String unit(Unit unit, Currency currency) {
        return unit == Unit.MINOR_MONEY ? currency.getCurrencyCode() : unit.symbol();
    }

    /** An amount with its unit. */
    static String amount(long amount, Unit unit, Currency currency) {
        if (unit == Unit.MINOR_MONEY) {
            return Money.ofMinor(amount, currency).toString();
        }
        String symbol = unit(unit, currency);
        String number = number(amount, unit, currency).toPlainString();
        return symbol.isEmpty() ? number : number + " " + symbol;
    }

    /** The level of a finding in lower case. */
    static String level(AuditFinding finding) {
        return finding.level().name().toLowerCase(Locale.ROOT);
    }

    /**
     * Whether a rule that is met leaves little: under 10 mm of length, or under a tenth of anything
     * else that is measured. What is counted is either enough or not, and never tight.
     */
    static boolean tight(Margin margin) {
        if (margin.spare() < 0) {
            return false;
        }
        return switch (margin.unit()) {
            case MILLIMETRE -> margin.spare() < TightSpot.UNDER_MM;
            case PIECE, CONDITION, DAY -> false;
            default -> margin.spare() * 100 < margin.have() * TIGHT_PERCENT;
        };
    }
}
