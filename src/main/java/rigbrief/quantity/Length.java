package rigbrief.quantity;

/**
 * A length in whole millimetres, as data sheets state it.
 *
 * @param millimetres the amount, not negative
 */
public record Length(int millimetres) implements Quantity, Comparable<Length> {
    public Length {
        if (millimetres < 0) {
            throw new IllegalArgumentException(
                    "found %d, expected no negative amount; check its source"
                            .formatted(millimetres));
        }
    }

    /** An amount of millimetres. */
    public static Length mm(int millimetres) {
        return new Length(millimetres);
    }

    @Override
    public long amount() {
        return millimetres;
    }

    @Override
    public Unit unit() {
        return Unit.MILLIMETRE;
    }

    /** The sum of two amounts of the same kind; no other kind compiles. */
    public Length plus(Length other) {
        return new Length(Math.addExact(millimetres, other.millimetres));
    }

    @Override
    public int compareTo(Length other) {
        return Integer.compare(millimetres, other.millimetres);
    }

    @Override
    public String toString() {
        return unit().print(millimetres);
    }
}
