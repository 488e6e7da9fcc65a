package rigbrief.file.cell;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.diagnostic.Nearest;
import rigbrief.part.Word;

/**
 * What a cell should hold, in words.
 *
 * @param text completes "expected ..."
 * @param advice completes "; ..." where the cell holds nothing
 */
public record Expectation(String text, String advice) {
    /** Names are listed in full up to this number. */
    private static final int FEW = 9;

    /** A text. */
    static final Expectation TEXT = new Expectation("a text", "write it in");

    /** An identity. */
    static final Expectation ID =
            new Expectation(
                    "an id of lower-case letters, digits, dots and hyphens",
                    "write one such as maker-model-2");

    /** {@code yes} or {@code no}. */
    static final Expectation YES = new Expectation("yes or no", "write yes or no");

    /** A whole number within bounds. */
    static Expectation whole(String column, int least, int most) {
        return number(
                "a whole number", column, BigDecimal.valueOf(least), BigDecimal.valueOf(most));
    }

    /** A decimal number within bounds. */
    static Expectation decimal(String column, double least, double most) {
        return number("a number", column, BigDecimal.valueOf(least), BigDecimal.valueOf(most));
    }

    /** One of the words of an enum. */
    static <E extends Enum<E> & Word> Expectation word(Class<E> words) {
        List<String> spelt = spelt(words);
        return new Expectation("one of " + String.join(", ", spelt), "use one of these words");
    }

    /**
     * One of the words of an enum: all of them when they are fewer than ten, else the nearest.
     *
     * @param found what was written
     */
    public static <E extends Enum<E> & Word> Expectation word(String found, Class<E> words) {
        List<String> spelt = spelt(words);
        String all = String.join(", ", spelt);
        boolean few = spelt.size() <= FEW;
        return new Expectation(
                few ? "one of " + all : "a word that is known here",
                Nearest.to(found, spelt)
                        .map(word -> "did you mean " + word + "?")
                        .orElse(few ? "use one of these words" : "use one of " + all));
    }

    /** The words of an enum as files spell them. */
    static <E extends Enum<E> & Word> List<String> spelt(Class<E> words) {
        List<String> spelt = new ArrayList<>();
        for (E constant : words.getEnumConstants()) {
            spelt.add(constant.word());
        }
        return spelt;
    }

    /**
     * One of a set of names: all of them when they are fewer than ten, else the set's description
     * and the nearest.
     *
     * @param found what was written
     * @param what what the names stand for, such as {@code a workload of the catalogue}
     * @param names the names, in a fixed order
     */
    public static Expectation name(String found, String what, List<String> names) {
        Optional<String> nearest = Nearest.to(found, names);
        boolean few = !names.isEmpty() && names.size() <= FEW;
        String text = few ? what + ": " + String.join(", ", names) : what;
        String otherwise = few ? "use one of these" : "name another, or add it there";
        return new Expectation(
                text, nearest.map(word -> "did you mean " + word + "?").orElse(otherwise));
    }

    private static Expectation number(
            String what, String column, BigDecimal least, BigDecimal most) {
        String unit = UnitName.of(column).map(name -> " of " + name.plural()).orElse("");
        String text = what + unit + " from " + Figures.plain(least) + " to " + Figures.plain(most);
        return new Expectation(text, "write the figure in digits");
    }
}
