package rigbrief.report.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import rigbrief.quantity.Money;
import rigbrief.wording.Phrase;
import rigbrief.wording.Texts;

/**
 * Texts in the reader's language; numbers, money and dates as they are written where the reader is.
 *
 * <p>Texts are those of the bundles in {@code rigbrief/words}; a language without a bundle of its
 * own gets English. Numbers follow the Unicode locale data that ship with Java.
 */
public final class Words {
    /** Languages that have bundles, English first. */
    public static final List<Locale> LANGUAGES = Texts.LANGUAGES;

    private final Locale locale;
    private final Texts texts;

    private Words(Texts texts) {
        this.locale = texts.locale();
        this.texts = texts;
    }

    /** Texts in the locale's language, formats of its country. */
    public static Words of(Locale locale) {
        return new Words(Texts.of(locale));
    }

    /** Given texts, formats of their locale. */
    public static Words of(Texts texts) {
        return new Words(texts);
    }

    /** The locale of the formats. */
    public Locale locale() {
        return locale;
    }

    /** The language of the texts, as HTML's {@code lang} spells it. */
    public String language() {
        return texts.language();
    }

    /**
     * A text with its places filled, see {@link Texts#text}.
     *
     * @throws java.util.MissingResourceException when no bundle has it
     */
    public String text(String key, Object... places) {
        return texts.text(key, places);
    }

    /** The texts behind the formats. */
    public Texts texts() {
        return texts;
    }

    /** A phrase in the reader's language. */
    public String say(Phrase phrase) {
        return texts.say(phrase);
    }

    /** Phrases in the reader's language. */
    public List<String> say(List<Phrase> phrases) {
        return phrases.stream().map(texts::say).toList();
    }

    /** A rule's title; its own, in English, where the language has none. */
    public String title(String rule, String own) {
        return has("rule." + rule) ? text("rule." + rule) : own;
    }

    /** Whether there is such a text. */
    public boolean has(String key) {
        return texts.has(key);
    }

    /** An amount with its currency, see {@link Texts#money}, in one line. */
    public String money(long minor, Currency currency) {
        return money(Money.ofMinor(minor, currency));
    }

    /** An amount with its currency, see {@link Texts#money}, in one line. */
    public String money(Money money) {
        return inOneLine(texts.money(money));
    }

    private static String inOneLine(String money) {
        return money.replace(' ', '\u00a0');
    }

    /** An amount rounded to whole units of its currency, for what is only estimated. */
    public String roundMoney(long minor, Currency currency) {
        BigDecimal exact = Money.ofMinor(minor, currency).amount();
        return inOneLine(texts.money(exact.setScale(0, RoundingMode.HALF_UP), currency));
    }

    /** An amount without its currency, for a column whose head names it. */
    public String amount(long minor, Currency currency) {
        return texts.amount(Money.ofMinor(minor, currency));
    }

    /** A decimal number with all its decimals. */
    public String number(BigDecimal number) {
        return texts.grouped(number);
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
