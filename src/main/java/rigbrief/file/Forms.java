package rigbrief.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Currency;
import java.util.Locale;
import rigbrief.file.cell.Expectation;
import rigbrief.file.cell.Ids;
import rigbrief.part.Cells.Form;
import rigbrief.part.Cells.Malformed;
import rigbrief.part.Word;

/** How single values are written that are neither words nor bare numbers. */
final class Forms {
    private static final int LONGEST_FIGURE = 24;
    private static final int DATE_LENGTH = 10;

    private Forms() {}

    /** An identity. */
    static String id(String entry) throws Malformed {
        if (!Ids.wellFormed(entry)) {
            throw new Malformed(
                    "an id of lower-case letters, digits, dots and hyphens",
                    "write it in lower case with hyphens for blanks");
        }
        return entry;
    }

    /** One of the words of an enum. */
    static <E extends Enum<E> & Word> Form<E> word(Class<E> words) {
        return entry -> {
            for (E constant : words.getEnumConstants()) {
                if (constant.word().equals(entry)) {
                    return constant;
                }
            }
            Expectation word = Expectation.word(entry, words);
            throw new Malformed(word.text(), word.advice());
        };
    }

    /** An ISO 8601 calendar date, {@code 2026-11-20}. */
    static LocalDate date(String entry) throws Malformed {
        try {
            // A longer year would be read too, and is a typing error.
            if (entry.length() == DATE_LENGTH) {
                return LocalDate.parse(entry);
            }
        } catch (DateTimeParseException noDate) {
            throw noDate();
        }
        throw noDate();
    }

    private static Malformed noDate() {
        return new Malformed("a date of the calendar", "write year, month, day: 2026-11-20");
    }

    /** An ISO 4217 currency that has amounts. */
    static Currency currency(String entry) throws Malformed {
        try {
            Currency currency = Currency.getInstance(entry);
            if (currency.getDefaultFractionDigits() >= 0) {
                return currency;
            }
        } catch (IllegalArgumentException unknown) {
            throw noCurrency();
        }
        throw noCurrency();
    }

    /** A language and a country, {@code de-DE}: ISO 639-1 and ISO 3166-1 alpha-2. */
    static Locale locale(String entry) throws Malformed {
        Locale locale = Locale.forLanguageTag(entry);
        boolean known =
                locale.toLanguageTag().equals(entry)
                        && entry.matches("[a-z]{2}-[A-Z]{2}")
                        && Arrays.asList(Locale.getISOLanguages()).contains(locale.getLanguage())
                        && Arrays.asList(Locale.getISOCountries()).contains(locale.getCountry());
        if (!known) {
            throw new Malformed(
                    "a language and a country",
                    "write two small letters, a hyphen and two capitals, such as de-DE");
        }
        return locale;
    }

    private static Malformed noCurrency() {
        return new Malformed("an ISO 4217 currency", "write its three capitals, such as EUR");
    }

    /** A share, {@code 3%} or {@code 2.5%}, in hundredths of a percent; a bare 0 is none. */
    static Form<Integer> basisPoints(int leastPercent, int mostPercent) {
        return entry -> {
            String expected = "a percentage from %d%% to %d%%".formatted(leastPercent, mostPercent);
            String advice = "write it with its sign, such as 80%";
            if (!entry.endsWith("%") && !entry.equals("0")) {
                throw new Malformed(expected, advice);
            }
            String figure = entry.replace("%", "").strip();
            return hundredths(figure, leastPercent, mostPercent, expected, advice);
        };
    }

    /** A share in whole percent. */
    static Form<Integer> percent(int least, int most) {
        return entry -> {
            int hundredths = basisPoints(least, most).read(entry);
            if (hundredths % 100 != 0) {
                throw new Malformed("a whole percentage", "round it");
            }
            return hundredths / 100;
        };
    }

    /** A number with at most so many decimals as hundredths, or tenths, and so on. */
    private static int hundredths(
            String figure, int least, int most, String expected, String advice) throws Malformed {
        BigDecimal percent = decimal(figure, expected, advice);
        boolean within =
                percent.compareTo(BigDecimal.valueOf(least)) >= 0
                        && percent.compareTo(BigDecimal.valueOf(most)) <= 0;
        if (!within || percent.stripTrailingZeros().scale() > 2) {
            throw new Malformed(expected + ", at most two decimals", advice);
        }
        return percent.movePointRight(2).intValueExact();
    }

    /** A duration, {@code 90s}, {@code 1.5m} or {@code 2h}, in seconds. */
    static double seconds(String entry) throws Malformed {
        String expected = "a duration above 0 and at most 1000h";
        String advice = "write 90s, 1.5m or 2h";
        int factor =
                entry.endsWith("s") ? 1 : entry.endsWith("m") ? 60 : entry.endsWith("h") ? 3600 : 0;
        if (factor == 0) {
            throw new Malformed(expected, advice);
        }
        BigDecimal figure = decimal(entry.substring(0, entry.length() - 1), expected, advice);
        BigDecimal seconds = figure.multiply(BigDecimal.valueOf(factor));
        if (seconds.signum() <= 0 || seconds.compareTo(BigDecimal.valueOf(3_600_000)) > 0) {
            throw new Malformed(expected, advice);
        }
        return seconds.doubleValue();
    }

    /** A bound with one or three decimals as a whole number of tenths or thousandths. */
    static Form<Integer> scaled(String what, int decimals, int least, int most) {
        return entry -> {
            String expected =
                    "%s from %d to %d, at most %d decimals".formatted(what, least, most, decimals);
            BigDecimal figure = decimal(entry, expected, "write the figure in digits");
            boolean within =
                    figure.compareTo(BigDecimal.valueOf(least)) >= 0
                            && figure.compareTo(BigDecimal.valueOf(most)) <= 0;
            if (!within || figure.stripTrailingZeros().scale() > decimals) {
                throw new Malformed(expected, "correct the figure");
            }
            return figure.movePointRight(decimals)
                    .setScale(0, RoundingMode.UNNECESSARY)
                    .intValueExact();
        };
    }

    /** Digits, perhaps a point and more digits, perhaps a minus sign. */
    static BigDecimal decimal(String entry, String expected, String advice) throws Malformed {
        if (!plain(entry)) {
            boolean comma = entry.indexOf(',') >= 0 && plain(entry.replace(',', '.'));
            throw new Malformed(
                    expected, comma ? "write a decimal point, " + entry.replace(',', '.') : advice);
        }
        return new BigDecimal(entry);
    }

    private static boolean plain(String entry) {
        int start = entry.startsWith("-") ? 1 : 0;
        boolean right = entry.length() > start && entry.length() <= LONGEST_FIGURE;
        int points = 0;
        for (int i = start; right && i < entry.length(); i++) {
            char c = entry.charAt(i);
            points += c == '.' ? 1 : 0;
            boolean inside = i > start && i < entry.length() - 1;
            right = c >= '0' && c <= '9' || c == '.' && points == 1 && inside;
        }
        return right;
    }
}
