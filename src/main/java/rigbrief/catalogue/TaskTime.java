package rigbrief.catalogue;

/**
 * A workload that does a job and is done.
 *
 * @param id stable id
 * @param title title
 * @param job what one job is, in plain words
 * @param memoryGb working set in GB
 * @param vramGb graphics memory in GB
 * @param diskGb drive space in GB
 * @param fitted how well the demand is known
 * @param serial work on one thread; a processor of rate_single 100 does 100 a second
 * @param parallel work on all threads; a processor of rate_all 100 does 100 a second
 * @param gflop graphics compute in GFLOP
 * @param readGb read from the drive in GB
 * @param writeGb written to the drive in GB
 */
public record TaskTime(
        String id,
        String title,
        String job,
        double memoryGb,
        double vramGb,
        double diskGb,
        Fitted fitted,
        double serial,
        double parallel,
        double gflop,
        double readGb,
        double writeGb)
        implements Workload {}
