package rigbrief.file.cell;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Guesses which figure somebody meant who wrote it with a unit or with a decimal comma. */
final class FigureAdvice {
    private static final Pattern WRITTEN =
            Pattern.compile("([0-9]{1,9}(?:[.,][0-9]{1,6})?)\\s*([^0-9\\s.,+-]\\S{0,11})?");

    private FigureAdvice() {}

    /**
     * The figure as the column wants it.
     *
     * @param whole whether only a whole number will do
     * @return the figure in digits; none where no guess lies within the bounds
     */
    static Optional<String> meant(
            String column, String written, boolean whole, double least, double most) {
        Matcher matcher = WRITTEN.matcher(written);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        BigDecimal figure = new BigDecimal(matcher.group(1).replace(',', '.'));
        return factor(column, matcher.group(2))
                .map(factor -> figure.multiply(factor).stripTrailingZeros())
                .filter(value -> !whole || value.scale() <= 0)
                .filter(value -> value.doubleValue() >= least && value.doubleValue() <= most)
                .map(BigDecimal::toPlainString);
    }

    private static Optional<BigDecimal> factor(String column, String unit) {
        if (unit == null) {
            return Optional.of(BigDecimal.ONE);
        }
        return UnitName.of(column).flatMap(name -> name.factor(unit));
    }
}
