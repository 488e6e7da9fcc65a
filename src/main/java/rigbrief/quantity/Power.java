package rigbrief.quantity;

/**
 * A power in whole watts.
 *
 * @param watts the amount, not negative
 */
public record Power(int watts) implements Quantity, Comparable<Power> {
    public Power {
        if (watts < 0) {
            throw new IllegalArgumentException(
                    "found %d, expected no negative amount; check its source".formatted(watts));
        }
    }

    /** An amount of watts. */
    public static Power w(int watts) {
        return new Power(watts);
    }

    @Override
    public long amount() {
        return watts;
    }

    @Override
    public Unit unit() {
        return Unit.WATT;
    }

    /** The sum of two amounts of the same kind; no other kind compiles. */
    public Power plus(Power other) {
        return new Power(Math.addExact(watts, other.watts));
    }

    @Override
    public int compareTo(Power other) {
        return Integer.compare(watts, other.watts);
    }

    @Override
    public String toString() {
        return unit().print(watts);
    }
}
