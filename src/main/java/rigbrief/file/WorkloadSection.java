package rigbrief.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.file.tree.Keys;
import rigbrief.file.tree.Text;

/** Reads what a brief wants to run. */
final class WorkloadSection {
    private static final int USUAL_WEIGHT = 3;
    private static final double MOST_FPS = 2_000;

    private final Names names;

    WorkloadSection(Names names) {
        this.names = names;
    }

    List<WorkloadNeed> read(Keys root) {
        List<WorkloadNeed> needs = new ArrayList<>();
        Set<String> uses = new HashSet<>();
        for (Keys keys : root.listOfKeys("workloads")) {
            Optional<Workload> workload = workload(keys);
            if (workload.isPresent() && !uses.add(workload.get().id())) {
                keys.fault("use", "each workload once", "put both needs under one use");
            }
            workload.map(it -> need(it, keys)).ifPresent(needs::add);
            if (workload.isPresent()) {
                keys.finish();
            }
        }
        return needs;
    }

    private Optional<Workload> workload(Keys keys) {
        return keys.oneText("use", "the id of a workload", "write one of workloads.yaml")
                .flatMap(names::workload);
    }

    private static WorkloadNeed need(Workload workload, Keys keys) {
        Optional<Keys> must = keys.keys("must");
        Optional<Keys> wish = keys.keys("wish");
        must.ifPresent(inner -> checkAsks(keys, "must", inner));
        wish.ifPresent(inner -> checkAsks(keys, "wish", inner));
        return new WorkloadNeed(
                workload.id(),
                must.map(inner -> target(workload, inner, false)),
                wish.map(inner -> target(workload, inner, true)),
                weight(keys, wish),
                SettingsSection.read(workload, keys));
    }

    private static void checkAsks(Keys keys, String key, Keys inner) {
        if (inner.names().isEmpty() || inner.names().equals(List.of("weight"))) {
            keys.fault(
                    key,
                    "something asked: average, low or finish-within",
                    "write {average: 60}, say, or take " + key + " out");
        }
    }

    /** Both places are offered, since either reads well; both at once would contradict. */
    private static int weight(Keys keys, Optional<Keys> wish) {
        int outside = keys.cells().wholeOr("weight", 1, 5, USUAL_WEIGHT);
        Optional<Keys> inside = wish.filter(inner -> inner.has("weight"));
        if (inside.isPresent() && keys.has("weight")) {
            keys.fault("weight", "one weight", "take one of the two weights out");
        }
        return inside.map(inner -> inner.cells().wholeOr("weight", 1, 5, USUAL_WEIGHT))
                .orElse(outside);
    }

    private static Target target(Workload workload, Keys keys, boolean weighted) {
        boolean frames = workload instanceof FrameRate;
        boolean task = workload instanceof TaskTime;
        int before = keys.faultCount();
        OptionalDouble average = fps(keys, "average", frames);
        OptionalDouble low = fps(keys, "low", frames);
        OptionalDouble within = finishWithin(keys, task);
        if (weighted) {
            keys.has("weight");
        }
        boolean readable = keys.faultCount() == before;
        if (readable && low.orElse(0) > average.orElse(MOST_FPS)) {
            keys.fault("low", "no more than the average", "look whether the two are exchanged");
        }
        keys.finish();
        return new Target(average, low, within);
    }

    private static OptionalDouble fps(Keys keys, String key, boolean fits) {
        if (!keys.has(key) || !fits(keys, key, fits, "frame-rate")) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(keys.cells().number(key, 1, MOST_FPS));
    }

    private static OptionalDouble finishWithin(Keys keys, boolean fits) {
        String key = "finish-within";
        if (!keys.has(key) || !fits(keys, key, fits, "task-time")) {
            return OptionalDouble.empty();
        }
        return keys.maybe(key, Forms::seconds).stream().mapToDouble(s -> s).findFirst();
    }

    private static boolean fits(Keys keys, String key, boolean fits, String kind) {
        if (!fits) {
            keys.fault(
                    key,
                    "this key with a %s workload alone".formatted(kind),
                    "take it out, or use another workload");
        }
        return fits;
    }

    /** Reads the settings at which a workload runs. */
    private static final class SettingsSection {
        private SettingsSection() {}

        static Settings read(Workload workload, Keys need) {
            Optional<Keys> with = need.keys("with");
            if (with.isPresent() && !(workload instanceof FrameRate)) {
                need.fault("with", "settings with a frame-rate workload alone", "take them out");
                return none();
            }
            return with.map(keys -> settings((FrameRate) workload, keys)).orElse(none());
        }

        private static Settings none() {
            return new Settings(Optional.empty(), Optional.empty(), Optional.empty());
        }

        private static Settings settings(FrameRate title, Keys keys) {
            Settings settings =
                    new Settings(
                            step(keys, "preset", "a preset of ", title, title.presets().keySet()),
                            step(keys, "rays", "a ray step of ", title, title.rays().keySet()),
                            step(
                                    keys,
                                    "upscaling",
                                    "an upscaling step of ",
                                    title,
                                    title.upscaling().keySet()));
            keys.finish();
            return settings;
        }

        private static Optional<String> step(
                Keys keys, String key, String what, FrameRate title, Set<String> known) {
            return keys.text(key)
                    .filter(text -> Names.among(text, what + title.id(), List.copyOf(known)))
                    .map(Text::text);
        }
    }
}
