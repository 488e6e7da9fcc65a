package rigbrief.assess;

import rigbrief.model.power.CircuitLoad;

/**
 * What all machines of an order take of the mains, and how many of them one usual circuit bears.
 *
 * <p>A circuit has 16 A, and where the mains have less than 200 V 15 A, of which 80 % are for a
 * load of hours. A supply with power factor correction has a power factor of 0.99. Common practice;
 * whoever knows the building decides.
 *
 * @param wattsOfAll at work, at the mains, W
 * @param amperesOfAll their current, A
 * @param breakerA rating of one circuit, A
 * @param share share of it for a load of hours, 0 to 1
 * @param limitW what it bears for hours, W
 * @param machinesOnOne how many of the machines draw no more than that
 */
public record MainsShare(
        double wattsOfAll,
        double amperesOfAll,
        int breakerA,
        double share,
        double limitW,
        int machinesOnOne) {
    /** Real over apparent power of a supply that corrects it. Common practice. */
    public static final double POWER_FACTOR = 0.99;

    private static final int LOW_MAINS_BELOW_V = 200;
    private static final int LOW_MAINS_A = 15;
    private static final int HIGH_MAINS_A = 16;

    /** The share of as many machines as the brief wants. */
    public static MainsShare of(Assessment it) {
        int mainsV = it.brief().place().mainsV();
        boolean low = mainsV < LOW_MAINS_BELOW_V;
        int breakerA = low ? LOW_MAINS_A : HIGH_MAINS_A;
        double share = low ? CircuitLoad.NORTH_AMERICAN_SHARE : 1;
        double limitW = CircuitLoad.continuousW(breakerA, mainsV, share);
        double eachW = it.power().wallW();
        double allW = it.brief().quantity() * eachW;
        return new MainsShare(
                allW,
                CircuitLoad.mainsA(allW, mainsV, POWER_FACTOR),
                breakerA,
                share,
                limitW,
                (int) Math.floor(limitW / eachW));
    }
}
