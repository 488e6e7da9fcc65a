package rigbrief.explain;

import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.assess.Workings;
import rigbrief.build.Build;
import rigbrief.catalogue.TaskTime;
import rigbrief.model.speed.Amdahl;
import rigbrief.model.speed.MemoryOverflow;
import rigbrief.model.speed.PredictionRange;
import rigbrief.part.Drive;
import rigbrief.part.Processor;
import rigbrief.part.Slot;

/** How the time of one task came about. */
final class TaskExplanation {
    private static final double SENSELESS_S = 1e9;

    private final Assessment it;
    private final Prediction prediction;
    private final TaskTime task;
    private final Derivation how;

    TaskExplanation(Assessment it, Prediction prediction, String name) {
        this(
                it,
                prediction,
                new Derivation(
                        name + ".finish-within",
                        prediction.workload().title() + ", time",
                        "(serial / rate of one thread + parallel / rate of all + graphics work /"
                                + " rate) x memory overflow + reading + writing",
                        "Amdahl and roofline (published) for the parts; that stages follow each"
                                + " other, and the overflow line, are common practice"));
    }

    private TaskExplanation(Assessment it, Prediction prediction, Derivation how) {
        this.it = it;
        this.prediction = prediction;
        this.task = (TaskTime) prediction.workload();
        this.how = how;
    }

    /** How much of the time the processor works, or with {@code card} the card. */
    static Explanation busy(Assessment it, Prediction prediction, Derivation how, boolean card) {
        if (prediction.seconds() > SENSELESS_S) {
            how.remark("the machine has no means for the work");
            return how.gives(0, 4, "", "0");
        }
        TaskExplanation task = new TaskExplanation(it, prediction, how);
        String from = "catalogue, workload " + task.task.id();
        double overflow = task.overflow(it.build(), from);
        double seconds =
                how.given(
                        "time",
                        prediction.seconds(),
                        "s",
                        "number workload." + task.task.id() + ".finish-within, before rounding");
        if (card) {
            double graphicsS = task.graphicsS(it.build(), from);
            return how.gives(
                    prediction.graphicsUse(),
                    4,
                    "",
                    "min(1, {} x {} / {})",
                    graphicsS,
                    overflow,
                    seconds);
        }
        Processor processor = it.build().processor();
        task.processorS(processor, from);
        how.given("one thread keeps busy", Workings.ONE_THREAD_USE, "", "common practice");
        return how.gives(
                prediction.processorUse(),
                4,
                "",
                "min(1, ({} / {} x {} + {} / {}) x {} / {})",
                task.task.serial(),
                processor.rateSingle(),
                Workings.ONE_THREAD_USE,
                task.task.parallel(),
                processor.rateAll(),
                overflow,
                seconds);
    }

    Explanation seconds() {
        Build build = it.build();
        String from = "catalogue, workload " + task.id();
        how.remark(PredictionRange.SIGMA.remark(task.fitted().sigma()));
        if (prediction.seconds() > SENSELESS_S) {
            how.remark("the machine has no means for the work: it never ends");
            return how.givesNothing("s");
        }
        double processorS = processorS(build.processor(), from);
        mostByThreads(build.processor(), processorS);
        double graphicsS = graphicsS(build, from);
        double overflow = overflow(build, from);
        double driveS = driveS((Drive) build.part(Slot.DRIVE), from);
        return how.gives(
                prediction.seconds(),
                1,
                "s",
                "({} + {}) x {} + {}",
                processorS,
                graphicsS,
                overflow,
                driveS);
    }

    private double processorS(Processor processor, String from) {
        double serial = how.given("work on one thread", task.serial(), "", from);
        double parallel = how.given("work on all threads", task.parallel(), "", from);
        double one =
                how.given(
                        "rate of one thread",
                        processor.rateSingle(),
                        "1/s",
                        processor.id() + ", rate_single");
        double all =
                how.given(
                        "rate of all threads",
                        processor.rateAll(),
                        "1/s",
                        processor.id() + ", rate_all");
        return how.step(
                "processor",
                serial / one + parallel / all,
                "s",
                "{} / {} + {} / {}",
                serial,
                one,
                parallel,
                all);
    }

    /** Whether more threads would help: what is left of the work is on one of them. */
    private void mostByThreads(Processor processor, double processorS) {
        if (task.serial() == 0 || task.parallel() == 0) {
            return;
        }
        double share = task.parallel() / processor.rateAll() / processorS;
        how.step(
                "processor's time on all threads",
                share,
                "",
                "{} / {} / {}",
                task.parallel(),
                processor.rateAll(),
                processorS);
        how.step(
                "processor faster at most, however many threads",
                Amdahl.speedUp(share, Double.POSITIVE_INFINITY),
                "times",
                "1 / (1 - {})",
                share);
    }

    private double graphicsS(Build build, String from) {
        if (task.gflop() == 0) {
            return 0;
        }
        boolean card = build.has(Slot.GRAPHICS);
        double tflops = card ? build.graphics().tflops() : build.processor().integratedTflops();
        how.given("graphics work", task.gflop(), "GFLOP", from);
        how.given(
                "graphics rate",
                tflops,
                "TFLOP/s",
                card
                        ? build.graphics().id() + ", tflops"
                        : build.processor().id() + ", integrated_graphics_tflops");
        return how.step(
                "graphics",
                task.gflop() / (tflops * 1_000),
                "s",
                "{} / ({} x 1000)",
                task.gflop(),
                tflops);
    }

    private double overflow(Build build, String from) {
        double wanted = how.given("memory wanted", task.memoryGb(), "GB", from);
        double system =
                how.given(
                        "memory of the system", Workings.SYSTEM_MEMORY_GB, "GB", "common practice");
        double there = Math.max(1, build.memoryGb());
        how.given("memory there", there, "GB", build.memory().id() + ", modules x module_gb");
        how.remark(MemoryOverflow.NEEDED_SHARE.remark((wanted + system) / there));
        return how.step(
                "memory overflow",
                MemoryOverflow.factor(wanted + system, there, Workings.TASK_OVERFLOW_PENALTY),
                "",
                "max(1, 1 + {} x (({} + {}) / {} - 1))",
                Workings.TASK_OVERFLOW_PENALTY,
                wanted,
                system,
                there);
    }

    private double driveS(Drive drive, String from) {
        double read = how.given("read", task.readGb(), "GB", from);
        double written = how.given("written", task.writeGb(), "GB", from);
        double readMbs =
                how.given(
                        "drive, reading",
                        (double) drive.readMbs(),
                        "MB/s",
                        drive.id() + ", read_mbs");
        double writeMbs =
                how.given(
                        "drive, writing",
                        (double) drive.writeMbs(),
                        "MB/s",
                        drive.id() + ", write_mbs");
        return how.step(
                "reading and writing",
                read * 1_000 / readMbs + written * 1_000 / writeMbs,
                "s",
                "{} x 1000 / {} + {} x 1000 / {}",
                read,
                readMbs,
                written,
                writeMbs);
    }
}
