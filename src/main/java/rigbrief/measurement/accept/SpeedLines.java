package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.assess.Assessment;
import rigbrief.assess.Demand.Use;
import rigbrief.assess.FrameModel;
import rigbrief.assess.MachineRates;
import rigbrief.assess.Sureness;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.measurement.accept.Sheet.Run;
import rigbrief.measurement.accept.SheetLine.Expected;
import rigbrief.measurement.accept.SheetLine.Promised;
import rigbrief.measurement.accept.SheetLine.Station;
import rigbrief.measurement.accept.SheetLine.Suspect;

/**
 * The lines about speed, one or two per workload of the brief.
 *
 * @param lines the lines
 * @param runs how each workload is run
 * @param trials what is run, by the name its lines begin with
 */
record SpeedLines(List<SheetLine> lines, List<Run> runs, Map<String, Trial> trials) {

    static SpeedLines of(Assessment it) {
        SpeedLines made =
                new SpeedLines(new ArrayList<>(), new ArrayList<>(), new LinkedHashMap<>());
        MachineRates machine = MachineRates.of(it);
        double megapixels = FrameModel.shownMegapixels(it.brief());
        for (Use use : it.demand().uses()) {
            Trial trial =
                    new Trial(
                            made.freeName(use.workload().id()),
                            use.workload(),
                            use.need().settings(),
                            megapixels,
                            true);
            Sureness sureness =
                    new Sureness(use.workload().fitted().sigma(), it.brief().confidencePercent());
            made.add(use.need(), trial, trial.on(machine), sureness);
        }
        return made;
    }

    /** A workload may stand in a brief twice, at other settings. */
    private String freeName(String id) {
        String name = "workload." + id;
        int number = 2;
        while (trials.containsKey(name)) {
            name = "workload." + id + "-" + number++;
        }
        return name;
    }

    /** Adds the lines of a trial. */
    void add(WorkloadNeed need, Trial trial, Map<String, Double> figures, Sureness sureness) {
        if (figures.isEmpty()) {
            return;
        }
        trials.put(trial.name(), trial);
        runs.add(run(trial));
        figures.forEach(
                (id, figure) -> {
                    String measure = id.substring(trial.name().length());
                    lines.add(line(trial, id, measure, figure, need, sureness));
                });
    }

    static SheetLine line(
            Trial trial,
            String id,
            String measure,
            double figure,
            WorkloadNeed need,
            Sureness sureness) {
        boolean time = measure.equals(Trial.FINISH);
        return new SheetLine(
                id,
                Station.SPEED,
                trial.title() + ", " + words(measure),
                how(trial, measure),
                time ? LineUnit.SECONDS : LineUnit.FPS,
                Optional.of(
                        new Expected(
                                figure,
                                sureness.low(figure),
                                sureness.high(figure),
                                Suspect.EITHER)),
                promise(need, measure));
    }

    private static String words(String measure) {
        return switch (measure) {
            case Trial.AVERAGE -> "average";
            case Trial.LOW -> "1 % low";
            default -> "time";
        };
    }

    private static String how(Trial trial, String measure) {
        return switch (measure) {
            case Trial.AVERAGE ->
                    "log every frame over the whole walk, cap and frame sync off: frames over time";
            case Trial.LOW -> "from the same log: rate at the 99th percentile of frame time";
            default -> ((TaskTime) trial.workload()).job() + ", by the clock, the second time";
        };
    }

    private static Run run(Trial trial) {
        if (trial.workload() instanceof FrameRate title) {
            return new Run(title.title(), trial.settingsInWords(), "", Optional.of(Walk.of(title)));
        }
        return new Run(
                trial.workload().title(),
                "",
                ((TaskTime) trial.workload()).job(),
                Optional.empty());
    }

    /** A must before a wish: of one figure only one can be kept or broken. */
    private static Optional<Promised> promise(WorkloadNeed need, String measure) {
        OptionalDouble must = figure(need.must(), measure);
        OptionalDouble asked = must.isPresent() ? must : figure(need.wish(), measure);
        return asked.isPresent()
                ? Optional.of(
                        new Promised(
                                asked.getAsDouble(),
                                measure.equals(Trial.FINISH),
                                must.isPresent()))
                : Optional.empty();
    }

    private static OptionalDouble figure(Optional<Target> target, String measure) {
        if (target.isEmpty()) {
            return OptionalDouble.empty();
        }
        return switch (measure) {
            case Trial.AVERAGE -> target.get().averageFps();
            case Trial.LOW -> target.get().lowFps();
            default -> target.get().finishWithinS();
        };
    }
}
