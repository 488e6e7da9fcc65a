package rigbrief.model.power;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * Energy from the mains in a year, and what it costs.
 *
 * <p>Formula: 8760/1000 x sum of power x share of the year; hours under load replace hours of short
 * idle; cost = energy x tariff, exact.
 *
 * <p>Source: ENERGY STAR key product criteria for computers, version 6.1 (typical energy
 * consumption). That work displaces short idle is common practice. All powers are mains powers.
 */
public final class YearlyEnergy {
    /** Hours under load that still leave a day its sleep and pauses. */
    public static final Range LOAD_HOURS = new Range("hours under load a year", 0, 5_000, "h");

    private static final int HOURS_A_YEAR = 8_760;
    private static final int DAYS_A_YEAR = 365;
    private static final int HOURS_A_DAY = 24;
    private static final double WATTS_PER_KILOWATT = 1_000;
    private static final double PERCENT = 100;
    private static final int WATT_HOUR_DIGITS = 3;

    private YearlyEnergy() {}

    /**
     * Gives the typical energy of a year without any work.
     *
     * @param cycle how the year is spent
     * @param offW mains power switched off, W
     * @param sleepW mains power asleep, W
     * @param longIdleW mains power idle, picture off, W
     * @param shortIdleW mains power idle, picture on, W
     * @return kWh a year
     * @throws IllegalArgumentException for a negative power
     */
    public static double kwh(
            DutyCycle cycle, double offW, double sleepW, double longIdleW, double shortIdleW) {
        double sumW =
                Expect.notNegative(offW, "offW") * cycle.offPercent()
                        + Expect.notNegative(sleepW, "sleepW") * cycle.sleepPercent()
                        + Expect.notNegative(longIdleW, "longIdleW") * cycle.longIdlePercent()
                        + Expect.notNegative(shortIdleW, "shortIdleW") * cycle.shortIdlePercent();
        return sumW / PERCENT * HOURS_A_YEAR / WATTS_PER_KILOWATT;
    }

    /**
     * Gives what hours of work add to a typical year.
     *
     * @param loadW mains power at work, W
     * @param shortIdleW mains power of the idling that the work replaces, W
     * @param hoursAYear hours of work a year, at most 8760
     * @return kWh a year; below 0 only if work draws less than idling
     * @throws IllegalArgumentException for a negative value or more hours than a year has
     */
    public static double addedByLoadKwh(double loadW, double shortIdleW, double hoursAYear) {
        Expect.notNegative(loadW, "loadW");
        Expect.notNegative(shortIdleW, "shortIdleW");
        atMost(Expect.notNegative(hoursAYear, "hoursAYear"), HOURS_A_YEAR, "hoursAYear");
        return (loadW - shortIdleW) * hoursAYear / WATTS_PER_KILOWATT;
    }

    /**
     * Gives the energy of a steady daily use.
     *
     * @param averageW mains power while in use, W
     * @param hoursADay hours of use a day, at most 24
     * @return kWh a year of 365 days
     * @throws IllegalArgumentException for a negative value or more hours than a day has
     */
    public static double ofDailyUseKwh(double averageW, double hoursADay) {
        Expect.notNegative(averageW, "averageW");
        atMost(Expect.notNegative(hoursADay, "hoursADay"), HOURS_A_DAY, "hoursADay");
        return averageW * hoursADay * DAYS_A_YEAR / WATTS_PER_KILOWATT;
    }

    /**
     * Gives the cost of an energy.
     *
     * @param kwh energy, kWh; counted to the whole watt hour
     * @param tariffPerKwh price of a kWh in any currency, 0 or more
     * @return the product, not rounded to the currency's minor unit
     * @throws IllegalArgumentException for a negative energy or tariff
     */
    public static BigDecimal cost(double kwh, BigDecimal tariffPerKwh) {
        Expect.notNegative(kwh, "kwh");
        if (tariffPerKwh.signum() < 0) {
            throw new IllegalArgumentException(
                    "tariffPerKwh: found %s, expected 0 or more; write the price of one kWh"
                            .formatted(tariffPerKwh));
        }
        BigDecimal energy =
                BigDecimal.valueOf(kwh).setScale(WATT_HOUR_DIGITS, RoundingMode.HALF_UP);
        return energy.multiply(tariffPerKwh);
    }

    private static void atMost(double hours, int most, String what) {
        if (hours > most) {
            throw new IllegalArgumentException(
                    "%s: found %s, expected at most %d; check the unit"
                            .formatted(what, hours, most));
        }
    }
}
