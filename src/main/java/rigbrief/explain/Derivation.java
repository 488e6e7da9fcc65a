package rigbrief.explain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.wording.Phrase;

/**
 * An explanation in the making.
 *
 * <p>Expressions are templates in which {@code {}} stands for the next value; values are printed
 * with six digits, amounts of money exactly. Only + - x / ^, brackets, log10, ln, exp, sqrt, min,
 * max, floor, ceil and normal (the share of the normal distribution up to a value) occur.
 */
public final class Derivation {
    private static final int DIGITS = 6;

    private final String number;
    private final String title;
    private final String formula;
    private final String source;
    private final List<Input> inputs = new ArrayList<>();
    private final List<String> steps = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    /**
     * Begins an explanation.
     *
     * @param number name of the number
     * @param title what it is
     * @param formula the formula in words
     * @param source where formula and constants come from
     */
    public Derivation(String number, String title, String formula, String source) {
        this.number = number;
        this.title = title;
        this.formula = formula;
        this.source = source;
    }

    /** A value the steps start from; gives the value back. */
    public double given(String name, double value, String unit, String from) {
        fact(name, value, unit, from);
        return value;
    }

    /** A value the steps start from, whole or exact. */
    public Derivation fact(String name, Object value, String unit, String from) {
        inputs.add(new Input(name, withUnit(print(value), unit), from));
        return this;
    }

    /** A step on the way; gives its value back. */
    public double step(String name, double value, String unit, String template, Object... values) {
        write(name, print(value), unit, template, values);
        return value;
    }

    /** A step on the way whose value is exact. */
    public Derivation exact(
            String name, BigDecimal value, String unit, String template, Object... args) {
        write(name, print(value), unit, template, args);
        return this;
    }

    /** A remark, if there is one. */
    public Derivation remark(Optional<Phrase> words) {
        words.map(Phrase::toString).ifPresent(remarks::add);
        return this;
    }

    /** A remark. */
    public Derivation remark(String words) {
        remarks.add(words);
        return this;
    }

    /** The last step, rounded as it is printed. */
    public Explanation gives(
            double value, int decimals, String unit, String template, Object... args) {
        return gives(
                new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP),
                unit,
                template,
                args);
    }

    /** The last step, exact. */
    public Explanation gives(BigDecimal value, String unit, String template, Object... args) {
        write(title, value.toPlainString(), unit, template, args);
        return explanation(Optional.of(value), unit);
    }

    /** The end where there is no number. */
    public Explanation givesNothing(String unit) {
        return explanation(Optional.empty(), unit);
    }

    private Explanation explanation(Optional<BigDecimal> value, String unit) {
        return new Explanation(number, title, value, unit, formula, inputs, steps, source, remarks);
    }

    private void write(String name, String value, String unit, String template, Object... args) {
        StringBuilder expression = new StringBuilder();
        int next = 0;
        int at = 0;
        for (int hole = template.indexOf("{}"); hole >= 0; hole = template.indexOf("{}", at)) {
            expression.append(template, at, hole).append(print(args[next++]));
            at = hole + 2;
        }
        expression.append(template.substring(at));
        steps.add(name + ": " + expression + " = " + withUnit(value, unit));
    }

    private static String withUnit(String value, String unit) {
        return unit.isEmpty() ? value : value + " " + unit;
    }

    /** A number as a calculator takes it. */
    static String print(Object value) {
        if (value instanceof Double number) {
            return print(number.doubleValue());
        }
        return value instanceof BigDecimal exact ? exact.toPlainString() : value.toString();
    }

    private static String print(double value) {
        if (value == 0) {
            return "0";
        }
        return new BigDecimal(value)
                .round(new MathContext(DIGITS, RoundingMode.HALF_UP))
                .stripTrailingZeros()
                .toPlainString();
    }
}
