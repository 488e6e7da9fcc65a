package rigbrief.assembly;

import java.util.Locale;
import rigbrief.wording.Texts;

/** Sorts of connections in a machine, by the names a builder reads on the plugs. */
public enum Lead {
    BOARD_POWER,
    PROCESSOR_POWER_8,
    PROCESSOR_POWER_4,
    CARD_POWER_8,
    CARD_POWER_6,
    CARD_POWER_16,
    DRIVE_POWER,
    PERIPHERAL_POWER,
    DRIVE_DATA,
    COOLER_FAN,
    PUMP,
    CASE_FAN,
    FRONT_USB2,
    FRONT_USB3,
    FRONT_USB_C,
    FRONT_AUDIO,
    FRONT_SWITCHES,
    LIGHTING,
    AERIAL,
    SCREEN,
    MAINS;

    /** What it is called, in a language. */
    public String title(Texts texts) {
        return texts.text("lead." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
