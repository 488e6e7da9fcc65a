package rigbrief.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.catalogue.Workload.Fitted;
import rigbrief.file.tree.Keys;
import rigbrief.part.Cells;
import rigbrief.part.Word;

/** Reads {@code workloads.yaml}. */
final class WorkloadFile {
    private WorkloadFile() {}

    /** The kinds of workloads. */
    enum Form implements Word {
        FRAME_RATE("frame-rate"),
        TASK_TIME("task-time"),
        CAPACITY("capacity");

        private final String word;

        Form(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /** All workloads, those with faults among them. */
    static List<Workload> read(Keys root) {
        return read(root, List.of());
    }

    /**
     * All workloads of an overlay, those with faults among them.
     *
     * @param known ids of which each must be one; none for any
     */
    static List<Workload> read(Keys root, List<String> known) {
        List<Workload> workloads = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Keys keys : root.listOfKeys("workloads")) {
            String id = keys.one("id", Forms::id).orElse("");
            if (!id.isEmpty() && !ids.add(id)) {
                keys.fault("id", "an id used once", "give one of the two another id");
            }
            if (!id.isEmpty() && !known.isEmpty() && !known.contains(id)) {
                keys.text("id").ifPresent(it -> it.unknown("a workload of the catalogue", known));
            }
            workload(id, keys).ifPresent(workloads::add);
            keys.finish();
        }
        if (!root.has("workloads")) {
            root.fault("workloads", "a list of workloads", "write {id, title, kind, ...} for each");
        }
        root.finish();
        return workloads;
    }

    private static Optional<Workload> workload(String id, Keys keys) {
        Optional<Form> form = keys.one("kind", Forms.word(Form.class));
        if (form.isEmpty()) {
            // Which keys belong here depends on the kind, so none is called unknown.
            keys.names().forEach(keys::has);
            return Optional.empty();
        }
        String title = keys.cells().text("title");
        return Optional.of(
                switch (form.get()) {
                    case FRAME_RATE -> FrameRateSection.read(id, title, keys);
                    case TASK_TIME -> taskTime(id, title, keys);
                    case CAPACITY -> capacity(id, title, keys);
                });
    }

    private static TaskTime taskTime(String id, String title, Keys keys) {
        String job = keys.cells().text("job");
        double memoryGb = memoryGb(keys);
        double vramGb = keys.cells().numberOr("vram-gb", 0, 256, 0);
        double diskGb = diskGb(keys);
        Fitted fitted = fitted(keys.required("fitted"));
        Keys work = keys.required("work");
        Cells cells = work.cells();
        TaskTime task =
                new TaskTime(
                        id,
                        title,
                        job,
                        memoryGb,
                        vramGb,
                        diskGb,
                        fitted,
                        cells.numberOr("serial", 0, 1e9, 0),
                        cells.numberOr("parallel", 0, 1e9, 0),
                        cells.numberOr("gflop", 0, 1e12, 0),
                        cells.numberOr("read-gb", 0, 1e6, 0),
                        cells.numberOr("write-gb", 0, 1e6, 0));
        if (!work.names().isEmpty() && noWork(task)) {
            keys.fault("work", "some work above 0", "write serial, parallel or gflop");
        }
        work.finish();
        return task;
    }

    private static boolean noWork(TaskTime task) {
        return task.serial() + task.parallel() + task.gflop() + task.readGb() + task.writeGb() <= 0;
    }

    private static Capacity capacity(String id, String title, Keys keys) {
        double growth = keys.cells().numberOr("growth-gb-per-year", 0, 1e6, 0);
        return new Capacity(
                id,
                title,
                memoryGb(keys),
                keys.cells().numberOr("vram-gb", 0, 256, 0),
                diskGb(keys),
                growth,
                keys.keys("fitted").map(WorkloadFile::fitted).orElse(new Fitted(0, 0)));
    }

    static double memoryGb(Keys keys) {
        return keys.cells().number("memory-gb", 0, 8_192);
    }

    static double diskGb(Keys keys) {
        return keys.cells().number("disk-gb", 0, 1e6);
    }

    static Fitted fitted(Keys keys) {
        Fitted fitted =
                new Fitted(
                        keys.cells().whole("n", 0, 1_000_000), keys.cells().number("sigma", 0, 2));
        keys.finish();
        return fitted;
    }
}
