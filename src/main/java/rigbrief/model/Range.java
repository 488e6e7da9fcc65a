package rigbrief.model;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The interval of one input in which a model has been checked, ends included.
 *
 * @param name what the input is, as it reads in a sentence, for example {@code "room temperature"}
 * @param low least value, in {@code unit}
 * @param high greatest value, in {@code unit}, not below {@code low}
 * @param unit unit of both ends as printed, for example {@code "°C"}; empty for a plain number
 */
public record Range(String name, double low, double high, String unit) {

    /** Refuses ends which are not finite or stand in the wrong order. */
    public Range {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
            throw new IllegalArgumentException(
                    "%s: found the range %s to %s, expected finite ends in rising order; swap them"
                            .formatted(name, low, high));
        }
    }

    /**
     * Tells whether the model was checked at this value.
     *
     * @param value in {@link #unit()}
     * @return true from {@code low} to {@code high}, ends included; false for a value that is not a
     *     number
     */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    /**
     * Gives the caution to print beside a result that was computed outside the range.
     *
     * @param value in {@link #unit()}
     * @return one sentence, or nothing when the range holds the value
     */
    public Optional<String> remark(double value) {
        if (holds(value)) {
            return Optional.empty();
        }
        return Optional.of(
                "%s of %s is outside %s to %s, where the model was checked; take it as a guess"
                        .formatted(name, shown(value), plain(low), shown(high)));
    }

    private String shown(double value) {
        return unit.isEmpty() ? plain(value) : plain(value) + " " + unit;
    }

    private static String plain(double value) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
                : Double.toString(value);
    }
}
