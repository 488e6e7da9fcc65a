package rigbrief.quantity;

/**
 * A number of things.
 *
 * @param pieces the amount, not negative
 */
public record Count(int pieces) implements Quantity, Comparable<Count> {
    public Count {
        if (pieces < 0) {
            throw new IllegalArgumentException(
                    "found %d, expected no negative amount; check its source".formatted(pieces));
        }
    }

    /** An amount of pieces. */
    public static Count of(int pieces) {
        return new Count(pieces);
    }

    @Override
    public long amount() {
        return pieces;
    }

    @Override
    public Unit unit() {
        return Unit.PIECE;
    }

    /** The sum of two amounts of the same kind; no other kind compiles. */
    public Count plus(Count other) {
        return new Count(Math.addExact(pieces, other.pieces));
    }

    @Override
    public int compareTo(Count other) {
        return Integer.compare(pieces, other.pieces);
    }

    @Override
    public String toString() {
        return unit().print(pieces);
    }
}
