package rigbrief.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.audit.Audit;
import rigbrief.audit.GoalScore;
import rigbrief.build.Build;
import rigbrief.part.Slot;

/**
 * What one build has that another has not, as far as a client would notice.
 *
 * <p>Noticed is a speed that differs by 2 %, a level by half a dB, a yearly energy by 3 %, a goal
 * by 5 of 100; common practice.
 */
final class Trades {
    private static final double SPEED = 0.02;
    private static final double LEVEL_DBA = 0.5;
    private static final double ENERGY = 0.03;
    private static final int GOAL_TEN_THOUSANDTHS = 500;

    /** Goals whose utility is told; the others are told by what they measure. */
    private static final List<String> TOLD =
            List.of("look", "upgrade-room", "lifetime", "simple-order");

    private final Words words;

    Trades(Words words) {
        this.words = words;
    }

    /** What a build is better at than another, in sentences. */
    List<String> better(Audit mine, Audit other) {
        List<String> better = new ArrayList<>();
        better.addAll(speeds(mine, other));
        if (mine.figures().isPresent() && other.figures().isPresent()) {
            quiet(mine, other).ifPresent(better::add);
            energy(mine, other).ifPresent(better::add);
        }
        better.addAll(goals(mine, other, 1));
        return better;
    }

    /** What a build is worse at than another, in sentences that name this build's figure first. */
    List<String> worse(Audit mine, Audit other) {
        return better(other, mine).isEmpty() ? List.of() : turned(mine, other);
    }

    private List<String> turned(Audit mine, Audit other) {
        List<String> worse = new ArrayList<>();
        worse.addAll(slower(mine, other));
        if (mine.figures().isPresent() && other.figures().isPresent()) {
            if (quiet(other, mine).isPresent()) {
                worse.add(levels(mine, other));
            }
            if (energy(other, mine).isPresent()) {
                worse.add(energies(mine, other));
            }
        }
        worse.addAll(goals(mine, other, -1));
        return worse;
    }

    private List<String> speeds(Audit mine, Audit other) {
        return speeds(mine, other, 1);
    }

    private List<String> slower(Audit mine, Audit other) {
        return speeds(mine, other, -1);
    }

    /** One line per figure of a workload, whether it is a must or a wish or both. */
    private List<String> speeds(Audit mine, Audit other, int sign) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < mine.predictions().size(); i++) {
            Prediction here = mine.predictions().get(i);
            Prediction there = other.predictions().get(i);
            for (Promise.Measure measure : Promise.Measure.values()) {
                Optional<Promise> a = promise(here, measure);
                Optional<Promise> b = promise(there, measure);
                if (a.isPresent() && sign * gain(a.get(), b.orElseThrow()) > SPEED) {
                    lines.add(speed(here, a.get(), b.get()));
                }
            }
        }
        return lines;
    }

    private static Optional<Promise> promise(Prediction prediction, Promise.Measure measure) {
        return prediction.promises().stream()
                .filter(promise -> promise.measure() == measure)
                .findFirst();
    }

    /** By which part of itself the promise is better. */
    private static double gain(Promise mine, Promise other) {
        double ratio = mine.promised() / Math.max(1e-9, other.promised());
        return mine.measure() == Promise.Measure.FINISH ? 1 / ratio - 1 : ratio - 1;
    }

    private String speed(Prediction prediction, Promise mine, Promise other) {
        String measure =
                switch (mine.measure()) {
                    case AVERAGE -> "measure.average";
                    case LOW -> "measure.low";
                    case FINISH -> "measure.finish";
                };
        return words.text(
                "trade.need",
                prediction.workload().title() + ", " + words.text(measure),
                speed(mine),
                speed(other));
    }

    private String speed(Promise promise) {
        return promise.measure() == Promise.Measure.FINISH
                ? words.quantity(1, promise.promised(), "s")
                : words.number(1, promise.promised());
    }

    private Optional<String> quiet(Audit mine, Audit other) {
        boolean quieter = loadDba(other) - loadDba(mine) > LEVEL_DBA;
        return quieter ? Optional.of(levels(mine, other)) : Optional.empty();
    }

    private String levels(Audit mine, Audit other) {
        return words.text(
                "trade.quiet",
                words.quantity(1, loadDba(mine), "dB(A)"),
                words.quantity(1, loadDba(other), "dB(A)"));
    }

    private static double loadDba(Audit audit) {
        return audit.figures().orElseThrow().load().levelDba();
    }

    private Optional<String> energy(Audit mine, Audit other) {
        boolean less = yearKwh(mine) < yearKwh(other) * (1 - ENERGY);
        return less ? Optional.of(energies(mine, other)) : Optional.empty();
    }

    private String energies(Audit mine, Audit other) {
        return words.text(
                "trade.energy",
                words.quantity(0, yearKwh(mine), "kWh"),
                words.quantity(0, yearKwh(other), "kWh"));
    }

    private static double yearKwh(Audit audit) {
        return audit.figures().orElseThrow().power().kwhPerYear();
    }

    private List<String> goals(Audit mine, Audit other, int sign) {
        List<String> lines = new ArrayList<>();
        for (GoalScore score : mine.goals()) {
            int there =
                    other.goals().stream()
                            .filter(each -> each.goal().equals(score.goal()))
                            .mapToInt(GoalScore::tenThousandths)
                            .findFirst()
                            .orElse(score.tenThousandths());
            boolean noticed = sign * (score.tenThousandths() - there) >= GOAL_TEN_THOUSANDTHS;
            if (TOLD.contains(score.goal()) && noticed) {
                lines.add(
                        words.text(
                                "trade." + score.goal(),
                                words.number(0, score.tenThousandths() / 100.0),
                                words.number(0, there / 100.0)));
            }
        }
        return lines;
    }

    /** Which slots are filled otherwise than in another build. */
    List<String> changes(Build mine, Build other) {
        List<String> changes = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            String place = words.text("slot." + slot.word());
            if (!same(mine, other, slot)) {
                changes.add(change(mine, other, slot, place));
            }
        }
        return changes;
    }

    private String change(Build mine, Build other, Slot slot, String place) {
        if (!other.has(slot)) {
            return words.text("slider.added", place, name(mine, slot));
        }
        return mine.has(slot)
                ? words.text("slider.change", place, name(mine, slot), name(other, slot))
                : words.text("slider.dropped", place, name(other, slot));
    }

    private static String name(Build build, Slot slot) {
        int pieces = build.pieces(slot);
        return (pieces > 1 ? pieces + " x " : "") + build.part(slot).name();
    }

    /** Whether a slot is filled alike in two builds. */
    static boolean same(Build mine, Build other, Slot slot) {
        boolean bothFilled = mine.has(slot) && other.has(slot);
        return mine.pieces(slot) == other.pieces(slot)
                && (!bothFilled || mine.part(slot).id().equals(other.part(slot).id()));
    }
}
