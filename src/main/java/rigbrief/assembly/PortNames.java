package rigbrief.assembly;

import java.util.Locale;

/** Screen ports as they are printed on boxes. */
public final class PortNames {
    private PortNames() {}

    /** {@code DisplayPort 1.4} for {@code dp1.4}, {@code HDMI 2.1} for {@code hdmi2.1}. */
    public static String of(String standard) {
        return kind(standard) + " " + standard.replaceFirst("^(dp|hdmi)", "");
    }

    /** The plug alone: {@code DisplayPort} or {@code HDMI}. */
    public static String kind(String standard) {
        return standard.toLowerCase(Locale.ROOT).startsWith("dp") ? "DisplayPort" : "HDMI";
    }
}
