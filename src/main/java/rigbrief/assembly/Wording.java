package rigbrief.assembly;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** Turns of phrase for lists and numbers. */
final class Wording {
    private Wording() {}

    /** {@code 2}, {@code 2 and 4}, {@code 1, 2 and 4}. */
    static String list(List<?> things) {
        List<String> words = things.stream().map(Object::toString).toList();
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** A number with its word, in the singular or plural. */
    static String counted(long count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    /** A figure rounded half up to that many decimals, with a decimal point. */
    static String number(int decimals, double figure) {
        return BigDecimal.valueOf(figure).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    /** With a capital first letter. */
    static String capital(String words) {
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
