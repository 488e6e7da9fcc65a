package rigbrief.proposal.need;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.Catalogue;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;

/** What is asked of workloads: their speed, and that they run at all. */
final class WorkloadTargets {
    /** Looser targets go down in steps of one hundredth of what was asked. */
    private static final int SHARES = 100;

    /** A rate below the first decimal that is printed. */
    private static final double LEAST_FPS = 0.1;

    /** A task that takes longer never ends. */
    private static final double ANY_TIME_S = 1e9;

    private WorkloadTargets() {}

    /** Adds the musts on speed. */
    static void addMusts(Brief brief, Catalogue catalogue, List<Need> needs) {
        for (WorkloadNeed need : brief.workloads()) {
            need.must()
                    .ifPresent(target -> needs.add(need(catalogue, need, target, Need.Kind.MUST)));
        }
    }

    /** Adds that each workload of which no speed is asked for runs at all. */
    static void addPresences(Brief brief, Catalogue catalogue, List<Need> needs) {
        for (WorkloadNeed need : brief.workloads()) {
            if (need.must().isPresent()) {
                continue;
            }
            Phrase name = Phrase.of("need.name.presence", Names.workload(catalogue, need.use()));
            needs.add(
                    Need.whole(
                            need.use(),
                            name,
                            Need.Kind.PRESENCE,
                            new Level(Phrase.of("need.at-all"), it -> withWorkload(it, need)),
                            it -> without(it, need.use())));
        }
        if (!brief.atOnce().isEmpty()) {
            Phrase words = Names.workloads(catalogue, brief.atOnce());
            needs.add(
                    Need.whole(
                            "at-once",
                            Phrase.of("need.name.at-once", words),
                            Need.Kind.MUST,
                            new Level(
                                    words,
                                    it -> new BriefDraft(it).atOnce(brief.atOnce()).toBrief()),
                            it -> new BriefDraft(it).atOnce(List.of()).toBrief()));
        }
    }

    /** Adds the wishes on speed. */
    static void addWishes(Brief brief, Catalogue catalogue, List<Need> needs) {
        for (WorkloadNeed need : brief.workloads()) {
            need.wish()
                    .ifPresent(target -> needs.add(need(catalogue, need, target, Need.Kind.WISH)));
        }
    }

    private static Need need(
            Catalogue catalogue, WorkloadNeed need, Target target, Need.Kind kind) {
        List<Level> looser = new ArrayList<>();
        for (int share = SHARES - 1; share > 0; share--) {
            looser.add(level(need, scaled(target, share / (double) SHARES)));
        }
        return new Need(
                need.use(),
                Phrase.of(
                        "need.name.workload", Names.workload(catalogue, need.use()), words(target)),
                kind,
                level(need, target),
                it -> without(it, need.use()),
                it -> withTarget(it, need, Optional.empty()),
                looser,
                stepped(target, false).map(step -> level(need, step)),
                stepped(target, true).map(step -> level(need, step)),
                it -> reached(it, need.use(), target));
    }

    private static Level level(WorkloadNeed need, Target target) {
        return new Level(words(target), it -> withTarget(it, need, Optional.of(target)));
    }

    /** A target in words, with units. */
    static Phrase words(Target target) {
        List<Phrase> words = new ArrayList<>();
        target.averageFps().ifPresent(fps -> words.add(figure("average", fps, "")));
        target.lowFps().ifPresent(fps -> words.add(figure("low", fps, "")));
        target.finishWithinS().ifPresent(s -> words.add(figure("finish", s, "s")));
        return Phrase.joined(", ", words);
    }

    private static Phrase figure(String measure, double value, String unit) {
        return Phrase.of("need.at." + measure, plain(value, unit));
    }

    static Phrase plain(double value, String unit) {
        BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
        return Phrase.joined(
                "", List.of(new Measured(plain.scale() < 0 ? plain.setScale(0) : plain, unit)));
    }

    /** A share of a target: rates shrink, times grow. */
    private static Target scaled(Target target, double share) {
        return new Target(
                times(target.averageFps(), share),
                times(target.lowFps(), share),
                times(target.finishWithinS(), 1 / share));
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isEmpty()
                ? value
                : OptionalDouble.of(
                        BigDecimal.valueOf(value.getAsDouble() * factor)
                                .setScale(1, RoundingMode.HALF_UP)
                                .doubleValue());
    }

    /** One usual step of the leading figure; the others keep their ratio to it, in whole units. */
    private static Optional<Target> stepped(Target target, boolean harder) {
        boolean frames = target.averageFps().isPresent() || target.lowFps().isPresent();
        if (!frames) {
            double asked = target.finishWithinS().orElse(0);
            OptionalInt step = harder ? Ladder.SECONDS.under(asked) : Ladder.SECONDS.over(asked);
            return step.isEmpty() ? Optional.empty() : Optional.of(finish(step.getAsInt()));
        }
        double lead = target.averageFps().orElse(target.lowFps().orElse(0));
        OptionalInt step = harder ? Ladder.FPS.over(lead) : Ladder.FPS.under(lead);
        if (step.isEmpty()) {
            return Optional.empty();
        }
        double ratio = step.getAsInt() / lead;
        return Optional.of(
                new Target(
                        whole(target.averageFps(), ratio),
                        whole(target.lowFps(), ratio),
                        OptionalDouble.empty()));
    }

    private static Target finish(double seconds) {
        return new Target(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(seconds));
    }

    private static OptionalDouble whole(OptionalDouble value, double ratio) {
        return value.isEmpty()
                ? value
                : OptionalDouble.of(Math.max(1, Math.round(value.getAsDouble() * ratio)));
    }

    /** The brief with a workload's must set; a workload that is not there is put back. */
    private static Brief withTarget(Brief brief, WorkloadNeed original, Optional<Target> must) {
        List<WorkloadNeed> needs = new ArrayList<>();
        boolean there = false;
        for (WorkloadNeed need : brief.workloads()) {
            boolean same = need.use().equals(original.use());
            there |= same;
            needs.add(same ? of(need, must) : need);
        }
        if (!there && must.isPresent()) {
            needs.add(of(original, must));
        }
        return new BriefDraft(brief).workloads(needs).toBrief();
    }

    private static WorkloadNeed of(WorkloadNeed need, Optional<Target> must) {
        return new WorkloadNeed(need.use(), must, need.wish(), need.weight(), need.settings());
    }

    private static Brief withWorkload(Brief brief, WorkloadNeed original) {
        boolean there =
                brief.workloads().stream().anyMatch(need -> need.use().equals(original.use()));
        List<WorkloadNeed> needs = new ArrayList<>(brief.workloads());
        if (!there) {
            needs.add(of(original, Optional.empty()));
        }
        return new BriefDraft(brief).workloads(needs).toBrief();
    }

    private static Brief without(Brief brief, String use) {
        List<WorkloadNeed> needs = new ArrayList<>(brief.workloads());
        needs.removeIf(need -> need.use().equals(use));
        return new BriefDraft(brief).workloads(needs).toBrief();
    }

    /** What a build surely reaches of a target, no more than was asked. */
    private static Phrase reached(Assessment it, String use, Target asked) {
        Map<Promise.Measure, Promise> reached = new EnumMap<>(Promise.Measure.class);
        for (Prediction prediction : it.predictions()) {
            for (Promise promise : prediction.promises()) {
                if (promise.use().equals(use) && askedBy(promise, asked)) {
                    reached.putIfAbsent(promise.measure(), promise);
                }
            }
        }
        boolean notAtAll = reached.values().stream().allMatch(WorkloadTargets::stands);
        return notAtAll
                ? Phrase.of("need.not-run")
                : Phrase.joined(
                        ", ", reached.values().stream().map(WorkloadTargets::reached).toList());
    }

    private static boolean askedBy(Promise promise, Target asked) {
        OptionalDouble value =
                switch (promise.measure()) {
                    case AVERAGE -> asked.averageFps();
                    case LOW -> asked.lowFps();
                    case FINISH -> asked.finishWithinS();
                };
        return value.isPresent() && value.getAsDouble() == promise.required();
    }

    private static boolean stands(Promise promise) {
        return promise.measure() != Promise.Measure.FINISH && capped(promise) < LEAST_FPS;
    }

    private static double capped(Promise promise) {
        return promise.met() ? promise.required() : promise.sure();
    }

    private static Phrase reached(Promise promise) {
        boolean finish = promise.measure() == Promise.Measure.FINISH;
        double capped = capped(promise);
        String key = "need.at." + promise.measure().name().toLowerCase(Locale.ROOT);
        if (!Double.isFinite(capped) || capped > ANY_TIME_S) {
            return Phrase.of(key, Phrase.of("need.any-time"));
        }
        BigDecimal rounded =
                BigDecimal.valueOf(capped)
                        .setScale(1, finish ? RoundingMode.CEILING : RoundingMode.FLOOR);
        return Phrase.of(key, plain(rounded.doubleValue(), finish ? "s" : ""));
    }
}
