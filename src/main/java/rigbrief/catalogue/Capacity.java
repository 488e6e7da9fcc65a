package rigbrief.catalogue;

/**
 * A workload that only has to fit.
 *
 * @param id stable id
 * @param title title
 * @param memoryGb memory in GB
 * @param vramGb graphics memory in GB
 * @param diskGb drive space in GB today
 * @param growthGbPerYear by how much that grows each year, in GB
 * @param fitted how well the demand is known
 */
public record Capacity(
        String id,
        String title,
        double memoryGb,
        double vramGb,
        double diskGb,
        double growthGbPerYear,
        Fitted fitted)
        implements Workload {}
