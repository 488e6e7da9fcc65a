package rigbrief.model.power;

/**
 * How a desktop computer is taken to spend the year when its typical energy is stated.
 *
 * <p>Source: ENERGY STAR for computers, version 6.1 (Commission Decision (EU) 2015/1402, table 3);
 * {@link #VERSION_8} is from memory.
 */
public enum DutyCycle {
    /** Conventional desktop. */
    CONVENTIONAL(45, 5, 15, 35),
    /** Base network capability. */
    BASE_CAPABILITY(40, 15, 12, 33),
    /** Wakes on request from the network. */
    REMOTE_WAKE(30, 28, 10, 32),
    /** Answers for its services and names while asleep. */
    SERVICE_DISCOVERY(25, 36, 8, 31),
    /** Full network capability. */
    FULL_CAPABILITY(20, 45, 5, 30),
    /** Desktops in version 8.0 of the programme. */
    VERSION_8(15, 45, 10, 30);

    private final int offPercent;
    private final int sleepPercent;
    private final int longIdlePercent;
    private final int shortIdlePercent;

    DutyCycle(int offPercent, int sleepPercent, int longIdlePercent, int shortIdlePercent) {
        this.offPercent = offPercent;
        this.sleepPercent = sleepPercent;
        this.longIdlePercent = longIdlePercent;
        this.shortIdlePercent = shortIdlePercent;
    }

    /**
     * Gives the time switched off.
     *
     * @return percent of the year
     */
    public int offPercent() {
        return offPercent;
    }

    /**
     * Gives the time asleep.
     *
     * @return percent of the year
     */
    public int sleepPercent() {
        return sleepPercent;
    }

    /**
     * Gives the time idle with the picture off.
     *
     * @return percent of the year
     */
    public int longIdlePercent() {
        return longIdlePercent;
    }

    /**
     * Gives the time idle with the picture on.
     *
     * @return percent of the year
     */
    public int shortIdlePercent() {
        return shortIdlePercent;
    }
}
