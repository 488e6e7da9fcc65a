package rigbrief.file.cell;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.part.Cells;
import rigbrief.part.Fact;
import rigbrief.part.Kind;
import rigbrief.part.Tally;
import rigbrief.part.Word;
import rigbrief.quantity.Current;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Power;

/** Cells without a row, which write down what they are asked for. */
public final class ColumnLister implements Cells {
    private final List<Column> columns = new ArrayList<>();

    /** The columns of a kind's file, in the order in which they are read. */
    public static List<Column> of(Kind kind) {
        ColumnLister lister = new ColumnLister();
        kind.read(lister);
        return lister.columns();
    }

    /** The columns asked for so far. */
    public List<Column> columns() {
        return Collections.unmodifiableList(columns);
    }

    @Override
    public String id(String column) {
        return required(column, Expectation.ID.text(), "");
    }

    @Override
    public String text(String column) {
        return required(column, Expectation.TEXT.text(), "");
    }

    @Override
    public String textOr(String column, String otherwise) {
        String empty = otherwise.isEmpty() ? "" : "; empty means " + otherwise;
        return optional(column, Expectation.TEXT.text() + empty, otherwise);
    }

    @Override
    public String gtin(String column) {
        return optional(column, "a GS1 item number of 8, 12, 13 or 14 digits", "");
    }

    @Override
    public <E extends Enum<E> & Word> E choice(String column, Class<E> words) {
        return required(column, Expectation.word(words).text(), words.getEnumConstants()[0]);
    }

    @Override
    public <E extends Enum<E> & Word> E choiceOr(String column, E otherwise) {
        String words = Expectation.word(otherwise.getDeclaringClass()).text();
        return optional(column, words + "; empty means " + otherwise.word(), otherwise);
    }

    @Override
    public <E extends Enum<E> & Word> Optional<E> maybe(String column, Class<E> words) {
        return optional(column, Expectation.word(words).text(), Optional.<E>empty());
    }

    @Override
    public boolean yes(String column) {
        return optional(column, "yes or no; empty means no", false);
    }

    @Override
    public int whole(String column, int least, int most) {
        return required(column, Expectation.whole(column, least, most).text(), least);
    }

    @Override
    public int wholeOr(String column, int least, int most, int otherwise) {
        String figure = Expectation.whole(column, least, most).text();
        return optional(column, figure + "; empty means " + otherwise, otherwise);
    }

    @Override
    public OptionalInt maybeWhole(String column, int least, int most) {
        return optional(column, Expectation.whole(column, least, most).text(), OptionalInt.empty());
    }

    @Override
    public double number(String column, double least, double most) {
        return required(column, Expectation.decimal(column, least, most).text(), least);
    }

    @Override
    public double numberOr(String column, double least, double most, double otherwise) {
        String figure = Expectation.decimal(column, least, most).text();
        return optional(column, figure + "; empty means " + Figures.plain(otherwise), otherwise);
    }

    @Override
    public Fact<Length> length(String column, int leastMm, int mostMm) {
        return fact(column, leastMm, mostMm);
    }

    @Override
    public Fact<Power> power(String column, int leastW, int mostW) {
        return fact(column, leastW, mostW);
    }

    @Override
    public Fact<Mass> mass(String column, int leastG, int mostG) {
        return fact(column, leastG, mostG);
    }

    @Override
    public Fact<Current> current(String column, int leastMa, int mostMa) {
        return fact(column, leastMa, mostMa);
    }

    @Override
    public <T> List<T> list(String column, Form<T> form) {
        return required(column, Entries.EXPECTED.text() + like(form), List.of());
    }

    @Override
    public <T> List<T> listOrNone(String column, Form<T> form) {
        String holds = "entries with ; between several; empty means none" + like(form);
        return optional(column, holds, List.of());
    }

    @Override
    public <T> Fact<List<T>> maybeList(String column, Form<T> form) {
        String holds = "entries with ; between several, or none" + like(form);
        return optional(column, holds, Fact.notStated("", column));
    }

    @Override
    public <E extends Enum<E> & Word> Fact<Tally<E>> tally(String column, Class<E> words) {
        String all = String.join(", ", Expectation.spelt(words));
        String holds = "words with their numbers, such as WORD:2, or none; the words are " + all;
        return optional(column, holds, Fact.notStated("", column));
    }

    @Override
    public <T> T parsed(String column, Form<T> form) {
        return required(column, Expectation.TEXT.text() + like(form), null);
    }

    private <T> Fact<T> fact(String column, int least, int most) {
        String figure = Expectation.whole(column, least, most).text();
        return optional(column, figure, Fact.notStated("", column));
    }

    /** What a form says of an entry that can't be read is what it says of every entry. */
    private static String like(Form<?> form) {
        try {
            form.read("?");
            return "";
        } catch (Malformed malformed) {
            return "; each is " + malformed.expected() + " (" + malformed.advice() + ")";
        }
    }

    private <T> T required(String column, String holds, T standIn) {
        columns.add(new Column(column, true, holds));
        return standIn;
    }

    private <T> T optional(String column, String holds, T standIn) {
        columns.add(new Column(column, false, holds));
        return standIn;
    }
}
