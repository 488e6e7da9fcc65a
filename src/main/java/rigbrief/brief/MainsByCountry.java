package rigbrief.brief;

import java.util.List;

/**
 * Which of the two mains voltages a supply is planned for, by country.
 *
 * <p>Source: World Plugs, International Electrotechnical Commission (list of plug types and
 * potentials by location), from memory. Its low-voltage locations, 100 V to 127 V, are listed here;
 * everywhere else the mains has 220 V to 240 V. Where both are in use the lower one is taken, at
 * which a machine draws more current.
 */
public final class MainsByCountry {
    private static final int LOW_V = 115;
    private static final int HIGH_V = 230;

    /** ISO 3166-1 alpha-2 codes. */
    private static final List<String> LOW =
            List.of(
                    "AI", "AS", "AW", "BB", "BM", "BQ", "BR", "BS", "BZ", "CA", "CO", "CR", "CU",
                    "CW", "DO", "EC", "GT", "GU", "HN", "HT", "JM", "JP", "KY", "LR", "MP", "MX",
                    "NI", "PA", "PR", "SR", "SV", "SX", "TC", "TT", "TW", "US", "VE", "VG", "VI");

    private MainsByCountry() {}

    /** 115 or 230, in V; an unknown or empty country has 230 V. */
    public static int volts(String country) {
        return LOW.contains(country) ? LOW_V : HIGH_V;
    }
}
