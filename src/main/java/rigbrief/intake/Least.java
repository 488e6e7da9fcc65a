package rigbrief.intake;

import rigbrief.quantity.Money;

/** The least money for which a brief's musts can be met. */
public sealed interface Least {
    /** An amount proven to be the least. */
    record Known(Money total) implements Least {}

    /**
     * A build is known, and it is not proven that none is cheaper.
     *
     * @param low no build costs less
     * @param high a build that costs this is known
     */
    record Between(Money low, Money high) implements Least {}

    /** No build meets the musts. */
    record Impossible() implements Least {}

    /** Not found out within the steps allowed. */
    record Unknown() implements Least {}
}
