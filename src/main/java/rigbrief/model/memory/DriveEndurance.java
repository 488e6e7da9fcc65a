package rigbrief.model.memory;

import rigbrief.model.Expect;
import rigbrief.model.Range;

/**
 * How long a solid-state drive's rated writes last.
 *
 * <p>Formula: drive writes per day = TBW x 1000 / (365 x years x GB); years by writes = TBW x 1000
 * / (365 x GB a day), and never more than the warranty promises.
 *
 * <p>Source: JESD218 and JESD219 (what a rating in terabytes written means); a drive maker's page
 * on computing drive writes per day. The client class: 8 h a day at 40 °C.
 */
public final class DriveEndurance {
    /** Drive writes per day of client drives; above it, a drive of the enterprise class. */
    public static final Range CLIENT_DWPD = new Range("drive writes per day", 0, 1, "");

    private static final double GIGABYTES_PER_TERABYTE = 1_000;
    private static final double DAYS_A_YEAR = 365;

    private DriveEndurance() {}

    /**
     * Gives the drive writes per day of a rating.
     *
     * @param ratingTbw rated terabytes written, TB
     * @param warrantyYears years that the rating is spread over
     * @param capacityGb capacity, GB
     * @return whole-drive writes per day
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double writesPerDay(double ratingTbw, double warrantyYears, double capacityGb) {
        return gbPerDay(ratingTbw, warrantyYears) / Expect.positive(capacityGb, "capacityGb");
    }

    /**
     * Gives the rating that drive writes per day amount to.
     *
     * @param writesPerDay whole-drive writes per day
     * @param warrantyYears years that the rating is spread over
     * @param capacityGb capacity, GB
     * @return terabytes written, TB
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double ratingTbw(double writesPerDay, double warrantyYears, double capacityGb) {
        return Expect.positive(writesPerDay, "writesPerDay")
                * Expect.positive(capacityGb, "capacityGb")
                * DAYS_A_YEAR
                * Expect.positive(warrantyYears, "warrantyYears")
                / GIGABYTES_PER_TERABYTE;
    }

    /**
     * Gives the daily writes that use up a rating in the warranty.
     *
     * @param ratingTbw rated terabytes written, TB
     * @param warrantyYears years that the rating is spread over
     * @return GB a day
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double gbPerDay(double ratingTbw, double warrantyYears) {
        return Expect.positive(ratingTbw, "ratingTbw")
                * GIGABYTES_PER_TERABYTE
                / (DAYS_A_YEAR * Expect.positive(warrantyYears, "warrantyYears"));
    }

    /**
     * Gives the years after which writes alone use up a rating.
     *
     * @param ratingTbw rated terabytes written, TB
     * @param writtenGbPerDay host writes, GB a day
     * @return years
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double yearsByWrites(double ratingTbw, double writtenGbPerDay) {
        Expect.positive(ratingTbw, "ratingTbw");
        Expect.positive(writtenGbPerDay, "writtenGbPerDay");
        return ratingTbw * GIGABYTES_PER_TERABYTE / (writtenGbPerDay * DAYS_A_YEAR);
    }

    /**
     * Gives the years to promise: those by writes, but no more than the warranty.
     *
     * @param ratingTbw rated terabytes written, TB
     * @param writtenGbPerDay host writes, GB a day
     * @param warrantyYears the maker's warranty, years
     * @return years
     * @throws IllegalArgumentException for a value not above 0
     */
    public static double promisedYears(
            double ratingTbw, double writtenGbPerDay, double warrantyYears) {
        return Math.min(
                yearsByWrites(ratingTbw, writtenGbPerDay),
                Expect.positive(warrantyYears, "warrantyYears"));
    }
}
