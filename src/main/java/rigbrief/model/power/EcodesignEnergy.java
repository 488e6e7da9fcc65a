package rigbrief.model.power;

import rigbrief.model.Expect;

/**
 * The European Union's typical energy of a desktop computer, and the limit set for it.
 *
 * <p>Formula: 8760/1000 x (0.55 off + 0.05 sleep + 0.40 idle); limit = category + 1 kWh per GB
 * above the base memory + 25 per further drive + 15 each for a tuner and a sound card + an
 * allowance per graphics card class.
 *
 * <p>Source: Commission Regulation (EU) No 617/2013, Annex II (limits of 2014, adjustments, and the
 * sleep rule); the weights and the limits of 2016 are from memory.
 */
public final class EcodesignEnergy {
    private static final double OFF_SHARE = 0.55;
    private static final double SLEEP_SHARE = 0.05;
    private static final double IDLE_SHARE = 0.40;
    private static final double KILOHOURS_A_YEAR = 8.76;
    private static final double IDLE_FOR_SLEEP_W = 10;
    private static final int PER_DRIVE_KWH = 25;
    private static final int PER_EXTRA_CARD_KWH = 15;

    private static final int[] FIRST_CARD_KWH = {0, 34, 54, 69, 100, 133, 166, 225};
    private static final int[] FURTHER_CARD_KWH = {0, 20, 32, 41, 59, 78, 98, 133};

    private EcodesignEnergy() {}

    /** Desktop categories, with their limits and base memory. */
    public enum Category {
        /** Category A. */
        A(133, 94, 2),
        /** Category B. */
        B(158, 112, 2),
        /** Category C. */
        C(188, 134, 2),
        /** Category D. */
        D(211, 150, 4);

        private final int from2014Kwh;
        private final int from2016Kwh;
        private final int baseMemoryGb;

        Category(int from2014Kwh, int from2016Kwh, int baseMemoryGb) {
            this.from2014Kwh = from2014Kwh;
            this.from2016Kwh = from2016Kwh;
            this.baseMemoryGb = baseMemoryGb;
        }

        /**
         * Gives the limit from July 2014 before adjustments.
         *
         * @return kWh a year
         */
        public int from2014Kwh() {
            return from2014Kwh;
        }

        /**
         * Gives the limit from January 2016 before adjustments.
         *
         * @return kWh a year
         */
        public int from2016Kwh() {
            return from2016Kwh;
        }
    }

    /**
     * Gives the typical energy.
     *
     * @param offW mains power switched off, W
     * @param sleepW mains power asleep, W
     * @param idleW mains power idle, W
     * @return kWh a year
     * @throws IllegalArgumentException for a negative power
     */
    public static double kwh(double offW, double sleepW, double idleW) {
        return KILOHOURS_A_YEAR
                * (OFF_SHARE * Expect.notNegative(offW, "offW")
                        + SLEEP_SHARE * Expect.notNegative(sleepW, "sleepW")
                        + IDLE_SHARE * Expect.notNegative(idleW, "idleW"));
    }

    /**
     * Gives the power to use for sleep on a machine without a sleep mode of its own.
     *
     * @param idleW mains power idle, W
     * @return W: the idle power
     * @throws IllegalArgumentException above 10 W, where the regulation has no such substitute
     */
    public static double sleepWithoutModeW(double idleW) {
        if (Expect.notNegative(idleW, "idleW") > IDLE_FOR_SLEEP_W) {
            throw new IllegalArgumentException(
                    "idleW: found %s, expected at most 10 instead of sleep; state the sleep power"
                            .formatted(idleW));
        }
        return idleW;
    }

    /**
     * Gives what the equipment adds to a category's limit, graphics cards apart.
     *
     * @param category the desktop's category
     * @param memoryGb memory, GB
     * @param furtherDrives internal drives beyond the first
     * @param extraCards television tuner and sound card, counted
     * @return kWh a year
     */
    public static int equipmentKwh(
            Category category, int memoryGb, int furtherDrives, int extraCards) {
        Expect.notNegative(memoryGb, "memoryGb");
        Expect.notNegative(furtherDrives, "furtherDrives");
        Expect.notNegative(extraCards, "extraCards");
        return Math.max(0, memoryGb - category.baseMemoryGb)
                + PER_DRIVE_KWH * furtherDrives
                + PER_EXTRA_CARD_KWH * extraCards;
    }

    /**
     * Gives what a graphics card adds to the limit.
     *
     * @param cardClass 1 to 7 for G1 to G7, 0 for none
     * @param first true for the first card, false for each further one
     * @return kWh a year
     * @throws IllegalArgumentException for a class that does not exist
     */
    public static int graphicsKwh(int cardClass, boolean first) {
        if (cardClass < 0 || cardClass >= FIRST_CARD_KWH.length) {
            throw new IllegalArgumentException(
                    "cardClass: found %d, expected 0 to 7; write 3 for G3".formatted(cardClass));
        }
        return first ? FIRST_CARD_KWH[cardClass] : FURTHER_CARD_KWH[cardClass];
    }
}
