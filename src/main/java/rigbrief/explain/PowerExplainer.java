package rigbrief.explain;

import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.model.power.SupplyLoss;
import rigbrief.part.Slot;

/** Explains the electrical load on the supply's output side. */
final class PowerExplainer implements Explainer {
    private static final String SOURCE =
            "makers' sheets for processor and card; common practice for the rest";

    @Override
    public List<Topic> topics(Assessment it) {
        return List.of(
                new Topic("power.sustained-w", "Sustained load", () -> sustained(it)),
                new Topic("power.peak-w", "Peak load", () -> peak(it)),
                new Topic("power.load-w", "Load under the heaviest workload", () -> load(it)),
                new Topic("power.idle-w", "Load at idle", () -> idle(it)),
                new Topic("power.supply-share", "Share of the supply", () -> share(it)));
    }

    private static Explanation sustained(Assessment it) {
        Derivation how =
                new Derivation(
                        "power.sustained-w",
                        "Sustained load",
                        "processor sustained + card board power + everything else at work",
                        SOURCE);
        double processorW = Draws.processorW(how, it);
        double cardW = Draws.cardW(how, it);
        double othersW = Draws.othersW(how, it.build(), true);
        return how.gives(it.sustainedW(), 1, "W", "{} + {} + {}", processorW, cardW, othersW);
    }

    private static Explanation peak(Assessment it) {
        Derivation how =
                new Derivation(
                        "power.peak-w",
                        "Peak load",
                        "sustained load + card x (peak factor - 1)",
                        SOURCE);
        double sustainedW = how.given("sustained load", it.sustainedW(), "W", "power.sustained-w");
        double cardW = Draws.cardW(how, it);
        Build build = it.build();
        if (!build.has(Slot.GRAPHICS)) {
            return how.gives(it.peakW(), 1, "W", "{}", sustainedW);
        }
        double factor =
                how.given(
                        "peak factor",
                        build.graphics().peakFactor(),
                        "",
                        build.graphics().id() + ", peak_factor");
        return how.gives(it.peakW(), 1, "W", "{} + {} x ({} - 1)", sustainedW, cardW, factor);
    }

    private static Explanation load(Assessment it) {
        Derivation how =
                new Derivation(
                        "power.load-w",
                        "Load under the heaviest workload",
                        "idle + (sustained - idle) x share of the time busy, for processor and"
                                + " card; + everything else at work",
                        "common practice: a straight line between idle and sustained power");
        Draws.Two draw = Draws.working(how, it);
        double othersW = Draws.othersW(how, it.build(), true);
        return how.gives(
                it.power().loadW(),
                1,
                "W",
                "{} + {} + {}",
                draw.processorW(),
                draw.cardW(),
                othersW);
    }

    private static Explanation idle(Assessment it) {
        Derivation how =
                new Derivation(
                        "power.idle-w",
                        "Load at idle",
                        "processor and card at rest + everything else at rest",
                        "common practice: a share of the sustained power and a constant");
        Draws.Two draw = Draws.resting(how, it);
        double othersW = Draws.othersW(how, it.build(), false);
        return how.gives(
                it.power().idleW(),
                1,
                "W",
                "{} + {} + {}",
                draw.processorW(),
                draw.cardW(),
                othersW);
    }

    private static Explanation share(Assessment it) {
        Derivation how =
                new Derivation(
                        "power.supply-share",
                        "Share of the supply",
                        "sustained load / rating",
                        "maker's sheet: rating of the supply");
        double sustainedW = how.given("sustained load", it.sustainedW(), "W", "power.sustained-w");
        int watts = it.build().supply().watts();
        how.given("rating", watts, "W", it.build().supply().id() + ", watts");
        how.remark(SupplyLoss.LOAD_SHARE.remark(it.power().supplyShare()));
        return how.gives(it.power().supplyShare(), 4, "", "{} / {}", sustainedW, watts);
    }
}
