package rigbrief.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One workload the client will run.
 *
 * @param use id of the workload
 * @param must what has to hold; empty when nothing has to
 * @param wish what would be nice; empty when nothing is wished beyond the must
 * @param weight weight of this workload among the workloads, 1 to 5
 * @param settings the settings at which it runs
 */
public record WorkloadNeed(
        String use, Optional<Target> must, Optional<Target> wish, int weight, Settings settings) {
    /**
     * What is asked of a workload.
     *
     * @param averageFps average frames per second; empty when not asked
     * @param lowFps 1 % low in frames per second; empty when not asked
     * @param finishWithinS seconds in which a task has to be done; empty when not asked
     */
    public record Target(
            OptionalDouble averageFps, OptionalDouble lowFps, OptionalDouble finishWithinS) {}

    /**
     * Settings of a frame-rate workload.
     *
     * @param preset name of a preset; empty for the workload's reference preset
     * @param rays name of a ray-tracing step; empty for off
     * @param upscaling name of an upscaling step; empty for none
     */
    public record Settings(
            Optional<String> preset, Optional<String> rays, Optional<String> upscaling) {}
}
