package rigbrief.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;

/**
 * The interval of one input in which a model has been checked, ends included.
 *
 * @param name what the input is, for example {@code "room temperature"}; with hyphens for spaces
 *     the key of its text under {@code range.}
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
    public Optional<Phrase> remark(double value) {
        if (holds(value)) {
            return Optional.empty();
        }
        return Optional.of(
                Phrase.of(
                        "range.outside",
                        Phrase.of("range." + name.replace(' ', '-')),
                        shown(value),
                        plain(low),
                        shown(high)));
    }

    private Object shown(double value) {
        return Phrase.joined(unit.isEmpty() ? "" : " ", List.of(plain(value), unit));
    }

    private static Object plain(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
        return new Measured(plain.scale() < 0 ? plain.setScale(0) : plain, "");
    }
}
