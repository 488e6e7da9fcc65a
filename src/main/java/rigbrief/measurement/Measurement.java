package rigbrief.measurement;

import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.part.Resolution;

/**
 * One workload measured once on one machine.
 *
 * @param file file it stands in, as the person who named it knows it
 * @param line line there, from 1
 * @param machine what the machine is called; empty where the file is about one build
 * @param rig its parts; empty where the file is about one build
 * @param workload id of a workload of the catalogue
 * @param settings settings of a frame-rate workload; what is empty was at its usual step
 * @param resolution picture size; empty for the usual one, or the build's screen
 * @param averageFps total frames over total time, 1/s; empty where not measured
 * @param lowFps rate at the 99th percentile of frame time, counted in frames, 1/s; empty where not
 *     measured
 * @param seconds time of a task, s; empty for a frame-rate workload
 */
public record Measurement(
        String file,
        int line,
        String machine,
        Optional<Rig> rig,
        String workload,
        Settings settings,
        Optional<Resolution> resolution,
        OptionalDouble averageFps,
        OptionalDouble lowFps,
        OptionalDouble seconds) {
    /** Where it stands, as faults say it. */
    public String place() {
        return file + ":" + line;
    }
}
