package rigbrief.file;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigbrief.part.Cells.Malformed;

/**
 * How a price list writes numbers.
 *
 * @param decimal what stands before the decimals
 * @param thousands what stands between groups of three digits; empty for nothing
 * @param currency the currency, whose code or symbol may stand beside an amount
 */
record FigureForm(char decimal, Optional<Character> thousands, Currency currency) {
    private static final int LONGEST = 30;

    /** Signs that stand for one currency or several; the map says which is meant. */
    private static final String SIGNS = "\u20AC$\u00A3\u00A5";

    /** A number, perhaps with a sign in front. */
    BigDecimal number(String entry) throws Malformed {
        String text = spaced(entry).strip();
        Matcher matcher = pattern().matcher(text);
        if (text.length() > LONGEST || !matcher.matches()) {
            throw new Malformed(expected(), advice(text));
        }
        String digits = matcher.group(2);
        if (thousands.isPresent()) {
            digits = digits.replace(String.valueOf(group()), "");
        }
        String decimals = matcher.group(3) == null ? "" : "." + matcher.group(3);
        return new BigDecimal(matcher.group(1) + digits + decimals);
    }

    /** An amount: a number, perhaps with the currency before or behind it. */
    BigDecimal amount(String entry) throws Malformed {
        String text = spaced(entry).strip();
        String code = currency.getCurrencyCode();
        if (text.startsWith(code)) {
            text = text.substring(code.length());
        } else if (text.endsWith(code)) {
            text = text.substring(0, text.length() - code.length());
        }
        text = text.strip();
        if (!text.isEmpty() && SIGNS.indexOf(text.charAt(0)) >= 0) {
            text = text.substring(1);
        } else if (!text.isEmpty() && SIGNS.indexOf(text.charAt(text.length() - 1)) >= 0) {
            text = text.substring(0, text.length() - 1);
        }
        return number(text);
    }

    /** Lists keep groups together with blanks that don't break a line. */
    private static String spaced(String entry) {
        return entry.replace('\u00A0', ' ').replace('\u202F', ' ').replace('\u2019', '\'');
    }

    private char group() {
        return thousands.orElseThrow();
    }

    private Pattern pattern() {
        String plain = "[0-9]+";
        String whole =
                thousands
                        .map(
                                mark ->
                                        "[0-9]{1,3}(?:%s[0-9]{3})+|%s"
                                                .formatted(
                                                        Pattern.quote(String.valueOf(mark)), plain))
                        .orElse(plain);
        return Pattern.compile(
                "(-?)(%s)(?:%s([0-9]+))?".formatted(whole, Pattern.quote(String.valueOf(decimal))));
    }

    private String expected() {
        return "a number written like %s".formatted(example());
    }

    private String example() {
        return "1" + thousands.map(String::valueOf).orElse("") + "234" + decimal + "50";
    }

    private String advice(String text) {
        boolean other = text.indexOf(decimal == ',' ? '.' : ',') >= 0;
        return other
                ? "correct it, or say in the map what decimal and thousands are"
                : "correct the figure";
    }
}
