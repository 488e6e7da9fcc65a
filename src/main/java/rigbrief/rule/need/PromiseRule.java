package rigbrief.rule.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.part.Board;
import rigbrief.part.Drive;
import rigbrief.part.Memory;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Margin;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;

/**
 * Every must of every workload holds with the brief's confidence.
 *
 * <p>The excess is the sum of what is missed, in hundredths of a frame per second or of a second.
 * The margin is that of the tightest must, in its own unit.
 */
public final class PromiseRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "promise",
                    "Every workload runs as it must",
                    Unit.CENTIFRAME,
                    Source.brief("workloads, must; confidence"));
    private static final Set<Slot> READS =
            Reads.of(Slot.PROCESSOR, Slot.BOARD, Slot.MEMORY, Slot.GRAPHICS, Slot.DRIVE);

    private static final long RELATIVE = 1_000_000;

    /**
     * A task that never ends misses by no more than this many hundredths, so that sums stay sums.
     */
    private static final long MOST_MISSED = 1_000_000_000;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** As {@link rigbrief.assess.SpeedModel.Rig} has it. */
    @Override
    public Object asks(Slot slot, Part part) {
        if (part instanceof Board board) {
            return board.memoryMaxMts();
        } else if (part instanceof Memory memory) {
            return List.of(memory.type(), memory.mts(), memory.modules(), memory.kitGb());
        } else if (part instanceof Drive drive) {
            return List.of(drive.readMbs(), drive.writeMbs());
        }
        return part.id();
    }

    @Override
    public Finding check(Assessment it) {
        List<Prediction> predictions = it.predictions();
        long excess = 0;
        Promise tightest = null;
        for (int i = 0; i < predictions.size(); i++) {
            for (Promise promise : predictions.get(i).promises()) {
                if (promise.must()) {
                    excess += Math.min(MOST_MISSED, promise.missedBy());
                    tightest = tighter(promise, tightest) ? promise : tightest;
                }
            }
        }
        Optional<Margin> margin = Optional.ofNullable(tightest).map(PromiseRule::margin);
        return excess == 0
                ? new Finding.Met(margin)
                : new Finding.Breach(excess, () -> words(it), margin);
    }

    /** The must with the least to spare for what it asks; empty when there is none. */
    public static Optional<Promise> tightest(Assessment it) {
        Promise tightest = null;
        for (Prediction prediction : it.predictions()) {
            for (Promise promise : prediction.promises()) {
                boolean tighter = promise.must() && tighter(promise, tightest);
                tightest = tighter ? promise : tightest;
            }
        }
        return Optional.ofNullable(tightest);
    }

    private static boolean tighter(Promise one, Promise other) {
        return other == null || relative(margin(one)) < relative(margin(other));
    }

    private static long relative(Margin margin) {
        long spare = Math.max(-MOST_MISSED, margin.spare());
        return spare * RELATIVE / Math.max(1, margin.need());
    }

    /** For a time, what there is is the time asked for, and what is needed is the time it takes. */
    private static Margin margin(Promise promise) {
        long sure = Math.min(MOST_MISSED, Math.round(promise.sure() * 100));
        long asked = Math.round(promise.required() * 100);
        return promise.measure() == Promise.Measure.FINISH
                ? new Margin(asked, sure, promise.measure().unit())
                : new Margin(sure, asked, promise.measure().unit());
    }

    private static Phrase words(Assessment it) {
        List<Phrase> words = new ArrayList<>();
        for (Prediction prediction : it.predictions()) {
            for (Promise promise : prediction.promises()) {
                if (promise.must() && !promise.met()) {
                    words.add(words(it, promise));
                }
            }
        }
        return Phrase.joined("; ", words);
    }

    private static Phrase words(Assessment it, Promise promise) {
        Unit unit = promise.measure().unit();
        return Phrase.of(
                "finding.promise",
                promise.use(),
                Phrase.of("measure.word." + promise.measure().name().toLowerCase(Locale.ROOT)),
                Measured.of(Math.round(promise.sure() * 100), unit),
                it.brief().confidencePercent(),
                Measured.of(Math.round(promise.required() * 100), unit));
    }
}
