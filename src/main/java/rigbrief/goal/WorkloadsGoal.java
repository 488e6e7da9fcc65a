package rigbrief.goal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.brief.Brief;
import rigbrief.brief.Screen;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.part.Slot;

/**
 * How far above its must each workload gets.
 *
 * <p>Formula: for each workload u = ln(value / base) / ln(saturation / base), clipped to 0..1;
 * together the mean weighted by the brief's weights. Rates: base is the must, or 30 frames per
 * second; saturation is the wish, or the screen's refresh rate, or twice the base. Tasks: speed is
 * 1 / time; base is the must, or twice the wish; saturation is the wish, or half of the must.
 * Workloads that only have to fit, and tasks of which nothing is asked, do not count; with none
 * left the utility is full.
 *
 * <p>Common practice: steps in speed are felt as ratios, and 30 frames per second is where motion
 * begins.
 */
public final class WorkloadsGoal implements Goal {
    private static final GoalInfo INFO =
            new GoalInfo(
                    "workloads",
                    "Workloads run better than they must",
                    "for each workload, the logarithm of its predicted rate or speed, from what it must reach to what the wish or the screen can use; weighted");
    private static final Set<Slot> READS =
            Collections.unmodifiableSet(
                    EnumSet.of(Slot.PROCESSOR, Slot.BOARD, Slot.MEMORY, Slot.GRAPHICS, Slot.DRIVE));

    @Override
    public GoalInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** Frames per second where motion begins. Common practice. */
    private static final double LEAST_FPS = 30;

    @Override
    public int utility(Assessment it) {
        return Goal.tenThousandths(share(it.predictions(), it.valued()));
    }

    /** The utility of predictions alone, 0 to 1. */
    public static double share(List<Prediction> predictions, Brief brief) {
        double sum = 0;
        int weights = 0;
        for (Prediction prediction : predictions) {
            double one = one(prediction, brief);
            if (one >= 0) {
                sum += one * prediction.need().weight();
                weights += prediction.need().weight();
            }
        }
        return weights == 0 ? 1 : sum / weights;
    }

    /** Whether a prediction counts towards the utility. */
    public static boolean counts(Prediction prediction, Brief brief) {
        return one(prediction, brief) >= 0;
    }

    @Override
    public String because(Assessment it) {
        StringBuilder text = new StringBuilder();
        for (Prediction prediction : it.predictions()) {
            if (one(prediction, it.brief()) >= 0) {
                text.append(text.isEmpty() ? "" : ", ").append(prediction.workload().title());
                text.append(
                        prediction.workload() instanceof TaskTime
                                ? String.format(Locale.ROOT, " in %.0f s", prediction.seconds())
                                : String.format(
                                        Locale.ROOT, " at %.0f fps", prediction.averageFps()));
            }
        }
        return text.isEmpty() ? "no workload asks for speed" : text.toString();
    }

    /** Utility of one workload, or -1 when it does not count. */
    private static double one(Prediction prediction, Brief brief) {
        Scale scale = scaleOrNull(prediction, brief);
        return scale == null ? -1 : between(scale.value(), scale.base(), scale.best());
    }

    /**
     * What a workload's utility is measured by: rates in frames per second, or speeds in 1/s.
     *
     * @param value what is predicted
     * @param base where utility begins
     * @param best where it is full
     */
    public record Scale(double value, double base, double best) {}

    /** The scale of a workload; empty when it does not count. */
    public static Optional<Scale> scale(Prediction prediction, Brief brief) {
        return Optional.ofNullable(scaleOrNull(prediction, brief));
    }

    private static Scale scaleOrNull(Prediction prediction, Brief brief) {
        Optional<Target> must = prediction.need().must();
        Optional<Target> wish = prediction.need().wish();
        if (prediction.workload() instanceof FrameRate) {
            boolean byLow = asksOnlyForLow(must.or(() -> wish));
            double value = byLow ? prediction.lowFps() : prediction.averageFps();
            double base = rate(must, byLow).orElse(LEAST_FPS);
            double refresh = brief.screen().map(Screen::refreshHz).orElse(0);
            double best = rate(wish, byLow).orElse(refresh > base ? refresh : 2 * base);
            return new Scale(value, base, best);
        }
        if (prediction.workload() instanceof TaskTime) {
            OptionalDouble mustS = must.map(Target::finishWithinS).orElse(OptionalDouble.empty());
            OptionalDouble wishS = wish.map(Target::finishWithinS).orElse(OptionalDouble.empty());
            if (mustS.isEmpty() && wishS.isEmpty()) {
                return null;
            }
            double base = mustS.orElse(2 * wishS.orElse(1));
            double best = wishS.orElse(base / 2);
            return new Scale(1 / prediction.seconds(), 1 / base, 1 / best);
        }
        return null;
    }

    private static boolean asksOnlyForLow(Optional<Target> target) {
        return target.isPresent()
                && target.get().averageFps().isEmpty()
                && target.get().lowFps().isPresent();
    }

    private static OptionalDouble rate(Optional<Target> target, boolean byLow) {
        if (target.isEmpty()) {
            return OptionalDouble.empty();
        }
        return byLow ? target.get().lowFps() : target.get().averageFps();
    }

    private static double between(double value, double base, double best) {
        if (best <= base) {
            return value >= base ? 1 : 0;
        }
        return value <= base ? 0 : Math.min(1, Math.log(value / base) / Math.log(best / base));
    }
}
