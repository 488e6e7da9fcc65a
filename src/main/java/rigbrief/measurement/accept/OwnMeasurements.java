package rigbrief.measurement.accept;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.assess.Assessment;
import rigbrief.assess.FrameModel;
import rigbrief.assess.MachineRates;
import rigbrief.assess.Sureness;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.Workload;
import rigbrief.measurement.Measurement;

/**
 * Puts measurements that name their own settings beside the lines of a sheet.
 *
 * @param it the build
 * @param speed its speed lines; trials are added
 * @param lines lines of the sheet; lines without a promise are added
 * @param measured figures by line; added to
 */
record OwnMeasurements(
        Assessment it, SpeedLines speed, List<SheetLine> lines, Map<String, Double> measured) {

    void add(List<Measurement> measurements) {
        for (Measurement measurement : measurements) {
            it.catalogue().workload(measurement.workload()).ifPresent(it -> add(measurement, it));
        }
    }

    private void add(Measurement measurement, Workload workload) {
        double megapixels =
                measurement
                        .resolution()
                        .map(size -> size.megapixels())
                        .orElse(FrameModel.shownMegapixels(it.brief()));
        Trial trial =
                planned(measurement, workload, megapixels)
                        .orElseGet(() -> added(measurement, workload, megapixels));
        put(trial.name() + Trial.AVERAGE, measurement.averageFps());
        put(trial.name() + Trial.LOW, measurement.lowFps());
        put(trial.name() + Trial.FINISH, measurement.seconds());
    }

    private void put(String id, OptionalDouble figure) {
        figure.ifPresent(value -> measured.put(id, value));
    }

    private Optional<Trial> planned(Measurement measurement, Workload workload, double megapixels) {
        return speed.trials().values().stream()
                .filter(trial -> trial.workload().id().equals(workload.id()))
                .filter(trial -> trial.shownMegapixels() == megapixels)
                .filter(
                        trial ->
                                spelt(trial.settings(), workload)
                                        .equals(spelt(measurement.settings(), workload)))
                .findFirst();
    }

    /** Settings with what is left out written in. */
    private static Settings spelt(Settings settings, Workload workload) {
        if (workload instanceof FrameRate title) {
            return new Settings(
                    Optional.of(settings.preset().orElse(title.referencePreset())),
                    Optional.of(settings.rays().orElse("off")),
                    Optional.of(settings.upscaling().orElse("off")));
        }
        return new Settings(Optional.empty(), Optional.empty(), Optional.empty());
    }

    private Trial added(Measurement measurement, Workload workload, double megapixels) {
        Trial trial =
                new Trial(
                        "line-%d.%s".formatted(measurement.line(), workload.id()),
                        workload,
                        measurement.settings(),
                        megapixels,
                        false);
        WorkloadNeed unasked =
                new WorkloadNeed(
                        workload.id(),
                        Optional.empty(),
                        Optional.empty(),
                        1,
                        measurement.settings());
        speed.add(
                unasked,
                trial,
                trial.on(MachineRates.of(it)),
                new Sureness(workload.fitted().sigma(), it.brief().confidencePercent()));
        int first = speed.lines().size() - trial.on(MachineRates.of(it)).size();
        speed.lines().subList(first, speed.lines().size()).stream()
                .filter(line -> wasMeasured(line.id(), measurement))
                .forEach(lines::add);
        return trial;
    }

    /** An added line that nobody filled in would only be left open. */
    private static boolean wasMeasured(String id, Measurement measurement) {
        if (id.endsWith(Trial.AVERAGE)) {
            return measurement.averageFps().isPresent();
        }
        return id.endsWith(Trial.LOW)
                ? measurement.lowFps().isPresent()
                : measurement.seconds().isPresent();
    }
}
