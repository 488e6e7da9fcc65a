package rigbrief.assess;

/**
 * Electrical load of a build.
 *
 * @param sustainedW all parts at their sustained figures, on the supply's output side
 * @param peakW the same with the card at its 1 ms peak
 * @param loadW output side under the brief's heaviest workload
 * @param idleW output side at idle
 * @param wallW at the wall under the brief's heaviest workload
 * @param wallIdleW at the wall at idle
 * @param supplyShare sustained load over the rating, 0 to 1 and beyond
 * @param kwhPerYear energy a year for the brief's hours of use
 */
public record Power(
        double sustainedW,
        double peakW,
        double loadW,
        double idleW,
        double wallW,
        double wallIdleW,
        double supplyShare,
        double kwhPerYear) {}
