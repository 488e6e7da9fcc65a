package rigbrief.file.cell;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import rigbrief.diagnostic.Quotation;
import rigbrief.part.Cells;
import rigbrief.part.Fact;
import rigbrief.part.Tally;
import rigbrief.part.Word;
import rigbrief.quantity.Current;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Power;

/**
 * The cells of a row, read into values; each fault is reported to the row and answered with a
 * stand-in.
 */
public final class CellRow implements Cells {
    /**
     * Entries repeat all through a catalogue: each text of a column is read once, and what it says
     * is held once.
     */
    public static final class Memo {
        /** A column with more texts than this is one of names, of which hardly any comes again. */
        private static final int MOST_TEXTS = 4_096;

        private final Map<String, Map<String, Object>> lists = new HashMap<>();
        private final Map<String, Map<String, Object>> facts = new HashMap<>();
        private final Map<String, Map<String, String>> texts = new HashMap<>();

        private Map<String, Object> lists(String column) {
            return lists.computeIfAbsent(column, any -> new HashMap<>());
        }

        private Map<String, Object> facts(String column) {
            return facts.computeIfAbsent(column, any -> new HashMap<>());
        }

        private String text(String column, String text) {
            Map<String, String> known = texts.computeIfAbsent(column, any -> new HashMap<>());
            String kept = known.get(text);
            if (kept == null && known.size() < MOST_TEXTS) {
                known.put(text, text);
            }
            return kept == null ? text : kept;
        }
    }

    private final Row row;
    private final Memo memo;
    private String id;

    private CellRow(Row row, Memo memo, String id) {
        this.row = row;
        this.memo = memo;
        this.id = id;
    }

    /** A row whose part brings its own id. */
    public static CellRow of(Row row, Memo memo) {
        return new CellRow(row, memo, null);
    }

    /** A row that describes something whose id stands elsewhere. */
    public static CellRow named(String id, Row row) {
        return new CellRow(row, new Memo(), id);
    }

    @Override
    public String id(String column) {
        if (id == null) {
            String text = required(column, () -> Expectation.ID);
            id = text == null ? "" : Ids.checked(text, column, row);
        }
        return id;
    }

    @Override
    public String text(String column) {
        String text = required(column, () -> Expectation.TEXT);
        return text == null ? "" : memo.text(column, printable(column, text));
    }

    @Override
    public String textOr(String column, String otherwise) {
        String text = row.cell(column);
        return empty(text) ? otherwise : printable(column, text);
    }

    @Override
    public String gtin(String column) {
        String text = row.cell(column);
        return empty(text) ? "" : Ids.gtin(text, column, row);
    }

    @Override
    public <E extends Enum<E> & Word> E choice(String column, Class<E> words) {
        String text = required(column, () -> Expectation.word(words));
        E first = words.getEnumConstants()[0];
        return text == null ? first : word(column, text, words).orElse(first);
    }

    @Override
    public <E extends Enum<E> & Word> E choiceOr(String column, E otherwise) {
        return maybe(column, otherwise.getDeclaringClass()).orElse(otherwise);
    }

    @Override
    public <E extends Enum<E> & Word> Optional<E> maybe(String column, Class<E> words) {
        String text = row.cell(column);
        return empty(text) ? Optional.empty() : word(column, text, words);
    }

    @Override
    public boolean yes(String column) {
        String text = row.cell(column);
        if (empty(text) || text.equals("no") || text.equals("false")) {
            return false;
        }
        if (!text.equals("yes") && !text.equals("true")) {
            fault(column, text, Expectation.YES);
        }
        return true;
    }

    @Override
    public int whole(String column, int least, int most) {
        String text = required(column, () -> Expectation.whole(column, least, most));
        return text == null ? least : parseWhole(column, text, least, most, false).orElse(least);
    }

    @Override
    public int wholeOr(String column, int least, int most, int otherwise) {
        String text = row.cell(column);
        if (empty(text) || Digits.whole(text).orElse(otherwise + 1) == otherwise) {
            return otherwise;
        }
        return parseWhole(column, text, least, most, true).orElse(otherwise);
    }

    @Override
    public OptionalInt maybeWhole(String column, int least, int most) {
        String text = row.cell(column);
        return empty(text) ? OptionalInt.empty() : parseWhole(column, text, least, most, true);
    }

    @Override
    public double number(String column, double least, double most) {
        String text = required(column, () -> Expectation.decimal(column, least, most));
        return text == null ? least : parseNumber(column, text, least, most, false).orElse(least);
    }

    @Override
    public double numberOr(String column, double least, double most, double otherwise) {
        String text = row.cell(column);
        return empty(text)
                ? otherwise
                : parseNumber(column, text, least, most, true).orElse(otherwise);
    }

    @Override
    public Fact<Length> length(String column, int leastMm, int mostMm) {
        return fact(column, leastMm, mostMm, Length::mm);
    }

    @Override
    public Fact<Power> power(String column, int leastW, int mostW) {
        return fact(column, leastW, mostW, Power::w);
    }

    @Override
    public Fact<Mass> mass(String column, int leastG, int mostG) {
        return fact(column, leastG, mostG, Mass::g);
    }

    @Override
    public Fact<Current> current(String column, int leastMa, int mostMa) {
        return fact(column, leastMa, mostMa, Current::ma);
    }

    @Override
    public <T> List<T> list(String column, Form<T> form) {
        String text = required(column, () -> Entries.EXPECTED);
        return text == null ? List.of() : entries(column, text, form);
    }

    @Override
    public <T> List<T> listOrNone(String column, Form<T> form) {
        String text = row.cell(column);
        return empty(text) || text.equals("none") ? List.of() : entries(column, text, form);
    }

    @Override
    public <T> Fact<List<T>> maybeList(String column, Form<T> form) {
        String text = row.cell(column);
        if (empty(text)) {
            return Fact.notStated(id, column);
        }
        return Fact.of(text.equals("none") ? List.of() : entries(column, text, form));
    }

    @Override
    public <E extends Enum<E> & Word> Fact<Tally<E>> tally(String column, Class<E> words) {
        String text = row.cell(column);
        if (empty(text)) {
            return Fact.notStated(id, column);
        }
        Map<String, Object> known = memo.facts(column);
        @SuppressWarnings("unchecked") // one column has one set of words
        Fact<Tally<E>> kept = (Fact<Tally<E>>) known.get(text);
        return kept == null ? counted(column, text, words, known) : kept;
    }

    private <E extends Enum<E> & Word> Fact<Tally<E>> counted(
            String column, String text, Class<E> words, Map<String, Object> known) {
        boolean none = text.equals("none");
        List<Map.Entry<E, Integer>> counts =
                none ? List.of() : entries(column, text, entry -> Entries.counted(entry, words));
        Tally<E> tally = Entries.tally(counts, column, row);
        Fact<Tally<E>> read = Fact.of(tally);
        // An entry that could not be read, or stood there twice, is told again for the next row.
        if (tally.counts().size() == (none ? 0 : Entries.count(text))) {
            known.put(text, read);
        }
        return read;
    }

    @Override
    public <T> T parsed(String column, Form<T> form) {
        String text = required(column, () -> Expectation.TEXT);
        if (text == null) {
            return null;
        }
        List<T> one =
                once(column, text, 1, () -> Entries.readAll(List.of(text), form, column, row));
        return one.isEmpty() ? null : one.get(0);
    }

    private <T> List<T> entries(String column, String text, Form<T> form) {
        return once(
                column,
                text,
                Entries.count(text),
                () -> Entries.readAll(Entries.split(text, column, row), form, column, row));
    }

    @SuppressWarnings("unchecked") // one column has one form, so what it kept is of the form's type
    private <T> List<T> once(String column, String text, int entries, Supplier<List<T>> reading) {
        Map<String, Object> known = memo.lists(column);
        Object kept = known.get(text);
        if (kept != null) {
            return (List<T>) kept;
        }
        List<T> read = reading.get();
        // A list with a hole had a fault, which has to be told again for the next row.
        if (read.size() == entries) {
            known.put(text, read);
        }
        return read;
    }

    private <T> Fact<T> fact(String column, int least, int most, IntFunction<T> quantity) {
        String text = row.cell(column);
        if (empty(text)) {
            return Fact.notStated(id, column);
        }
        Map<String, Object> known = memo.facts(column);
        @SuppressWarnings("unchecked") // one column has one quantity
        Fact<T> kept = (Fact<T>) known.get(text);
        if (kept != null) {
            return kept;
        }
        OptionalInt amount = parseWhole(column, text, least, most, true);
        if (amount.isEmpty()) {
            return Fact.notStated(id, column);
        }
        Fact<T> read = Fact.of(quantity.apply(amount.getAsInt()));
        known.put(text, read);
        return read;
    }

    private OptionalInt parseWhole(String column, String text, int least, int most, boolean may) {
        OptionalInt figure = Digits.whole(text);
        if (figure.isPresent() && figure.getAsInt() >= least && figure.getAsInt() <= most) {
            return figure;
        }
        String expected = Expectation.whole(column, least, most).text();
        row.fault(column, text, expected, advice(column, text, true, least, most, may));
        return OptionalInt.empty();
    }

    private OptionalDouble parseNumber(
            String column, String text, double least, double most, boolean may) {
        OptionalDouble figure = Digits.decimal(text);
        if (figure.isPresent() && figure.getAsDouble() >= least && figure.getAsDouble() <= most) {
            return figure;
        }
        String expected = Expectation.decimal(column, least, most).text();
        row.fault(column, text, expected, advice(column, text, false, least, most, may));
        return OptionalDouble.empty();
    }

    private String advice(
            String column, String text, boolean whole, double least, double most, boolean may) {
        String correct = Digits.isDecimal(text) ? "correct the figure" : "write digits alone";
        String first =
                FigureAdvice.meant(column, text, whole, least, most)
                        .map(figure -> "write " + figure)
                        .orElse(correct);
        return may ? first + ", or " + row.leaveOut() + " if unknown" : first;
    }

    private <E extends Enum<E> & Word> Optional<E> word(
            String column, String text, Class<E> words) {
        for (E constant : words.getEnumConstants()) {
            if (constant.word().equals(text)) {
                return Optional.of(constant);
            }
        }
        fault(column, text, Expectation.word(text, words));
        return Optional.empty();
    }

    private String required(String column, Supplier<Expectation> expectation) {
        String text = row.cell(column);
        if (text == null || !text.isEmpty()) {
            return text;
        }
        if (row.knows(column)) {
            fault(column, "", expectation.get());
        }
        return null;
    }

    private String printable(String column, String text) {
        if (!Quotation.allPrints(text)) {
            row.fault(
                    column,
                    text,
                    "a text in one line, without control characters",
                    "write it again without them");
        }
        return text;
    }

    private void fault(String column, String found, Expectation expectation) {
        row.fault(column, found, expectation.text(), expectation.advice());
    }

    private static boolean empty(String text) {
        return text == null || text.isEmpty();
    }
}
