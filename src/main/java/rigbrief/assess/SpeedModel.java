package rigbrief.assess;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Demand.Use;
import rigbrief.brief.Brief;
import rigbrief.brief.Screen;
import rigbrief.build.Build;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.part.Resolution;
import rigbrief.part.Slot;

/**
 * Runs the speed models for the brief's workloads, once for each processor, card, memory and drive
 * that occur together.
 */
final class SpeedModel {
    /** The picture when the brief names none. */
    private static final Resolution USUAL_PICTURE = new Resolution(1920, 1080);

    /** Channels a desktop board spreads modules over. */
    private static final int CHANNELS = 2;

    /** Machines to remember; a search in a large catalogue asks about millions. */
    private static final int MOST_KNOWN = 20_000;

    private final Brief brief;
    private final Demand demand;
    private final Map<Key, Prediction[]> framesKnown = new HashMap<>();

    SpeedModel(Brief brief, Demand demand) {
        this.brief = brief;
        this.demand = demand;
    }

    List<Prediction> predictions(Assessment it) {
        return predictions(rig(it));
    }

    /** The parts of a build that speed depends on. */
    static Rig rig(Assessment it) {
        Build build = it.build();
        int modules = Math.min(build.memoryModules(), CHANNELS);
        return new Rig(
                build.processor(),
                build.has(Slot.GRAPHICS) ? build.graphics() : null,
                it.memoryMts() * modules / CHANNELS,
                build.memoryGb(),
                (Drive) build.part(Slot.DRIVE));
    }

    /** The predictions for the parts that speed depends on, in the brief's order. */
    public List<Prediction> predictions(Rig rig) {
        Prediction[] frames = frames(rig);
        List<Prediction> predictions = new ArrayList<>(frames.length);
        for (int i = 0; i < frames.length; i++) {
            predictions.add(
                    frames[i] != null
                            ? frames[i]
                            : unframed(demand.uses().get(i), MachineRates.of(rig)));
        }
        return predictions;
    }

    /**
     * Predictions of frame rates, in the brief's order; null for a workload that draws no frames.
     */
    private Prediction[] frames(Rig rig) {
        Key key = new Key(rig.processor(), rig.graphics(), rig.mts());
        Prediction[] known = framesKnown.get(key);
        if (known == null) {
            known = new Prediction[demand.uses().size()];
            for (int i = 0; i < known.length; i++) {
                Use use = demand.uses().get(i);
                if (use.workload() instanceof FrameRate frames) {
                    known[i] = new FramePredictor(brief, use, frames).predict(MachineRates.of(rig));
                }
            }
            if (framesKnown.size() >= MOST_KNOWN) {
                framesKnown.clear(); // What is forgotten is predicted again when it is asked for.
            }
            framesKnown.put(key, known);
        }
        return known;
    }

    /** The predictions for the rates of a machine, in the brief's order. */
    public List<Prediction> predictions(MachineRates machine) {
        List<Prediction> predictions = new ArrayList<>(demand.uses().size());
        for (Use use : demand.uses()) {
            predictions.add(
                    use.workload() instanceof FrameRate frames
                            ? new FramePredictor(brief, use, frames).predict(machine)
                            : unframed(use, machine));
        }
        return predictions;
    }

    private Prediction unframed(Use use, MachineRates machine) {
        if (use.workload() instanceof TaskTime task) {
            return new TaskPredictor(brief, use, task).predict(machine);
        }
        Capacity capacity = (Capacity) use.workload();
        return new Prediction(
                use.valued(), capacity, 0, 0, 0, 0, 0, capacity.vramGb(), "", List.of());
    }

    /** Millions of pixels shown. */
    static double shownMegapixels(Brief brief) {
        return brief.screen().map(Screen::resolution).orElse(USUAL_PICTURE).megapixels();
    }

    /**
     * The parts that speed depends on.
     *
     * @param processor the processor
     * @param graphics the card; null for the processor's own graphics
     * @param mts memory rate in MT/s, halved when only one module feeds two channels
     * @param memoryGb memory in GB
     * @param drive the first drive
     */
    public record Rig(Processor processor, Graphics graphics, int mts, int memoryGb, Drive drive) {}

    /** Parts by identity: hashing their every figure would cost more than the model. */
    private static final class Key {
        private final Part processor;
        private final Part graphics;
        private final int mts;

        Key(Part processor, Part graphics, int mts) {
            this.processor = processor;
            this.graphics = graphics;
            this.mts = mts;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key
                    && processor == key.processor
                    && graphics == key.graphics
                    && mts == key.mts;
        }

        @Override
        public int hashCode() {
            int hash = System.identityHashCode(processor);
            return (hash * 31 + System.identityHashCode(graphics)) * 31 + mts;
        }
    }
}
