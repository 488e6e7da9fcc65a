package rigbrief.file.cell;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Plain decimal figures; a character test each, since every cell of a catalogue passes here. */
final class Digits {
    private static final int LONGEST_WHOLE = 9;
    private static final int LONGEST_DECIMAL = 24;

    private Digits() {}

    /** A whole number of at most nine digits, with or without a minus sign. */
    static OptionalInt whole(String text) {
        int start = text.startsWith("-") ? 1 : 0;
        int length = text.length() - start;
        if (length < 1 || length > LONGEST_WHOLE || !allDigits(text, start, text.length())) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(text));
    }

    /** Digits, perhaps a point and more digits, with or without a minus sign; no exponent. */
    static OptionalDouble decimal(String text) {
        return isDecimal(text)
                ? OptionalDouble.of(Double.parseDouble(text))
                : OptionalDouble.empty();
    }

    /** Whether a text is a plain decimal figure. */
    static boolean isDecimal(String text) {
        int start = text.startsWith("-") ? 1 : 0;
        int point = text.indexOf('.');
        if (text.length() > LONGEST_DECIMAL) {
            return false;
        }
        return point < 0
                ? allDigits(text, start, text.length())
                : allDigits(text, start, point) && allDigits(text, point + 1, text.length());
    }

    private static boolean allDigits(String text, int from, int to) {
        for (int i = from; i < to; i++) {
            char digit = text.charAt(i);
            if (digit < '0' || digit > '9') {
                return false;
            }
        }
        return from < to;
    }
}
