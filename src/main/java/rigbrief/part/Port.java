package rigbrief.part;

/**
 * Screen outputs or inputs of one standard, written {@code dp1.4:3}; a bare {@code dp1.4} is one.
 *
 * @param standard DisplayPort or HDMI with its version, such as {@code dp1.4} or {@code hdmi2.1}
 * @param count how many there are
 */
public record Port(String standard, int count) {
    /** Reads one entry. */
    public static Port read(String entry) throws Cells.Malformed {
        if (!entry.matches("(dp(1[.][1-4]|2[.][01])|hdmi(1[.]4|2[.][01]))(:[1-9])?")) {
            throw new Cells.Malformed(
                    "an output standard and how many",
                    "write dp1.4:3 or hdmi2.1:1, with ; between several");
        }
        int colon = entry.indexOf(':');
        return colon < 0
                ? new Port(entry, 1)
                : new Port(entry.substring(0, colon), Integer.parseInt(entry.substring(colon + 1)));
    }
}
