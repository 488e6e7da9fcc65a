package rigbrief.intake;

import rigbrief.brief.Brief;

/** Finds the least money for which a brief's musts can be met, whatever its ceiling. */
@FunctionalInterface
public interface LeastMoney {
    /** The least money. */
    Least of(Brief brief);
}
