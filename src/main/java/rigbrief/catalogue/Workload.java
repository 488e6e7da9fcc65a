package rigbrief.catalogue;

/** A game or an application with a known demand. */
public sealed interface Workload permits FrameRate, TaskTime, Capacity {
    /** Stable id. */
    String id();

    /** Its title, as people call it. */
    String title();

    /** Main memory in GB it needs for itself. */
    double memoryGb();

    /** Graphics memory in GB it needs at its least. */
    double vramGb();

    /** Space it takes on a drive, in GB. */
    double diskGb();

    /** How well its demand is known. */
    Fitted fitted();

    /**
     * How well a demand is known.
     *
     * @param n number of measurements behind it
     * @param sigma residual spread, standard deviation of the natural logarithm
     */
    record Fitted(int n, double sigma) {}
}
