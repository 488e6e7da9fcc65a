package rigbrief.assess;

import java.util.List;
import java.util.OptionalDouble;
import rigbrief.catalogue.FrameRate.Scene;

/**
 * What the prediction of a frame rate is made from: the work of one frame of the typical scene at
 * the brief's settings, and what the machine brings to it.
 *
 * @param megapixels millions of pixels computed
 * @param gflop graphics arithmetic in GFLOP
 * @param tflops what card or processor graphics compute, in TFLOP/s
 * @param gbyte graphics memory traffic in GB
 * @param bandwidthGbs graphics memory bandwidth in GB/s
 * @param rays ray work
 * @param rayRate ray work per second
 * @param fixedMs time that no card shortens, in ms
 * @param vramGb graphics memory wanted, in GB
 * @param vramThereGb graphics memory there, in GB
 * @param overflowPenalty added time for each whole graphics memory too much
 * @param serial processor work on one thread
 * @param parallel processor work on all threads
 * @param mts memory rate in MT/s, halved when one module feeds two channels
 * @param referenceMts memory rate at which processor work is stated, in MT/s
 * @param memoryExponent how processor time falls with the memory rate
 * @param scenes scenes with their shares and factors
 * @param capFps most frames per second the engine draws
 * @param overlap exponent between card and processor
 * @param sceneSigma spread of frame times within a scene, on the log scale
 */
public record FrameSteps(
        double megapixels,
        double gflop,
        double tflops,
        double gbyte,
        double bandwidthGbs,
        double rays,
        double rayRate,
        double fixedMs,
        double vramGb,
        double vramThereGb,
        double overflowPenalty,
        double serial,
        double parallel,
        double mts,
        double referenceMts,
        double memoryExponent,
        List<Scene> scenes,
        OptionalDouble capFps,
        double overlap,
        double sceneSigma) {
    public FrameSteps {
        scenes = List.copyOf(scenes);
    }
}
