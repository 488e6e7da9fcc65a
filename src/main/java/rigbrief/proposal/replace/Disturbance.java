package rigbrief.proposal.replace;

import java.math.BigDecimal;
import java.util.Currency;
import rigbrief.build.BuildLine;
import rigbrief.build.PartState;
import rigbrief.build.Units;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/**
 * What it costs to give up a sound part that is here already: all assumptions in one place.
 *
 * <p>Common practice, every one of them. Faulty goods, and orders that the supplier can't fill, are
 * refunded in full; an order that has not left can be cancelled for nothing; sound goods go back
 * less a restocking share, at the builder's own postage; taking a fitted part out again takes time.
 *
 * @param restockingPercent part of the price that a supplier keeps of sound goods, 0 to 100
 * @param labourPerHour worth of an hour at the bench, which is weighed but not charged
 */
public record Disturbance(int restockingPercent, Money labourPerHour) {
    private static final int USUAL_RESTOCKING_PERCENT = 15;
    private static final long USUAL_LABOUR = 40;
    private static final int PACKING_MINUTES = 10;

    public Disturbance {
        if (restockingPercent < 0 || restockingPercent > 100) {
            throw new IllegalArgumentException(
                    "found a restocking share of %d %%, expected 0 to 100; give a percentage"
                            .formatted(restockingPercent));
        }
    }

    /** 15 % restocking, 40 an hour; common practice. */
    public static Disturbance usual(Currency currency) {
        return new Disturbance(
                USUAL_RESTOCKING_PERCENT,
                Money.zero(currency).plus(new Money(BigDecimal.valueOf(USUAL_LABOUR), currency)));
    }

    /** Minutes to take a part out and fit another, with what stands in the way of it. */
    public static int refitMinutes(Slot slot) {
        return switch (slot) {
            case CASE -> 90;
            case BOARD -> 75;
            case SUPPLY, PROCESSOR -> 30;
            case COOLER, FANS -> 20;
            case DRIVE, SYSTEM -> 45;
            case SECOND_DRIVE, GRAPHICS, WIRELESS, CABLES -> 15;
            case MEMORY, BRACE, DISPLAY -> 10;
        };
    }

    /**
     * What is lost when sound units of a line go back, in minor units.
     *
     * @param paidMinor what was paid for those that are here
     * @param postageMinor what it costs to send them
     */
    long lossMinor(long paidMinor, long postageMinor) {
        long kept = (paidMinor * restockingPercent + 50) / 100;
        return Math.min(paidMinor, kept + postageMinor);
    }

    /** Minutes of work that giving up the sound units of a line makes. */
    static int minutes(BuildLine line, int machines) {
        int minutes = 0;
        for (Units units : line.units(machines)) {
            if (units.state().here()) {
                boolean fitted = units.state() == PartState.FITTED;
                minutes +=
                        units.count()
                                * (PACKING_MINUTES + (fitted ? refitMinutes(line.slot()) : 0));
            }
        }
        return minutes;
    }

    /** Minutes of work weighed in money, in minor units. */
    long workMinor(int minutes) {
        return labourPerHour.minorUnits() * minutes / 60;
    }
}
