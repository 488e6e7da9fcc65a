package rigbrief.file.cell;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Cells;
import rigbrief.part.Tally;
import rigbrief.part.Word;

/** The entries between the semicolons of one cell. */
final class Entries {
    static final Expectation EXPECTED =
            new Expectation("at least one entry, with ; between several", "write it in");

    private Entries() {}

    /** How many entries there should be. */
    static int count(String text) {
        return 1 + (int) text.chars().filter(c -> c == ';').count();
    }

    /** The entries without the blanks around them; an empty one is reported and left out. */
    static List<String> split(String text, String column, Row row) {
        List<String> entries = new ArrayList<>();
        int from = 0;
        while (from <= text.length()) {
            int semicolon = text.indexOf(';', from);
            int to = semicolon < 0 ? text.length() : semicolon;
            entries.add(text.substring(from, to).strip());
            from = to + 1;
        }
        if (entries.removeIf(String::isEmpty)) {
            row.fault(
                    column,
                    text,
                    "an entry on each side of every ;",
                    "take the ; out that has nothing beside it");
        }
        return entries;
    }

    /** Reads each entry; what can't be read is reported and left out. */
    static <T> List<T> readAll(List<String> entries, Cells.Form<T> form, String column, Row row) {
        List<T> values = new ArrayList<>(entries.size());
        for (String entry : entries) {
            try {
                values.add(form.read(entry));
            } catch (Cells.Malformed malformed) {
                row.fault(column, entry, malformed.expected(), malformed.advice());
            }
        }
        return List.copyOf(values);
    }

    /** A word and how often: {@code sata:6}; a bare word is one. */
    static <E extends Enum<E> & Word> Map.Entry<E, Integer> counted(String entry, Class<E> words)
            throws Cells.Malformed {
        int colon = entry.indexOf(':');
        String word = colon < 0 ? entry : entry.substring(0, colon);
        int count = colon < 0 ? 1 : Digits.whole(entry.substring(colon + 1)).orElse(0);
        for (E constant : words.getEnumConstants()) {
            if (constant.word().equals(word) && count >= 1 && count <= 99) {
                return Map.entry(constant, count);
            }
        }
        String first = words.getEnumConstants()[0].word();
        throw new Cells.Malformed(
                "a word and a number from 1 to 99, the word " + Expectation.word(words).text(),
                "write " + first + ":2, with ; between several, or none");
    }

    /** The counts together; a word counted twice is reported. */
    static <E extends Enum<E> & Word> Tally<E> tally(
            List<Map.Entry<E, Integer>> counts, String column, Row row) {
        if (counts.isEmpty()) {
            return Tally.none();
        }
        Map<E, Integer> tally = new EnumMap<>(counts.get(0).getKey().getDeclaringClass());
        for (Map.Entry<E, Integer> count : counts) {
            if (tally.merge(count.getKey(), count.getValue(), Integer::sum) > count.getValue()) {
                row.fault(
                        column,
                        count.getKey().word() + ":" + count.getValue(),
                        "each word once",
                        "add the two numbers up");
            }
        }
        return new Tally<>(tally);
    }
}
