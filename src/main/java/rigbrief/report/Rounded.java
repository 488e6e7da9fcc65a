package rigbrief.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** Computed figures as decimal numbers, half up. */
final class Rounded {
    /** Beyond this a figure means "never": a task that the machine can't do at all. */
    private static final double SENSELESS = 1e9;

    private Rounded() {}

    /** A figure with that many decimals; empty when there is no such figure. */
    static Optional<BigDecimal> to(int decimals, double figure) {
        if (!Double.isFinite(figure) || Math.abs(figure) > SENSELESS) {
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(figure).setScale(decimals, RoundingMode.HALF_UP));
    }

    /** A figure in words: with that many decimals and its unit, or a dash. */
    static String print(int decimals, double figure, String unit) {
        return to(decimals, figure).map(number -> number.toPlainString() + unit).orElse("-");
    }

    /** What was asked, as it was asked: no more decimals than it needs. */
    static BigDecimal asAsked(double figure) {
        BigDecimal plain = new BigDecimal(figure).setScale(2, RoundingMode.HALF_UP);
        BigDecimal shortest = plain.stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
    }

    /**
     * A gap, rounded up, so that none that exists is printed as nought; empty when it has no bound.
     */
    static Optional<BigDecimal> gap(int decimals, double percent) {
        return Double.isFinite(percent)
                ? Optional.of(new BigDecimal(percent).setScale(decimals, RoundingMode.CEILING))
                : Optional.empty();
    }

    /** A chance in words; never certainty that isn't there. */
    static String chance(double chance) {
        if (chance > 0.99) {
            return chance == 1 ? "100 %" : "> 99 %";
        }
        if (chance < 0.01) {
            return chance == 0 ? "0 %" : "< 1 %";
        }
        return print(0, chance * 100, " %");
    }
}
