package rigbrief.intake;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.TaskTime;
import rigbrief.model.speed.FrameTime;
import rigbrief.model.speed.Roofline;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Processor;

/**
 * The time a job takes on a computer out of the middle of a catalogue: the median processor, card
 * and drive, with memory enough. A default to start from, not a promise.
 */
final class UsualTime {
    private static final double MEGABYTES_PER_GB = 1_000;

    private UsualTime() {}

    /** The time rounded up to a figure that a person would name, such as 45s or 3m. */
    static String of(TaskTime task, Catalogue catalogue) {
        double seconds = seconds(task, catalogue);
        return Double.isFinite(seconds) && seconds > 0 ? named(seconds) : Levels.ANY;
    }

    private static double seconds(TaskTime task, Catalogue catalogue) {
        double single =
                median(catalogue, Kind.PROCESSOR, Processor.class::cast, Processor::rateSingle);
        double all = median(catalogue, Kind.PROCESSOR, Processor.class::cast, Processor::rateAll);
        double tflops = median(catalogue, Kind.GRAPHICS, Graphics.class::cast, Graphics::tflops);
        double readMbs = median(catalogue, Kind.DRIVE, Drive.class::cast, Drive::readMbs);
        double writeMbs = median(catalogue, Kind.DRIVE, Drive.class::cast, Drive::writeMbs);
        return FrameTime.processorS(task.serial(), single, task.parallel(), all)
                + Roofline.workSeconds(task.gflop(), tflops * 1_000)
                + Roofline.workSeconds(task.readGb() * MEGABYTES_PER_GB, readMbs)
                + Roofline.workSeconds(task.writeGb() * MEGABYTES_PER_GB, writeMbs);
    }

    /** The upper median; 0 where the catalogue has no such part. */
    private static <T> double median(
            Catalogue catalogue, Kind kind, Function<Part, T> as, ToDoubleFunction<T> figure) {
        List<Double> figures =
                catalogue.parts(kind).stream()
                        .map(part -> figure.applyAsDouble(as.apply(part)))
                        .sorted()
                        .toList();
        return figures.isEmpty() ? 0 : figures.get(figures.size() / 2);
    }

    private static String named(double seconds) {
        if (seconds <= 10) {
            return (int) Math.ceil(seconds) + "s";
        }
        if (seconds <= 120) {
            return 5 * (int) Math.ceil(seconds / 5) + "s";
        }
        return (int) Math.ceil(seconds / 60) + "m";
    }
}
