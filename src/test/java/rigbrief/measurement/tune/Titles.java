package rigbrief.measurement.tune;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import rigbrief.assess.MachineRates;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Factors;
import rigbrief.catalogue.FrameRate.FrameWork;
import rigbrief.catalogue.FrameRate.PerPixel;
import rigbrief.catalogue.FrameRate.RayStep;
import rigbrief.catalogue.FrameRate.Scene;
import rigbrief.catalogue.FrameRate.Setting;
import rigbrief.catalogue.FrameRate.Step;
import rigbrief.catalogue.Workload.Fitted;

/** Invented titles for tuning; the machine computes 10 TFLOP/s, 400 GB/s, ray rate 100. */
final class Titles {
    static final double SHOWN_MEGAPIXELS = 3.7;

    private Titles() {}

    /** A machine of round rates. */
    static MachineRates machine() {
        return machine(100, true);
    }

    static MachineRates machine(double rayRate, boolean upscales) {
        return new MachineRates(
                new MachineRates.Picture(10, 400, rayRate, 12, upscales, 0, 1),
                100,
                600,
                4_800,
                32,
                3_000,
                2_000);
    }

    /** A step that costs shares of the card's and the processor's work. */
    static Step step(String name, double graphics, double processor) {
        return new Step(name, graphics, processor);
    }

    static Setting setting(String name, int visible, Step... steps) {
        return new Setting(name, visible, List.of(steps), false);
    }

    static Setting standIn(String name, int visible, Step... steps) {
        return new Setting(name, visible, List.of(steps), true);
    }

    /** A title of one preset without rays and upscaling. */
    static FrameRate plain(
            double gflop, double serial, List<Scene> scenes, List<Setting> settings) {
        return title(
                gflop,
                serial,
                0,
                Map.of("high", new Factors(1, 1, 1)),
                Map.of("off", new RayStep(0, 1, 1)),
                Map.of(),
                scenes,
                settings,
                OptionalDouble.empty());
    }

    static FrameRate title(
            double gflop,
            double serial,
            double rays,
            Map<String, Factors> presets,
            Map<String, RayStep> rayHow,
            Map<String, Double> upscaling,
            List<Scene> scenes,
            List<Setting> settings,
            OptionalDouble capFps) {
        return new FrameRate(
                "mill-race",
                "Mill Race",
                8,
                new PerPixel(3, 0.5),
                40,
                new Fitted(20, 0.03),
                capFps,
                new FrameWork(
                        0.2,
                        new PerPixel(gflop * 0.3, gflop * 0.7 / SHOWN_MEGAPIXELS),
                        new PerPixel(0.1, 0.2),
                        new PerPixel(rays * 0.3, rays * 0.7 / SHOWN_MEGAPIXELS),
                        serial,
                        serial * 2,
                        0.2),
                "high",
                presets,
                rayHow,
                upscaling,
                scenes,
                settings,
                FrameRate.Shape.USUAL);
    }

    /** A title of up to six settings, three presets, three steps of rays and of upscaling. */
    static FrameRate random(Random random) {
        Map<String, Factors> presets = new LinkedHashMap<>();
        presets.put("low", new Factors(0.5, 0.75, 0.6));
        presets.put("high", new Factors(1, 1, 1));
        if (random.nextBoolean()) {
            presets.put("ultra", new Factors(1.3, 1.1, 1.25));
        }
        Map<String, RayStep> rays = new LinkedHashMap<>();
        rays.put("off", new RayStep(0, 1, 1));
        if (random.nextBoolean()) {
            rays.put("low", new RayStep(0.4, 0.98, 1.05));
            rays.put("high", new RayStep(1, 0.9 + 0.2 * random.nextDouble(), 1.12));
        }
        Map<String, Double> upscaling = new LinkedHashMap<>();
        if (random.nextBoolean()) {
            upscaling.put("quality", 0.667);
            upscaling.put("performance", 0.5);
        }
        List<Setting> settings = new ArrayList<>();
        int count = 1 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            settings.add(randomSetting("setting " + i, random));
        }
        return title(
                40 + 160 * random.nextDouble(),
                0.1 + 0.6 * random.nextDouble(),
                0.5 * random.nextDouble(),
                presets,
                rays,
                upscaling,
                List.of(
                        new Scene("weir", 0.6, 1, 1),
                        new Scene("wheel house", 0.3, 1 + random.nextDouble(), 1.2),
                        new Scene("flood", 0.1, 1.4, 1 + random.nextDouble())),
                settings,
                OptionalDouble.empty());
    }

    private static Setting randomSetting(String name, Random random) {
        Step[] steps = new Step[1 + random.nextInt(4)];
        double graphics = 0;
        double processor = 0;
        for (int i = 0; i < steps.length; i++) {
            steps[i] = step("step " + i, graphics, processor);
            graphics += 0.03 * random.nextDouble();
            // Rounded, so that ties between settings occur.
            processor += random.nextInt(4) * 0.005;
        }
        return new Setting(name, random.nextInt(4), Arrays.asList(steps), random.nextInt(4) == 0);
    }
}
