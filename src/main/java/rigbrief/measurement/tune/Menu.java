package rigbrief.measurement.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import rigbrief.assess.FrameLoad;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Setting;
import rigbrief.catalogue.FrameRate.Step;

/**
 * A title's menu: what can be chosen, lowest first, and the load of a choice.
 *
 * <p>Formulas: factor = what the preset costs beyond its single settings + the steps chosen. The
 * reference preset and those above it stand for every setting at its top; the lowest for every
 * setting at its lowest step; between them in proportion. With rays on, the step's own factor and
 * what standing in costs are not both taken off: the larger of the two is.
 *
 * <p>Common practice: which steps a preset stands for.
 */
final class Menu {
    private static final double MILLIONTHS = 1e6;

    private final FrameRate title;
    private final List<Map.Entry<String, Factors>> presets;
    private final List<Map.Entry<String, RayStep>> rays;
    private final List<Map.Entry<String, Double>> upscaling;

    /**
     * The choices that are not single settings.
     *
     * @param preset index of the preset
     * @param rays index of the step of rays
     * @param upscaling index of the step of upscaling
     */
    record Frame(int preset, int rays, int upscaling) {}

    Menu(FrameRate title) {
        this.title = title;
        this.presets = new ArrayList<>(title.presets().entrySet());
        this.presets.sort(Comparator.comparingDouble(entry -> entry.getValue().graphics()));
        this.rays = new ArrayList<>(title.rays().entrySet());
        if (rays.isEmpty()) {
            rays.add(Map.entry("off", new RayStep(0, 1, 1)));
        }
        this.rays.sort(Comparator.comparingDouble(entry -> entry.getValue().rays()));
        this.upscaling = new ArrayList<>(title.upscaling().entrySet());
        this.upscaling.removeIf(entry -> entry.getValue() >= 1);
        this.upscaling.sort(Map.Entry.comparingByValue());
        this.upscaling.add(Map.entry("off", 1.0));
    }

    FrameRate title() {
        return title;
    }

    List<String> presetNames() {
        return presets.stream().map(Map.Entry::getKey).toList();
    }

    List<String> rayNames() {
        return rays.stream().map(Map.Entry::getKey).toList();
    }

    List<String> upscalingNames() {
        return upscaling.stream().map(Map.Entry::getKey).toList();
    }

    double ratio(int upscalingIndex) {
        return upscaling.get(upscalingIndex).getValue();
    }

    Factors preset(int index) {
        return presets.get(index).getValue();
    }

    boolean raysOn(Frame frame) {
        return rays.get(frame.rays()).getValue().rays() > 0;
    }

    /** The visible loss of choices that are not single settings, in thousandths. */
    long loss(Frame frame) {
        return VisibleLoss.ofSteps(
                        VisibleLoss.SEEN_AT_ONCE,
                        presets.size() - 1 - frame.preset(),
                        presets.size())
                + VisibleLoss.ofSteps(
                        VisibleLoss.SEEN_AT_ONCE, rays.size() - 1 - frame.rays(), rays.size())
                + VisibleLoss.ofPixels(ratio(frame.upscaling()));
    }

    /** What a choice asks of a machine that shows so many megapixels. */
    FrameLoad load(Frame frame, Mix mix, double shownMegapixels) {
        Factors preset = preset(frame.preset());
        RayStep ray = rays.get(frame.rays()).getValue();
        double ratio = ratio(frame.upscaling());
        double megapixels = shownMegapixels * ratio * ratio;
        long graphics = beyond(frame.preset(), preset.graphics(), true) + mix.graphics();
        long processor = beyond(frame.preset(), preset.processor(), false) + mix.processor();
        return new FrameLoad(
                megapixels,
                underRays(frame, graphics, ray.graphics(), true),
                underRays(frame, processor, ray.processor(), false),
                ray.rays(),
                title.vram().at(megapixels) * preset.vram());
    }

    /** What a preset costs beyond its single settings, in millionths. */
    private long beyond(int preset, double factor, boolean graphics) {
        long rest = SettingsFront.millionths(factor);
        for (Setting setting : title.settings()) {
            rest -= share(setting.steps().get(stepOf(preset, setting)), graphics);
        }
        return Math.max(0, rest);
    }

    /** The step of a setting that a preset stands for. */
    int stepOf(int preset, Setting setting) {
        int top = setting.steps().size() - 1;
        int reference = presetNames().indexOf(title.referencePreset());
        return preset >= reference ? top : (2 * preset * top + reference) / (2 * reference);
    }

    /**
     * The mix leaves standing in at its lowest step, so its saving is put back and the larger of
     * the two savings taken off.
     */
    private double underRays(Frame frame, long work, double factor, boolean graphics) {
        if (!raysOn(frame)) {
            return work / MILLIONTHS;
        }
        long saved = standingIn(frame.preset(), graphics);
        double drawn = (work + saved) / MILLIONTHS;
        double takenOff = Math.max(saved / MILLIONTHS, drawn * Math.max(0, 1 - factor));
        return Math.max(0, drawn * Math.max(1, factor) - takenOff);
    }

    private long standingIn(int preset, boolean graphics) {
        long saved = 0;
        for (Setting setting : title.settings()) {
            if (setting.standsInForRays()) {
                saved += share(setting.steps().get(stepOf(preset, setting)), graphics);
                saved -= share(setting.steps().get(0), graphics);
            }
        }
        return saved;
    }

    private static long share(Step step, boolean graphics) {
        return SettingsFront.millionths(graphics ? step.graphics() : step.processor());
    }
}
