package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.FrameLoad;
import rigbrief.assess.FrameModel;
import rigbrief.assess.MachineRates;
import rigbrief.assess.TaskModel;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.model.speed.SceneMix;

/**
 * A workload run at some settings, to be timed.
 *
 * @param name what its lines begin with
 * @param workload the workload
 * @param settings its settings
 * @param shownMegapixels millions of pixels shown
 * @param ofSheet whether the brief asks for it so; else somebody ran it at settings of his own
 */
record Trial(
        String name,
        Workload workload,
        Settings settings,
        double shownMegapixels,
        boolean ofSheet) {
    static final String AVERAGE = ".average";
    static final String LOW = ".low";
    static final String FINISH = ".finish-within";

    /** Beyond this a task is never done. */
    private static final double NEVER_S = 1e9;

    /** What next to nothing is, where a logarithm is taken: a frame in a thousand seconds. */
    private static final double NEXT_TO_NOTHING_FPS = 1e-3;

    /** What a machine makes of it, by line id; nothing for a workload that only has to fit. */
    Map<String, Double> on(MachineRates machine) {
        Map<String, Double> figures = new LinkedHashMap<>();
        if (workload instanceof FrameRate title) {
            SceneMix.Rates rates =
                    FrameModel.rates(
                            FrameModel.scenes(title, load(title, machine), machine),
                            title.engineCapFps().orElse(Double.POSITIVE_INFINITY),
                            title.shape().spread());
            figures.put(name + AVERAGE, Math.max(NEXT_TO_NOTHING_FPS, rates.averagePerS()));
            figures.put(name + LOW, Math.max(NEXT_TO_NOTHING_FPS, rates.lowPerS()));
        } else if (workload instanceof TaskTime task) {
            double seconds = TaskModel.stages(task, machine).seconds();
            figures.put(name + FINISH, Math.min(NEVER_S, seconds));
        }
        return figures;
    }

    /** Title, with the settings where they are not the sheet's. */
    String title() {
        String words = settingsInWords();
        return ofSheet || words.isEmpty()
                ? workload.title()
                : "%s (%s)".formatted(workload.title(), words);
    }

    /** Settings of a title that draws frames; empty for anything else. */
    String settingsInWords() {
        if (!(workload instanceof FrameRate title)) {
            return "";
        }
        List<String> words = new ArrayList<>();
        words.add("preset " + settings.preset().orElse(title.referencePreset()));
        if (title.rays().size() > 1) {
            words.add("rays " + settings.rays().orElse("off"));
        }
        if (!title.upscaling().isEmpty()) {
            words.add("upscaling " + settings.upscaling().orElse("off"));
        }
        return String.join(", ", words);
    }

    private FrameLoad load(FrameRate title, MachineRates machine) {
        return FrameLoad.of(title, settings, shownMegapixels, machine.picture().upscales());
    }
}
