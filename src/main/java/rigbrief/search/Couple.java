package rigbrief.search;

/**
 * What two open slots cost least and gain most together, by supplier set: over all that may fill
 * the first of them, and with each.
 */
interface Couple {
    /** Least price over all, by supplier set. */
    long least(int set);

    /** Most net gain over all, by worth and supplier set. */
    double net(int w, int set);

    /** Least price with one in the first slot, by supplier set. */
    long leastWith(int first, int set);

    /** Most net gain with one in the first slot, by worth and supplier set. */
    double netWith(int first, int w, int set);
}
