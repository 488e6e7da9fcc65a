package rigbrief.quantity;

/**
 * A mass in whole grams.
 *
 * @param grams the amount, not negative
 */
public record Mass(int grams) implements Quantity, Comparable<Mass> {
    public Mass {
        if (grams < 0) {
            throw new IllegalArgumentException(
                    "found %d, expected no negative amount; check its source".formatted(grams));
        }
    }

    /** An amount of grams. */
    public static Mass g(int grams) {
        return new Mass(grams);
    }

    @Override
    public long amount() {
        return grams;
    }

    @Override
    public Unit unit() {
        return Unit.GRAM;
    }

    /** The sum of two amounts of the same kind; no other kind compiles. */
    public Mass plus(Mass other) {
        return new Mass(Math.addExact(grams, other.grams));
    }

    @Override
    public int compareTo(Mass other) {
        return Integer.compare(grams, other.grams);
    }

    @Override
    public String toString() {
        return unit().print(grams);
    }
}
