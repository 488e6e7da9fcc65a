package rigbrief.quantity;

/**
 * An electric current in whole milliamperes.
 *
 * @param milliamperes the amount, not negative
 */
public record Current(int milliamperes) implements Quantity, Comparable<Current> {
    public Current {
        if (milliamperes < 0) {
            throw new IllegalArgumentException(
                    "found %d, expected no negative amount; check its source"
                            .formatted(milliamperes));
        }
    }

    /** An amount of milliamperes. */
    public static Current ma(int milliamperes) {
        return new Current(milliamperes);
    }

    @Override
    public long amount() {
        return milliamperes;
    }

    @Override
    public Unit unit() {
        return Unit.MILLIAMPERE;
    }

    /** The sum of two amounts of the same kind; no other kind compiles. */
    public Current plus(Current other) {
        return new Current(Math.addExact(milliamperes, other.milliamperes));
    }

    @Override
    public int compareTo(Current other) {
        return Integer.compare(milliamperes, other.milliamperes);
    }

    @Override
    public String toString() {
        return unit().print(milliamperes);
    }
}
