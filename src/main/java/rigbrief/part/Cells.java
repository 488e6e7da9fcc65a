package rigbrief.part;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.quantity.Current;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Power;

/**
 * The cells of one row, read by column name.
 *
 * <p>A cell that can't be read is reported by the implementation and answered with a harmless
 * stand-in, so that a row is read to its end and all its faults are found at once; the part made
 * from a faulty row is thrown away. Every column is asked for on every row, so that asking also
 * lists the columns.
 */
public interface Cells {
    /** The identity cell: lower-case letters, digits, dots and hyphens. */
    String id(String column);

    /** A text that must be there. */
    String text(String column);

    /** A text, or another where the cell is empty. */
    String textOr(String column, String otherwise);

    /** A GS1 item number of 8, 12, 13 or 14 digits whose check digit is right, or an empty text. */
    String gtin(String column);

    /** One of the words of an enum; must be there. */
    <E extends Enum<E> & Word> E choice(String column, Class<E> words);

    /**
     * One of the words of the enum that {@code otherwise} belongs to, or {@code otherwise} where
     * the cell is empty.
     */
    <E extends Enum<E> & Word> E choiceOr(String column, E otherwise);

    /** One of the words of an enum, or nothing where the cell is empty. */
    <E extends Enum<E> & Word> Optional<E> maybe(String column, Class<E> words);

    /** {@code yes} or {@code no}; empty is no. */
    boolean yes(String column);

    /** A whole number within bounds, both included; must be there. */
    int whole(String column, int least, int most);

    /** A whole number within bounds, or another where the cell is empty. */
    int wholeOr(String column, int least, int most, int otherwise);

    /** A whole number within bounds, or nothing where the cell is empty. */
    OptionalInt maybeWhole(String column, int least, int most);

    /** A decimal number within bounds, both included; must be there. */
    double number(String column, double least, double most);

    /** A decimal number within bounds, or another where the cell is empty. */
    double numberOr(String column, double least, double most, double otherwise);

    /** Whole millimetres within bounds, or an empty cell. */
    Fact<Length> length(String column, int leastMm, int mostMm);

    /** Whole watts within bounds, or an empty cell. */
    Fact<Power> power(String column, int leastW, int mostW);

    /** Whole grams within bounds, or an empty cell. */
    Fact<Mass> mass(String column, int leastG, int mostG);

    /** Whole milliamperes within bounds, or an empty cell. */
    Fact<Current> current(String column, int leastMa, int mostMa);

    /** Entries between semicolons, at least one, each read by a form. */
    <T> List<T> list(String column, Form<T> form);

    /** Entries between semicolons; none where the cell is empty or says {@code none}. */
    <T> List<T> listOrNone(String column, Form<T> form);

    /**
     * Entries between semicolons; {@code none} states that there are none, an empty cell states
     * nothing.
     */
    <T> Fact<List<T>> maybeList(String column, Form<T> form);

    /**
     * Counted words, {@code sata:6;4pin:2}; {@code none} states that there are none, an empty cell
     * states nothing.
     */
    <E extends Enum<E> & Word> Fact<Tally<E>> tally(String column, Class<E> words);

    /** A single text read by a form; must be there. */
    <T> T parsed(String column, Form<T> form);

    /** How one entry of a cell is read. */
    interface Form<T> {
        /** The entry's meaning, or {@link Malformed} with what was expected. */
        T read(String entry) throws Malformed;
    }

    /** What an entry should have looked like. */
    final class Malformed extends Exception {
        private static final long serialVersionUID = 1L;
        private final String advice;

        /** Says what was expected, and what to do. */
        public Malformed(String expected, String advice) {
            super(expected);
            this.advice = advice;
        }

        /** What was expected. */
        public String expected() {
            return getMessage();
        }

        /** What to do. */
        public String advice() {
            return advice;
        }
    }
}
