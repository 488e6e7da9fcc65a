package rigbrief.assess;

import java.util.List;
import rigbrief.brief.WorkloadNeed;
import rigbrief.catalogue.Workload;

/**
 * What the brief's workloads need of a machine, whatever the build.
 *
 * @param uses each workload line with its workload, in the brief's order
 * @param memoryGb main memory for the greediest workload in front, those that stay open beside it,
 *     and the system
 * @param vramGb graphics memory for the greediest workload in front, at its settings
 * @param vramWithoutUpscalingGb the same on a machine that can't upscale and draws every pixel
 * @param storageGb drive space for what is installed, with growth and 15 % free, or what the brief
 *     asks if that is more
 */
public record Demand(
        List<Use> uses,
        double memoryGb,
        double vramGb,
        double vramWithoutUpscalingGb,
        double storageGb) {
    public Demand {
        uses = List.copyOf(uses);
    }

    /**
     * A line of the brief with its workload.
     *
     * @param need the line
     * @param workload what it names
     * @param valued the line that its utility goes by; the same unless two briefs are compared
     */
    public record Use(WorkloadNeed need, Workload workload, WorkloadNeed valued) {
        /** A line whose utility goes by itself. */
        public Use(WorkloadNeed need, Workload workload) {
            this(need, workload, need);
        }
    }
}
