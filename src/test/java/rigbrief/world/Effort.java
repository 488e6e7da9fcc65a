package rigbrief.world;

/**
 * How many seeded cases a test goes through: a share in the usual build, all of them in the long
 * run, {@code -Drigbrief.effort=long}.
 */
public final class Effort {
    private Effort() {}

    /** Whether this is the long run. */
    public static boolean isLong() {
        return System.getProperty("rigbrief.effort", "").equals("long");
    }

    /** The number of cases to go through. */
    public static int cases(int usually, int inTheLongRun) {
        return isLong() ? inTheLongRun : usually;
    }
}
