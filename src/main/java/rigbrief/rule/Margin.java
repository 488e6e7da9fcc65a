package rigbrief.rule;

import rigbrief.quantity.Unit;

/**
 * What there is against what is needed, as fixed-point amounts of a unit.
 *
 * @param have what the build offers
 * @param need what it needs
 * @param unit unit of both
 */
public record Margin(long have, long need, Unit unit) {
    /** What is left over; negative when the rule is broken. */
    public long spare() {
        return have - need;
    }
}
