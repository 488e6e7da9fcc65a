package rigbrief.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.Format;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import rigbrief.quantity.Money;

/**
 * The texts of one language.
 *
 * <p>Texts are those of the bundles in {@code rigbrief/words}; a language without bundles of its
 * own gets English. Numbers follow the Unicode locale data that ship with Java.
 */
public final class Texts {
    /** Languages that have bundles, English first. */
    public static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    /** The bundles, one line each; looked through in this order. */
    public static final List<String> BUNDLES =
            List.of(
                    "findings",
                    "rules",
                    "parts",
                    "page",
                    "proposal",
                    "budget",
                    "orders",
                    "assembly",
                    "handover",
                    "clash",
                    "intake",
                    "form",
                    "glossary");

    private static final Control NO_FALLBACK =
            Control.getNoFallbackControl(Control.FORMAT_PROPERTIES);

    /** English, as terminals print it. */
    public static final Texts ENGLISH = new Texts(Locale.ENGLISH, UnaryOperator.identity());

    private final Locale locale;
    private final UnaryOperator<String> each;
    private final Map<String, ResourceBundle> bundles = new ConcurrentHashMap<>();

    private Texts(Locale locale, UnaryOperator<String> each) {
        this.locale = locale;
        this.each = each;
    }

    /** Texts in the locale's language, numbers of its country. */
    public static Texts of(Locale locale) {
        return new Texts(locale, UnaryOperator.identity());
    }

    /**
     * The same with every pattern changed before its places are filled, such as by a mark that
     * tells texts from what comes from no bundle.
     */
    public Texts through(UnaryOperator<String> change) {
        return new Texts(locale, change);
    }

    /** The locale of the numbers. */
    public Locale locale() {
        return locale;
    }

    /** The language of the texts, as HTML's {@code lang} spells it. */
    public String language() {
        String language = bundle(BUNDLES.get(0)).getLocale().getLanguage();
        return language.isEmpty() ? Locale.ENGLISH.getLanguage() : language;
    }

    /** Whether there is such a text. */
    public boolean has(String key) {
        return pattern(key).isPresent();
    }

    /**
     * A text with its places filled, see {@link MessageFormat}. Phrases and figures among the
     * places are told in the same language; a locale among them is told as its country.
     *
     * @throws MissingResourceException when no bundle has it
     */
    public String text(String key, Object... places) {
        String pattern =
                pattern(key)
                        .orElseThrow(
                                () ->
                                        new MissingResourceException(
                                                "no text "
                                                        + key
                                                        + ", expected one in rigbrief/words; add it",
                                                Texts.class.getName(),
                                                key));
        Object[] told = new Object[places.length];
        for (int i = 0; i < places.length; i++) {
            told[i] = told(places[i]);
        }
        return format(each.apply(pattern)).format(told);
    }

    /** A phrase in this language. */
    public String say(Phrase phrase) {
        Object[] places = phrase.places().toArray();
        return phrase.key().isEmpty()
                ? String.valueOf(told(places[0]))
                : text(phrase.key(), places);
    }

    /** A figure with its decimal mark and unit, thousands not parted. */
    public String figure(Measured figure) {
        String number = format("0", figure.number());
        return figure.unit().isEmpty() ? number : number + " " + figure.unit();
    }

    /** Figures are rounded half up, as {@link Measured} and every other figure is. */
    private MessageFormat format(String pattern) {
        MessageFormat format = new MessageFormat(pattern, locale);
        for (Format place : format.getFormats()) {
            if (place instanceof DecimalFormat number) {
                number.setRoundingMode(RoundingMode.HALF_UP);
            }
        }
        return format;
    }

    private Object told(Object place) {
        if (place instanceof Phrase phrase) {
            return say(phrase);
        }
        if (place instanceof Measured figure) {
            return figure(figure);
        }
        if (place instanceof Money money) {
            return money(money);
        }
        if (place instanceof Phrase.Capital capital) {
            return capital(say(capital.phrase()));
        }
        if (place instanceof Phrase.Sentence sentence) {
            return capital(say(sentence.phrase())) + ".";
        }
        if (place instanceof Phrase.Titled titled) {
            return has(titled.key()) ? text(titled.key()) : titled.own();
        }
        if (place instanceof Locale country) {
            return country.getDisplayCountry(locale);
        }
        return place instanceof Phrase.Joined joined ? joined(joined) : place;
    }

    private String joined(Phrase.Joined joined) {
        List<String> words = new ArrayList<>();
        joined.parts().forEach(part -> words.add(String.valueOf(told(part))));
        return String.join(joined.mark(), words);
    }

    /**
     * An amount with its currency: in English behind the currency's code, elsewhere as the locale
     * writes it, such as {@code 1.100,00 €}.
     */
    public String money(Money money) {
        return money(money.amount(), money.currency());
    }

    /** The same of an amount that need not have the currency's own number of decimals. */
    public String money(BigDecimal amount, Currency currency) {
        if (locale.getLanguage().equals(Locale.ENGLISH.getLanguage())) {
            return currency.getCurrencyCode() + " " + grouped(amount);
        }
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        format.setCurrency(currency);
        format.setMinimumFractionDigits(amount.scale());
        format.setMaximumFractionDigits(amount.scale());
        return format.format(amount);
    }

    /** An amount without its currency, for a column whose head names it. */
    public String amount(Money money) {
        return grouped(money.amount());
    }

    /** A decimal number with all its decimals, thousands parted. */
    public String grouped(BigDecimal number) {
        return format("#,##0", number);
    }

    private String format(String pattern, BigDecimal number) {
        DecimalFormat format = new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(locale));
        int decimals = Math.max(0, number.scale());
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(number);
    }

    private static String capital(String words) {
        int first = 0;
        while (first < words.length() && !Character.isLetterOrDigit(words.charAt(first))) {
            first++;
        }
        return first == words.length()
                ? words
                : words.substring(0, first)
                        + words.substring(first, first + 1).toUpperCase(Locale.ROOT)
                        + words.substring(first + 1);
    }

    private Optional<String> pattern(String key) {
        for (String name : BUNDLES) {
            ResourceBundle bundle = bundle(name);
            if (bundle.containsKey(key)) {
                return Optional.of(bundle.getString(key));
            }
        }
        return Optional.empty();
    }

    private ResourceBundle bundle(String name) {
        return bundles.computeIfAbsent(
                name,
                each -> ResourceBundle.getBundle("rigbrief.words." + each, locale, NO_FALLBACK));
    }
}
