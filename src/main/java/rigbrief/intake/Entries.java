package rigbrief.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rigbrief.diagnostic.Nearest;
import rigbrief.diagnostic.Quotation;
import rigbrief.quantity.Money;
import rigbrief.wording.Phrase;
import rigbrief.wording.Texts;

/** Reads what people type: numbers of choices, words, amounts, durations. */
final class Entries {
    /** What is typed where nothing of a list is meant. */
    static final String NONE = "none";

    private static final int LONGEST_TEXT = 120;
    private static final BigDecimal MOST_MONEY = BigDecimal.valueOf(100_000_000);

    private Entries() {}

    /** A line of text that is not empty, without anything that prints nothing. */
    static String text(String typed, Phrase what) throws NotUnderstood {
        String text = typed.strip();
        if (text.isEmpty()) {
            throw new NotUnderstood("", what, Phrase.of("advice.type"));
        }
        if (text.codePointCount(0, text.length()) > LONGEST_TEXT || !Quotation.allPrints(text)) {
            throw new NotUnderstood(
                    text, Phrase.of("expected.text", LONGEST_TEXT), Phrase.of("advice.text"));
        }
        return text;
    }

    /** One choice: its word, its label, its number, or the beginning of one alone. */
    static Choice choice(List<Choice> choices, String typed) throws NotUnderstood {
        return find(choices, typed).orElseThrow(() -> unknown(choices, typed));
    }

    /** One choice, or nothing where the entry is none of them. */
    static Optional<Choice> find(List<Choice> choices, String typed) {
        String entry = typed.strip().toLowerCase(Locale.ROOT);
        for (Choice choice : choices) {
            if (entry.equals(choice.word())) {
                return Optional.of(choice);
            }
        }
        for (Choice choice : choices) {
            if (Plain.spoken(choice.label()).contains(entry)) {
                return Optional.of(choice);
            }
        }
        if (entry.matches("[0-9]{1,3}")) {
            int number = Integer.parseInt(entry);
            return number >= 1 && number <= choices.size()
                    ? Optional.of(choices.get(number - 1))
                    : Optional.empty();
        }
        return beginning(choices, entry);
    }

    private static Optional<Choice> beginning(List<Choice> choices, String entry) {
        List<Choice> begun = new ArrayList<>();
        for (Choice choice : choices) {
            boolean begins =
                    choice.word().startsWith(entry)
                            || Plain.spoken(choice.label()).stream()
                                    .anyMatch(label -> label.startsWith(entry));
            if (entry.length() > 1 && begins) {
                begun.add(choice);
            }
        }
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }

    private static NotUnderstood unknown(List<Choice> choices, String typed) {
        List<String> known = new ArrayList<>();
        choices.forEach(choice -> known.add(choice.word()));
        choices.forEach(choice -> known.addAll(Plain.spoken(choice.label())));
        Phrase advice =
                Nearest.to(lower(typed.strip()), known)
                        .map(Entries::meant)
                        .orElse(Phrase.of("advice.choice"));
        return new NotUnderstood(
                typed.strip(), Phrase.of("expected.choice", choices.size()), advice);
    }

    /** The advice that something else was meant. */
    static Phrase meant(String word) {
        return Phrase.of("advice.meant", word);
    }

    /** Several choices with commas between them, each once, in the order of the choices. */
    static List<Choice> choices(List<Choice> choices, String typed) throws NotUnderstood {
        Set<Choice> named = new LinkedHashSet<>();
        if (!none(typed)) {
            for (String entry : typed.split("[,;]")) {
                if (!entry.isBlank()) {
                    named.add(choice(choices, entry));
                }
            }
        }
        return choices.stream().filter(named::contains).toList();
    }

    /** Whether nothing of a list is meant. */
    static boolean none(String typed) {
        String entry = lower(typed.strip());
        return entry.isEmpty()
                || entry.equals("-")
                || means(NONE, entry)
                || Plain.spoken(Phrase.of("word.no")).contains(entry);
    }

    /**
     * Whether a word was typed that stands for itself, in whichever language.
     *
     * @param word the word as it is kept; {@code word.WORD} is what it is called
     */
    static boolean means(String word, String typed) {
        String entry = lower(typed.strip());
        return entry.equals(word)
                || Plain.spoken(Phrase.of("word." + word.replace(' ', '-'))).contains(entry);
    }

    /** The words of choices, as an answer is kept. */
    static String words(List<Choice> choices) {
        return choices.isEmpty()
                ? NONE
                : String.join(", ", choices.stream().map(Choice::word).toList());
    }

    /** A whole number within bounds. */
    static int whole(String typed, int least, int most) throws NotUnderstood {
        String entry = typed.strip();
        if (entry.matches("[0-9]{1,7}")) {
            int number = Integer.parseInt(entry);
            if (number >= least && number <= most) {
                return number;
            }
        }
        throw new NotUnderstood(
                entry, Phrase.of("expected.whole", least, most), Phrase.of("advice.digits"));
    }

    /** An amount of money; a comma may stand for the point. */
    static Money money(String typed, Currency currency, boolean free) throws NotUnderstood {
        String code = currency.getCurrencyCode();
        String entry = bare(typed, currency);
        int decimals = currency.getDefaultFractionDigits();
        // 1.250 and 1,250 mean a thousand to one reader and one and a quarter to another.
        boolean grouped = entry.matches("[0-9]{1,3}[.,'][0-9]{3}") && decimals != 3;
        String plain = ungrouped(entry).replace(',', '.');
        if (!grouped && plain.matches("[0-9]{1,9}([.][0-9]{1,3})?")) {
            BigDecimal amount = new BigDecimal(plain);
            boolean within = amount.compareTo(MOST_MONEY) <= 0 && (free || amount.signum() > 0);
            if (within && amount.stripTrailingZeros().scale() <= decimals) {
                return new Money(amount, currency);
            }
        }
        throw new NotUnderstood(
                entry,
                Phrase.of(free ? "expected.amount" : "expected.amount-above-0", code),
                Phrase.of("advice.amount"));
    }

    /** What is typed without the currency, as reports print it in any language. */
    private static String bare(String typed, Currency currency) {
        String entry = typed.replace(currency.getCurrencyCode(), "");
        for (Locale language : Texts.LANGUAGES) {
            entry = entry.replace(currency.getSymbol(language), "");
        }
        return entry.replace('\u00a0', ' ').strip();
    }

    /** Thousands put together where another mark before the decimals shows that they are parted. */
    private static String ungrouped(String entry) {
        return entry.matches("[0-9]{1,3}(,[0-9]{3})+[.][0-9]{1,2}")
                ? entry.replace(",", "")
                : entry.matches("[0-9]{1,3}([.][0-9]{3})+,[0-9]{1,2}")
                        ? entry.replace(".", "")
                        : entry;
    }

    /** A decimal number within bounds; a comma may stand for the point. */
    static BigDecimal number(String typed, int least, int most, int decimals) throws NotUnderstood {
        String entry = typed.strip().replace(',', '.');
        if (entry.matches("[0-9]{1,6}([.][0-9]{1,4})?")) {
            BigDecimal number = new BigDecimal(entry);
            boolean within =
                    number.compareTo(BigDecimal.valueOf(least)) >= 0
                            && number.compareTo(BigDecimal.valueOf(most)) <= 0;
            if (within && number.stripTrailingZeros().scale() <= decimals) {
                return number;
            }
        }
        throw new NotUnderstood(
                entry,
                Phrase.of("expected.number", least, most, decimals),
                Phrase.of("advice.digits"));
    }

    /** A number as short as it can be written. */
    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
