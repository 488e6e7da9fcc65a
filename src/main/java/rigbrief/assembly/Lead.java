package rigbrief.assembly;

/** Sorts of connections in a machine, by the names a builder reads on the plugs. */
public enum Lead {
    BOARD_POWER("24-pin board power"),
    PROCESSOR_POWER_8("8-pin processor power"),
    PROCESSOR_POWER_4("4-pin processor power"),
    CARD_POWER_8("8-pin card power"),
    CARD_POWER_6("6-pin card power"),
    CARD_POWER_16("12V-2x6 card power"),
    DRIVE_POWER("SATA power"),
    PERIPHERAL_POWER("4-pin peripheral power"),
    DRIVE_DATA("SATA data"),
    COOLER_FAN("cooler fan"),
    PUMP("pump"),
    CASE_FAN("case fan"),
    FRONT_USB2("front USB 2"),
    FRONT_USB3("front USB 3"),
    FRONT_USB_C("front USB-C"),
    FRONT_AUDIO("front audio"),
    FRONT_SWITCHES("power button and lamps"),
    LIGHTING("lighting"),
    AERIAL("aerials"),
    SCREEN("screen"),
    MAINS("mains");

    private final String title;

    Lead(String title) {
        this.title = title;
    }

    /** What it is called. */
    public String title() {
        return title;
    }
}
