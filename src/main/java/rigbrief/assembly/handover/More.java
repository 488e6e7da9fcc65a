package rigbrief.assembly.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rigbrief.assembly.Bench;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.assess.Promise.Measure;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.build.Build;
import rigbrief.part.Drive;
import rigbrief.part.Slot;

/** Asks more of a brief than a machine gives. */
final class More {
    private static final double FASTER = 1 + UpgradePath.FASTER_PERCENT / 100.0;

    private More() {}

    /** What more can be asked for. */
    enum Wish {
        GRAPHICS,
        PROCESSOR,
        MEMORY,
        STORAGE,
        QUIET
    }

    /** The brief with more asked; empty where nothing in it calls for that. */
    static Optional<Brief> asked(Wish wish, Bench bench, Brief brief) {
        Build build = bench.build();
        return switch (wish) {
            case GRAPHICS -> faster(bench, brief, true);
            case PROCESSOR -> faster(bench, brief, false);
            case MEMORY ->
                    Optional.of(
                            new BriefDraft(brief)
                                    .memory(
                                            new Brief.MemoryNeed(
                                                    2 * build.memoryGb(), brief.memory().ecc()))
                                    .toBrief());
            case STORAGE ->
                    build.has(Slot.SECOND_DRIVE)
                            ? Optional.empty()
                            : Optional.of(storage(brief, build));
            case QUIET -> quieter(bench, brief);
        };
    }

    private static Brief storage(Brief brief, Build build) {
        int capacityGb = build.drives().stream().mapToInt(Drive::capacityGb).sum();
        return new BriefDraft(brief)
                .storage(
                        new Brief.StorageNeed(
                                2 * capacityGb, brief.storage().roomFor(), brief.storage().years()))
                .toBrief();
    }

    private static Optional<Brief> quieter(Bench bench, Brief brief) {
        int most = (int) Math.floor(bench.it().load().levelDba()) - UpgradePath.QUIETER_DB;
        return most < 1
                ? Optional.empty()
                : Optional.of(
                        new BriefDraft(brief)
                                .noise(
                                        new Brief.Noise(
                                                OptionalInt.of(most),
                                                OptionalInt.empty(),
                                                brief.noise().seatDistanceM()))
                                .toBrief());
    }

    /**
     * The first workload that the part holds back has to run faster; what holds now has to hold.
     */
    private static Optional<Brief> faster(Bench bench, Brief brief, boolean graphics) {
        List<WorkloadNeed> needs = new ArrayList<>(brief.workloads());
        for (Prediction prediction : bench.it().predictions()) {
            boolean heldBack =
                    prediction.graphicsUse() > prediction.processorUse() == graphics
                            && !prediction.promises().isEmpty();
            if (heldBack) {
                int at = brief.workloads().indexOf(prediction.need());
                needs.set(at, faster(prediction));
                return Optional.of(new BriefDraft(brief).workloads(needs).toBrief());
            }
        }
        return Optional.empty();
    }

    private static WorkloadNeed faster(Prediction prediction) {
        WorkloadNeed need = prediction.need();
        Optional<Target> must = need.must();
        Promise promise = prediction.promises().get(0);
        Target target =
                promise.measure() == Measure.FINISH
                        ? new Target(
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.of(promise.sure() / FASTER))
                        : new Target(
                                average(promise),
                                promise.measure() == Measure.LOW
                                        ? OptionalDouble.of(promise.sure() * FASTER)
                                        : must.map(Target::lowFps).orElse(OptionalDouble.empty()),
                                OptionalDouble.empty());
        return new WorkloadNeed(
                need.use(), Optional.of(target), need.wish(), need.weight(), need.settings());
    }

    private static OptionalDouble average(Promise promise) {
        return promise.measure() == Measure.AVERAGE
                ? OptionalDouble.of(promise.sure() * FASTER)
                : OptionalDouble.empty();
    }
}
