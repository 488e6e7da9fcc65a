package rigbrief.intake;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;
import rigbrief.wording.Texts;

/** Numbers and lists in plain words, and plain words in every language there is. */
final class Plain {
    private Plain() {}

    /** "a", "a and b", "a, b and c", of words that are data. */
    static Phrase list(List<String> words) {
        return Phrase.list(words.stream().map(Phrase::data).toList());
    }

    /** A number with the reader's decimal mark and as few decimals as it needs. */
    static Measured figure(BigDecimal number) {
        return new Measured(new BigDecimal(Entries.plain(number)), "");
    }

    /** A duration as a person says it: seconds below two minutes, then minutes, then hours. */
    static Measured duration(double seconds) {
        if (seconds < 120) {
            return shortest(seconds, "s");
        }
        return seconds < 7_200 ? shortest(seconds / 60, "min") : shortest(seconds / 3_600, "h");
    }

    private static Measured shortest(double number, String unit) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
        return new Measured(new BigDecimal(Entries.plain(rounded)), unit);
    }

    /** What a phrase says in each language, in lower case. */
    static List<String> spoken(Phrase phrase) {
        return Texts.LANGUAGES.stream()
                .map(language -> Texts.of(language).say(phrase).toLowerCase(Locale.ROOT))
                .distinct()
                .toList();
    }
}
