package rigbrief.part;

/**
 * A processor family a board supports from a firmware version on, written {@code family@1.20}.
 *
 * @param family the processors' family key
 * @param firmware first version that knows the family, digits and dots
 */
public record FamilySupport(String family, String firmware) {
    static FamilySupport read(String entry) throws Cells.Malformed {
        int at = entry.indexOf('@');
        if (at < 1) {
            throw new Cells.Malformed(
                    "a family and the first firmware that knows it",
                    "write the family, @, and a version such as 1.20");
        }
        return new FamilySupport(entry.substring(0, at), version(entry.substring(at + 1)));
    }

    static String version(String text) throws Cells.Malformed {
        if (!text.matches("[0-9]{1,6}([.][0-9]{1,6}){0,4}")) {
            throw new Cells.Malformed("a version of digits and dots", "write it as 1.20 or 2403");
        }
        return text;
    }

    /**
     * Whether a version is at least another, compared number by number; a missing number counts as
     * 0.
     */
    public static boolean atLeast(String version, String needed) {
        // Scanned by hand: splitting with a regular expression took most of the time of the family
        // rule.
        int i = 0;
        int j = 0;
        while (i < version.length() || j < needed.length()) {
            int have = 0;
            for (; i < version.length() && version.charAt(i) != '.'; i++) {
                have = have * 10 + version.charAt(i) - '0';
            }
            int need = 0;
            for (; j < needed.length() && needed.charAt(j) != '.'; j++) {
                need = need * 10 + needed.charAt(j) - '0';
            }
            if (have != need) {
                return have > need;
            }
            i++;
            j++;
        }
        return true;
    }
}
