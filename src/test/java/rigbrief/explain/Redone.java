package rigbrief.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Puts every step of an explanation into a pocket calculator. */
public final class Redone {
    /** Values are printed with six digits; chained through a logarithm that leaves about four. */
    private static final double RELATIVE = 3e-4;

    private Redone() {}

    /** What the calculator makes of each expression must be the value printed beside it. */
    public static void check(Explanation explanation) {
        for (String step : explanation.steps()) {
            // A title may have a colon of its own, an expression has none.
            String expression = step.substring(step.lastIndexOf(": ") + 2, step.lastIndexOf(" = "));
            String shown = step.substring(step.lastIndexOf(" = ") + 3).split(" ")[0];
            double value = Double.parseDouble(shown);
            assertThat(Calculator.of(expression))
                    .as(explanation.number() + ": " + step)
                    .isCloseTo(value, within(Math.abs(value) * RELATIVE + halfDigit(shown)));
        }
    }

    /** What rounding to the digits shown may take or add. */
    private static double halfDigit(String shown) {
        int point = shown.indexOf('.');
        int decimals = point < 0 ? 0 : shown.length() - point - 1;
        return decimals == 0 ? 1e-9 : 0.51 * Math.pow(10, -decimals);
    }
}
