package rigbrief.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.assess.Promise.Measure;
import rigbrief.model.speed.NormalDistribution;

/** Explains the ranges and chances around predictions, and the capacities that were asked for. */
final class PromiseExplainer implements Explainer {
    private static final String SOURCE =
            "lognormal spread of measurements around the fitted model; quantiles of the normal"
                    + " distribution (published tables)";

    /** The program's own "not at all", so that logarithms exist. */
    static final double NEXT_TO_NOTHING = 1e-3;

    @Override
    public List<Topic> topics(Assessment it) {
        Map<String, Topic> topics = new LinkedHashMap<>();
        for (Prediction prediction : it.predictions()) {
            for (Promise promise : prediction.promises()) {
                add(topics, it, prediction, promise);
            }
        }
        int memoryGb = it.brief().memory().atLeastGb();
        if (memoryGb > 0) {
            put(topics, "memory.capacity-gb", "Memory", () -> memory(it));
        }
        if (it.brief().storage().atLeastGb() > 0) {
            put(topics, "storage.capacity-gb", "Storage", () -> storage(it));
        }
        return new ArrayList<>(topics.values());
    }

    private static void put(
            Map<String, Topic> topics, String name, String title, Supplier<Explanation> how) {
        topics.putIfAbsent(name, new Topic(name, title, how));
    }

    /** The topic of a measure of a workload. */
    static String name(Promise promise) {
        return "workload." + promise.use() + "." + slug(promise.measure());
    }

    private static String slug(Measure measure) {
        return measure == Measure.LOW ? "low" : measure.word();
    }

    private static void add(
            Map<String, Topic> topics, Assessment it, Prediction prediction, Promise promise) {
        String name = name(promise);
        String title = prediction.workload().title() + ", " + promise.measure().word();
        String low = title + ", lower end";
        String high = title + ", upper end";
        String kind = promise.must() ? "must" : "wish";
        String chance = title + ", chance of the " + kind;
        put(topics, name + ".range-low", low, () -> end(it, prediction, promise, low, false));
        put(topics, name + ".range-high", high, () -> end(it, prediction, promise, high, true));
        String number = name + "." + kind + "-chance";
        put(topics, number, chance, () -> chance(prediction, promise, number, chance));
    }

    private static double middle(Derivation how, Promise promise) {
        String unit = promise.measure() == Measure.FINISH ? "s" : "fps";
        return how.given(
                "predicted",
                Math.max(promise.promised(), NEXT_TO_NOTHING),
                unit,
                "number " + name(promise) + ", before rounding");
    }

    private static double sigma(Derivation how, Prediction prediction) {
        return how.given(
                "spread",
                prediction.workload().fitted().sigma(),
                "",
                "catalogue, workload " + prediction.workload().id() + ", fitted");
    }

    private static Explanation end(
            Assessment it, Prediction prediction, Promise promise, String title, boolean upper) {
        Derivation how =
                new Derivation(
                        name(promise) + (upper ? ".range-high" : ".range-low"),
                        title,
                        "predicted x e^(+- spread x z), z the normal distribution's quantile for"
                                + " the middle share that the brief's confidence names",
                        SOURCE);
        double middle = middle(how, promise);
        double sigma = sigma(how, prediction);
        int percent = it.brief().confidencePercent();
        how.given("confidence", percent, "%", "brief, confidence");
        double share = (1 + percent / 100.0) / 2;
        double z = how.given("z", NormalDistribution.quantile(share), "", "any table");
        how.step("share of the normal distribution up to z", share, "", "normal({})", z);
        return how.gives(
                upper ? promise.high() : promise.low(),
                1,
                promise.measure() == Measure.FINISH ? "s" : "fps",
                upper ? "{} x exp({} x {})" : "{} / exp({} x {})",
                middle,
                sigma,
                z);
    }

    private static Explanation chance(
            Prediction prediction, Promise promise, String number, String title) {
        Derivation how =
                new Derivation(
                        number,
                        title,
                        "share of the normal distribution up to ln(predicted / asked) / spread;"
                                + " for times up to ln(asked / predicted) / spread",
                        SOURCE);
        double middle = middle(how, promise);
        double sigma = sigma(how, prediction);
        boolean time = promise.measure() == Measure.FINISH;
        double asked =
                how.given("asked", promise.required(), time ? "s" : "fps", "brief, workloads");
        if (sigma == 0) {
            how.remark("without a spread it holds or it does not");
            return how.gives(promise.chance(), 4, "", promise.chance() > 0 ? "1" : "0");
        }
        return how.gives(
                promise.chance(),
                4,
                "",
                "normal(ln({} / {}) / {})",
                time ? asked : middle,
                time ? middle : asked,
                sigma);
    }

    private static Explanation memory(Assessment it) {
        Derivation how =
                new Derivation(
                        "memory.capacity-gb", "Memory", "sum of the modules", "maker's sheet");
        int gb = it.build().memoryGb() / Math.max(1, it.build().memoryModules());
        String id = it.build().memory().id();
        how.given("modules", it.build().memoryModules(), "", id + ", modules x packs");
        how.given("each", gb, "GB", id + ", module_gb");
        return how.gives(it.build().memoryGb(), 0, "GB", "{} x {}", it.build().memoryModules(), gb);
    }

    private static Explanation storage(Assessment it) {
        Derivation how =
                new Derivation(
                        "storage.capacity-gb", "Storage", "sum of the drives", "makers' sheets");
        List<Object> each = new ArrayList<>();
        int sumGb = 0;
        for (var drive : it.build().drives()) {
            how.given("drive", drive.capacityGb(), "GB", drive.id() + ", capacity_gb");
            each.add(drive.capacityGb());
            sumGb += drive.capacityGb();
        }
        String sum = String.join(" + ", each.stream().map(any -> "{}").toList());
        return how.gives(sumGb, 0, "GB", each.isEmpty() ? "0" : sum, each.toArray());
    }
}
