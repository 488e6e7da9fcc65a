package rigbrief.explain;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * How one printed number came about.
 *
 * @param number name of the number
 * @param title what it is
 * @param value the number as it is printed; empty when the machine can't do the job at all
 * @param unit its unit; empty for a plain number, the currency's code for money
 * @param formula the formula in words
 * @param inputs what the steps start from
 * @param steps {@code name: expression = value unit}, each to be redone with a calculator; the last
 *     gives the number
 * @param source where formula and constants come from
 * @param remarks cautions on its use; often none
 */
public record Explanation(
        String number,
        String title,
        Optional<BigDecimal> value,
        String unit,
        String formula,
        List<Input> inputs,
        List<String> steps,
        String source,
        List<String> remarks) {
    public Explanation {
        inputs = List.copyOf(inputs);
        steps = List.copyOf(steps);
        remarks = List.copyOf(remarks);
    }
}
