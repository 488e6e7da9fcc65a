package rigbrief.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigbrief.brief.Brief;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.wording.Phrase;

/** How long each job may take, and whether money left over may make everything faster. */
final class TaskSteps {
    private static final String FASTER = "faster-if-money-is-left";
    private static final String YES = "yes";
    private static final String NO = "no";
    private static final int WHOLE_FROM_S = 10;
    private static final int MOST_FIGURE = 999_999;
    private static final int MOST_S = 3_600_000;

    /** How much more than the must is wished for: half as much again. Common practice. */
    private static final double WISHED_FACTOR = 1.5;

    private static final Pattern DURATION =
            Pattern.compile("([0-9]{1,6}(?:[.,][0-9]{1,2})?)\\s*([a-z]*)");

    private TaskSteps() {}

    static List<Question> durations(Sheet sheet) {
        List<Question> questions = new ArrayList<>();
        for (WorkloadNeed need : sheet.brief().workloads()) {
            if (sheet.catalogue().workload(need.use()).orElse(null) instanceof TaskTime task) {
                questions.add(duration(sheet, task));
            }
        }
        return questions;
    }

    private static Question duration(Sheet sheet, TaskTime task) {
        String usual = UsualTime.of(task, sheet.catalogue());
        return Asking.aboutTitle(task.title(), "time " + task.id())
                .ask(task.title(), task.job())
                .why(told(usual))
                .usual(usual)
                .read(typed -> within(sheet, task, typed));
    }

    private static Answer within(Sheet sheet, TaskTime task, String typed) throws NotUnderstood {
        if (Entries.means(Levels.ANY, typed)) {
            return new Answer(Levels.ANY, sheet.brief(), Phrase.of("then.time.any"));
        }
        Matcher matcher = DURATION.matcher(typed.strip().toLowerCase(Locale.ROOT));
        int factor = matcher.matches() ? factor(matcher.group(2)) : 0;
        if (factor == 0) {
            throw refused(typed);
        }
        BigDecimal figure = Entries.number(matcher.group(1), 0, MOST_FIGURE, 2);
        double seconds = figure.multiply(BigDecimal.valueOf(factor)).doubleValue();
        if (figure.signum() == 0 || seconds > MOST_S) {
            throw refused(typed);
        }
        String unit = factor == 1 ? "s" : factor == 60 ? "m" : "h";
        WorkloadNeed old = WorkloadSteps.need(sheet, task.id());
        return new Answer(
                Entries.plain(figure) + unit,
                WorkloadSteps.with(
                        sheet,
                        new WorkloadNeed(
                                old.use(),
                                Optional.of(finish(seconds)),
                                old.wish(),
                                old.weight(),
                                old.settings())),
                Phrase.of("then.time", Plain.duration(seconds)));
    }

    /** A usual time, or what stands for none. */
    private static Phrase told(String usual) {
        return usual.equals(Levels.ANY) ? Phrase.of("word." + usual) : Phrase.data(usual);
    }

    private static NotUnderstood refused(String typed) {
        return NotUnderstood.of(typed.strip(), "time");
    }

    private static int factor(String unit) {
        return switch (unit) {
            case "s", "sec", "second", "seconds", "sek", "sekunde", "sekunden" -> 1;
            case "m", "min", "minute", "minutes", "minuten" -> 60;
            case "h", "hour", "hours", "std", "stunde", "stunden" -> 3_600;
            default -> 0;
        };
    }

    private static Target finish(double seconds) {
        return new Target(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(seconds));
    }

    /** Whether speed beyond what must be is wished for. */
    static List<Question> faster(Sheet sheet) {
        if (sheet.brief().workloads().stream().allMatch(need -> need.must().isEmpty())) {
            return List.of();
        }
        return List.of(
                Asking.about("beyond", FASTER)
                        .choices(List.of(Choice.of(FASTER, YES), Choice.of(FASTER, NO)))
                        .usual(YES)
                        .readChoice(
                                choice ->
                                        choice.word().equals(YES) ? wished(sheet) : sheet.brief()));
    }

    private static Brief wished(Sheet sheet) {
        return sheet.draft()
                .workloads(
                        sheet.brief().workloads().stream()
                                .map(need -> wished(need, sheet.catalogue()))
                                .toList())
                .toBrief();
    }

    private static WorkloadNeed wished(WorkloadNeed need, Catalogue catalogue) {
        if (need.must().isEmpty()) {
            return need;
        }
        Target must = need.must().get();
        Target wish =
                must.finishWithinS().isPresent()
                        ? finish(sooner(must.finishWithinS().getAsDouble()))
                        : new Target(
                                OptionalDouble.of(more(need.use(), must, catalogue)),
                                OptionalDouble.empty(),
                                OptionalDouble.empty());
        return new WorkloadNeed(
                need.use(), need.must(), Optional.of(wish), need.weight(), need.settings());
    }

    private static double more(String use, Target must, Catalogue catalogue) {
        double wished = Math.round(must.averageFps().getAsDouble() * WISHED_FACTOR);
        return catalogue.workload(use).orElse(null) instanceof FrameRate game
                ? Math.min(wished, game.engineCapFps().orElse(wished))
                : wished;
    }

    /** Whole seconds where that is fine enough, hundredths otherwise. */
    private static double sooner(double seconds) {
        double wished = seconds / WISHED_FACTOR;
        return wished >= WHOLE_FROM_S
                ? Math.round(wished)
                : Math.max(1, Math.round(100 * wished)) / 100.0;
    }
}
