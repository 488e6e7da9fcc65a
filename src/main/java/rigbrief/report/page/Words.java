package rigbrief.report.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/**
 * Texts in the reader's language; numbers, money and dates as they are written where the reader is.
 *
 * <p>Texts are those of the bundles in {@code rigbrief/words}; a language without a bundle of its
 * own gets English. Numbers follow the Unicode locale data that ship with Java.
 */
public final class Words {
    /** Languages that have bundles, English first. */
    public static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    /** The bundles, one line each; looked through in this order. */
    private static final List<String> BUNDLES =
            List.of("page", "proposal", "parts", "rules", "glossary");

    private static final Control NO_FALLBACK =
            Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);

    private final Locale locale;
    private final List<ResourceBundle> bundles = new ArrayList<>();

    private Words(Locale locale) {
        this.locale = locale;
        for (String bundle : BUNDLES) {
            bundles.add(ResourceBundle.getBundle("rigbrief.words." + bundle, locale, NO_FALLBACK));
        }
    }

    /** Texts in the locale's language, formats of its country. */
    public static Words of(Locale locale) {
        return new Words(locale);
    }

    /** The locale of the formats. */
    public Locale locale() {
        return locale;
    }

    /** The language of the texts, as HTML's {@code lang} spells it. */
    public String language() {
        return bundles.get(0).getLocale().getLanguage().isEmpty()
                ? Locale.ENGLISH.getLanguage()
                : bundles.get(0).getLocale().getLanguage();
    }

    /**
     * A text with its places filled, see {@link MessageFormat}.
     *
     * @throws MissingResourceException when no bundle has it
     */
    public String text(String key, Object... places) {
        for (ResourceBundle bundle : bundles) {
            if (bundle.containsKey(key)) {
                return new MessageFormat(bundle.getString(key), locale).format(places);
            }
        }
        throw new MissingResourceException(
                "no text " + key + ", expected one in rigbrief/words; add it",
                Words.class.getName(),
                key);
    }

    /** Whether there is such a text. */
    public boolean has(String key) {
        return bundles.stream().anyMatch(bundle -> bundle.containsKey(key));
    }

    /** An amount with its currency's sign. */
    public String money(long minor, Currency currency) {
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        int decimals = Math.max(0, currency.getDefaultFractionDigits());
        format.setCurrency(currency);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(BigDecimal.valueOf(minor, decimals));
    }

    /** An amount rounded to whole units of its currency, for what is only estimated. */
    public String roundMoney(long minor, Currency currency) {
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        format.setCurrency(currency);
        format.setMaximumFractionDigits(0);
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(
                BigDecimal.valueOf(minor, Math.max(0, currency.getDefaultFractionDigits())));
    }

    /** An amount without its currency, for a column whose head names it. */
    public String amount(long minor, Currency currency) {
        int decimals = Math.max(0, currency.getDefaultFractionDigits());
        return number(BigDecimal.valueOf(minor, decimals));
    }

    /** A decimal number with all its decimals. */
    public String number(BigDecimal number) {
        DecimalFormat format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(locale));
        format.setMinimumFractionDigits(Math.max(0, number.scale()));
        format.setMaximumFractionDigits(Math.max(0, number.scale()));
        return format.format(number);
    }

    /** A figure rounded half up to that many decimals. */
    public String number(int decimals, double figure) {
        return number(new BigDecimal(figure).setScale(decimals, RoundingMode.HALF_UP));
    }

    /** A figure with its unit behind a space that does not break. */
    public String quantity(int decimals, double figure, String unit) {
        return number(decimals, figure) + "\u00a0" + unit;
    }

    /** A day, in words. */
    public String date(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale).format(day);
    }
}
