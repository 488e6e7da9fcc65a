package rigbrief.part;

import java.util.function.Function;

/**
 * A figure that a data sheet may leave out. Not stated is not zero: a rule that needs the figure
 * says which cell is empty.
 */
public sealed interface Fact<T> {
    /** A stated figure. */
    record Stated<T>(T value) implements Fact<T> {}

    /**
     * An empty cell.
     *
     * @param part id of the part whose cell is empty
     * @param column header of the empty cell
     */
    record NotStated<T>(String part, String column) implements Fact<T> {}

    /** A stated figure. */
    static <T> Fact<T> of(T value) {
        return new Stated<>(value);
    }

    /** An empty cell of a part. */
    static <T> Fact<T> notStated(String part, String column) {
        return new NotStated<>(part, column);
    }

    /** Whether the figure is stated. */
    default boolean stated() {
        return this instanceof Stated;
    }

    /** The figure, or the given one where the cell is empty. */
    default T or(T otherwise) {
        return this instanceof Stated<T> fact ? fact.value() : otherwise;
    }

    /** The figure turned into another, or the same empty cell. */
    default <R> Fact<R> map(Function<? super T, ? extends R> turn) {
        if (this instanceof Stated<T> fact) {
            return new Stated<>(turn.apply(fact.value()));
        }
        NotStated<T> empty = (NotStated<T>) this;
        return new NotStated<>(empty.part(), empty.column());
    }
}
