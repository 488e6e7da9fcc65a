package rigbrief.model.power;

import rigbrief.model.Expect;

/**
 * Power of the parts whose data sheets seldom state it.
 *
 * <p>Common practice: every number here is a usual value of desktop parts of the DDR4 and DDR5
 * years, none comes from a standard. A data sheet's figure goes before it.
 */
public final class TypicalDraw {
    /** A board at work, its regulators' losses and network included, W. Common practice. */
    public static final double BOARD_LOAD_W = 30;

    /** A board at rest, W. Common practice. */
    public static final double BOARD_IDLE_W = 14;

    /** A memory module at work, W. Common practice. */
    public static final double MODULE_LOAD_W = 4;

    /** A memory module at rest, W. Common practice. */
    public static final double MODULE_IDLE_W = 1.5;

    /** A solid-state drive in an M.2 place at work, W. Common practice. */
    public static final double M2_DRIVE_LOAD_W = 7;

    /** A solid-state drive in an M.2 place at rest, W. Common practice. */
    public static final double M2_DRIVE_IDLE_W = 0.6;

    /** A solid-state drive on SATA at work, W. Common practice. */
    public static final double SATA_DRIVE_LOAD_W = 3;

    /** A solid-state drive on SATA at rest, W. Common practice. */
    public static final double SATA_DRIVE_IDLE_W = 0.4;

    /** A turning 3.5-inch disk at work, W. Common practice. */
    public static final double DISK_LOAD_W = 7;

    /** A turning 3.5-inch disk at rest, W. Common practice. */
    public static final double DISK_IDLE_W = 4;

    /** A case fan at full speed, W. Common practice. */
    public static final double FAN_FULL_W = 2;

    /** A liquid cooler's pump, which always runs, W. Common practice. */
    public static final double PUMP_W = 5;

    /** A wireless adapter, W. Common practice. */
    public static final double WIRELESS_W = 2;

    /** What is plugged into the case's front, W. Common practice. */
    public static final double ATTACHED_W = 5;

    /** The whole machine switched off, at the mains, W. Common practice. */
    public static final double OFF_MAINS_W = 0.5;

    /** The whole machine asleep, at the mains, W. Common practice. */
    public static final double SLEEP_MAINS_W = 2;

    private static final double PROCESSOR_IDLE_W = 6;
    private static final double PROCESSOR_IDLE_SHARE = 0.08;
    private static final double CARD_IDLE_W = 5;
    private static final double CARD_IDLE_SHARE = 0.05;

    private TypicalDraw() {}

    /**
     * Gives a processor's power at rest: 6 W and 8 % of its sustained power. Common practice.
     *
     * @param sustainedW sustained power, W
     * @return W, never above the sustained power
     * @throws IllegalArgumentException for a negative power
     */
    public static double processorIdleW(double sustainedW) {
        Expect.notNegative(sustainedW, "sustainedW");
        return Math.min(sustainedW, PROCESSOR_IDLE_W + PROCESSOR_IDLE_SHARE * sustainedW);
    }

    /**
     * Gives a graphics card's power at rest: 5 W and 5 % of its board power. Common practice.
     *
     * @param boardPowerW board power, W
     * @return W, never above the board power
     * @throws IllegalArgumentException for a negative power
     */
    public static double cardIdleW(double boardPowerW) {
        Expect.notNegative(boardPowerW, "boardPowerW");
        return Math.min(boardPowerW, CARD_IDLE_W + CARD_IDLE_SHARE * boardPowerW);
    }
}
