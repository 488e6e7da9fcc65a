package rigbrief.assess;

import java.util.Optional;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.RayStep;

/**
 * What a title's settings ask of a machine, over its reference work.
 *
 * @param megapixels millions of pixels computed
 * @param graphics factor on compute and traffic
 * @param processor factor on processor work
 * @param rays factor on ray work; 0 for rays off
 * @param vramGb graphics memory wanted, in GB
 */
public record FrameLoad(
        double megapixels, double graphics, double processor, double rays, double vramGb) {
    private static final RayStep OFF = new RayStep(0, 1, 1);

    /**
     * The load of settings as a brief names them.
     *
     * @param shownMegapixels millions of pixels shown
     * @param upscales whether the machine upscales; else it draws every pixel itself
     */
    public static FrameLoad of(
            FrameRate title, Settings settings, double shownMegapixels, boolean upscales) {
        Factors preset = preset(title, settings);
        RayStep rays = title.rays().getOrDefault(settings.rays().orElse("off"), OFF);
        double computed =
                upscales
                        ? megapixels(title, settings.upscaling(), shownMegapixels)
                        : shownMegapixels;
        return new FrameLoad(
                computed,
                preset.graphics() * rays.graphics(),
                preset.processor() * rays.processor(),
                rays.rays(),
                title.vram().at(computed) * preset.vram());
    }

    static Factors preset(FrameRate title, Settings settings) {
        return title.presets().get(settings.preset().orElse(title.referencePreset()));
    }

    /** Millions of pixels computed at an upscaling step; all that are shown without one. */
    static double megapixels(FrameRate title, Optional<String> upscaling, double shownMegapixels) {
        double ratio = upscaling.map(name -> title.upscaling().getOrDefault(name, 1.0)).orElse(1.0);
        return shownMegapixels * ratio * ratio;
    }
}
