package rigbrief.quantity;

/** A whole amount of one unit, as a maker states it. */
public sealed interface Quantity permits Length, Mass, Power, Current, Count {
    /** The amount, in {@link #unit()}. */
    long amount();

    /** The unit of {@link #amount()}. */
    Unit unit();
}
