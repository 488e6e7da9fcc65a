package rigbrief.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A workload that draws frames.
 *
 * <p>Work is per frame at the reference preset in the typical scene with rays off.
 *
 * @param id stable id
 * @param title title
 * @param memoryGb main memory in GB
 * @param vram graphics memory in GB at the reference preset
 * @param diskGb drive space in GB
 * @param fitted how well the demand is known
 * @param engineCapFps most frames per second the engine draws; empty for no cap
 * @param work work per frame
 * @param referencePreset the preset at which every factor is 1
 * @param presets factors by preset name
 * @param rays ray-tracing steps by name; "off" always there
 * @param upscaling upscaling ratio per axis by name, 0 to 1; empty when the title has none
 * @param scenes what is seen in play
 * @param settings single settings for fine tuning
 * @param shape how its frame times come together
 */
public record FrameRate(
        String id,
        String title,
        double memoryGb,
        PerPixel vram,
        double diskGb,
        Fitted fitted,
        OptionalDouble engineCapFps,
        FrameWork work,
        String referencePreset,
        Map<String, Factors> presets,
        Map<String, RayStep> rays,
        Map<String, Double> upscaling,
        List<Scene> scenes,
        List<Setting> settings,
        Shape shape)
        implements Workload {
    public FrameRate {
        presets = Collections.unmodifiableMap(new LinkedHashMap<>(presets));
        rays = Collections.unmodifiableMap(new LinkedHashMap<>(rays));
        upscaling = Collections.unmodifiableMap(new LinkedHashMap<>(upscaling));
        scenes = List.copyOf(scenes);
        settings = List.copyOf(settings);
    }

    @Override
    public double vramGb() {
        return vram.fixed();
    }

    /**
     * An amount that grows with the picture.
     *
     * @param fixed part that does not
     * @param perMegapixel part per million pixels drawn
     */
    public record PerPixel(double fixed, double perMegapixel) {
        /** The amount for a number of megapixels. */
        public double at(double megapixels) {
            return fixed + perMegapixel * megapixels;
        }
    }

    /**
     * Work of one frame.
     *
     * @param fixedMs time that no card shortens, in ms
     * @param gflop graphics compute in GFLOP
     * @param gbyte graphics memory traffic in GB
     * @param rays ray work; a card of ray rate 100 does 100 a second
     * @param serial processor work on one thread; a processor of rate_single 100 does 100 a second
     * @param parallel processor work on all threads; a processor of rate_all 100 does 100 a second
     * @param memoryExponent how processor time falls with the memory rate over 4800 MT/s
     */
    public record FrameWork(
            double fixedMs,
            PerPixel gflop,
            PerPixel gbyte,
            PerPixel rays,
            double serial,
            double parallel,
            double memoryExponent) {}

    /**
     * How a title's frame times come together, apart from how much work there is.
     *
     * @param overlap exponent between card and processor, 1 where one waits for the other, 40 where
     *     only the longer counts
     * @param spread standard deviation of the logarithm of frame times within a scene
     * @param overflowPenalty added frame time for each whole graphics memory too much, as a share
     */
    public record Shape(double overlap, double spread, double overflowPenalty) {
        /** The shape of a title of which nothing else is known. Common practice. */
        public static final Shape USUAL = new Shape(4, 0.12, 2);
    }

    /**
     * Factors on the reference work.
     *
     * @param graphics on compute and traffic
     * @param processor on processor work
     * @param vram on graphics memory
     */
    public record Factors(double graphics, double processor, double vram) {}

    /**
     * A ray-tracing step.
     *
     * @param rays factor on ray work, 0 for off
     * @param graphics factor on other graphics work (a rasterised stand-in no longer drawn, say)
     * @param processor factor on processor work
     */
    public record RayStep(double rays, double graphics, double processor) {}

    /**
     * A scene.
     *
     * @param name where in the title
     * @param share share of play time; all scenes together make 1
     * @param graphics factor on graphics work
     * @param processor factor on processor work
     */
    public record Scene(String name, double share, double graphics, double processor) {}

    /**
     * A single setting.
     *
     * @param name what the title calls it
     * @param visible how much of it is seen, 0 to 3
     * @param steps from least to most work
     * @param standsInForRays whether it draws without rays what rays draw better
     */
    public record Setting(String name, int visible, List<Step> steps, boolean standsInForRays) {
        public Setting {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A step of a setting.
     *
     * @param name what the title calls it
     * @param graphics share of all graphics work at the reference preset that this step costs
     * @param processor share of all processor work that it costs
     */
    public record Step(String name, double graphics, double processor) {}
}
