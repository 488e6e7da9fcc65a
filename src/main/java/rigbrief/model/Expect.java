package rigbrief.model;

/**
 * Refuses inputs that no formula can take: every message states the value found, what was expected
 * and what to do.
 *
 * <p>The checks return the value, so that a constructor or a formula can check in passing. None
 * allocates unless it refuses.
 */
public final class Expect {
    private Expect() {}

    /**
     * Passes on any finite number.
     *
     * @param value what was given
     * @param what its name with the unit, for example {@code "roomC"}
     * @return the value
     * @throws IllegalArgumentException for infinities and for what is not a number
     */
    public static double finite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw refused(what, value, "a finite number");
        }
        return value;
    }

    /**
     * Passes on a finite number of 0 or more.
     *
     * @param value what was given
     * @param what its name with the unit
     * @return the value
     * @throws IllegalArgumentException for anything else
     */
    public static double notNegative(double value, String what) {
        if (!(value >= 0 && value <= Double.MAX_VALUE)) {
            throw refused(what, value, "a finite number of 0 or more");
        }
        return value;
    }

    /**
     * Passes on a finite number above 0.
     *
     * @param value what was given
     * @param what its name with the unit
     * @return the value
     * @throws IllegalArgumentException for anything else
     */
    public static double positive(double value, String what) {
        if (!(value > 0 && value <= Double.MAX_VALUE)) {
            throw refused(what, value, "a finite number above 0");
        }
        return value;
    }

    /**
     * Passes on a share of a whole.
     *
     * @param value what was given
     * @param what its name
     * @return the value, 0 to 1
     * @throws IllegalArgumentException for anything else
     */
    public static double share(double value, String what) {
        if (!(value >= 0 && value <= 1)) {
            throw refused(what, value, "a share from 0 to 1");
        }
        return value;
    }

    /**
     * Passes on a level in decibels; minus infinity is a source that makes no sound at all.
     *
     * @param value what was given
     * @param what its name
     * @return the value
     * @throws IllegalArgumentException for plus infinity and for what is not a number
     */
    public static double level(double value, String what) {
        if (!(value <= Double.MAX_VALUE)) {
            throw refused(what, value, "a level in decibels or minus infinity for silence");
        }
        return value;
    }

    /**
     * Passes on a whole number of 1 or more.
     *
     * @param value what was given
     * @param what its name
     * @return the value
     * @throws IllegalArgumentException for 0 and below
     */
    public static int atLeastOne(int value, String what) {
        if (value < 1) {
            throw refused(what, value, "a whole number of 1 or more");
        }
        return value;
    }

    private static IllegalArgumentException refused(String what, Object found, String expected) {
        return new IllegalArgumentException(
                "%s: found %s, expected %s; check its sign and the unit its name ends with"
                        .formatted(what, found, expected));
    }
}
