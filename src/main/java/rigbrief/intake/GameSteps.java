package rigbrief.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigbrief.brief.Screen;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.FrameRate;
import rigbrief.intake.Levels.Smoothness;
import rigbrief.wording.Phrase;

/** How smoothly each game has to run, and with how fine a picture. */
final class GameSteps {
    static final String TUNING = "picture-settings";

    private static final String USUAL = "usual";
    private static final String EACH = "each";
    private static final String OFF = "off";
    private static final int LEAST_FPS = 10;
    private static final int MOST_FPS = 1_000;
    private static final Pattern RATES = Pattern.compile("([0-9]{1,4})(?:\\s*/\\s*([0-9]{1,4}))?");

    private GameSteps() {}

    /** The games among the workloads chosen. */
    static List<FrameRate> games(Sheet sheet) {
        List<FrameRate> games = new ArrayList<>();
        for (WorkloadNeed need : sheet.brief().workloads()) {
            if (sheet.catalogue().workload(need.use()).orElse(null) instanceof FrameRate game) {
                games.add(game);
            }
        }
        return games;
    }

    /** Whether each game's picture is set on its own. */
    static List<Question> tuning(Sheet sheet) {
        if (games(sheet).isEmpty()) {
            return List.of();
        }
        return List.of(
                Asking.about("pictures", TUNING)
                        .choices(List.of(Choice.of(TUNING, USUAL), Choice.of(TUNING, EACH)))
                        .usual(USUAL)
                        .readChoice(choice -> sheet.brief()));
    }

    /** The questions about each game, a step per game. */
    static List<Question> pictures(Sheet sheet) {
        List<Question> questions = new ArrayList<>();
        if (!sheet.answered(TUNING, EACH)) {
            return questions;
        }
        for (FrameRate game : games(sheet)) {
            if (game.presets().size() > 1) {
                questions.add(preset(sheet, game));
            }
        }
        return questions;
    }

    static List<Question> rays(Sheet sheet) {
        List<Question> questions = new ArrayList<>();
        for (FrameRate game : games(sheet)) {
            if (sheet.answered(TUNING, EACH) && game.rays().size() > 1) {
                questions.add(rays(sheet, game));
            }
        }
        return questions;
    }

    static List<Question> upscaling(Sheet sheet) {
        List<Question> questions = new ArrayList<>();
        for (FrameRate game : games(sheet)) {
            if (sheet.answered(TUNING, EACH) && !game.upscaling().isEmpty()) {
                questions.add(upscaling(sheet, game));
            }
        }
        return questions;
    }

    private static Question preset(Sheet sheet, FrameRate game) {
        return Asking.aboutTitle(game.title(), "detail " + game.id())
                .ask(game.title())
                .choices(Levels.steps(game.presets().keySet(), game.referencePreset()))
                .usual(game.referencePreset())
                .read(
                        typed -> {
                            Choice choice =
                                    Entries.choice(
                                            Levels.steps(game.presets().keySet(), ""), typed);
                            double work = game.presets().get(choice.word()).graphics();
                            Settings old = WorkloadSteps.need(sheet, game.id()).settings();
                            return set(
                                    sheet,
                                    game,
                                    choice.word(),
                                    new Settings(
                                            Optional.of(choice.word()),
                                            old.rays(),
                                            old.upscaling()),
                                    work == 1
                                            ? Phrase.of("then.detail.usual")
                                            : Phrase.of("then.detail", Math.round(100 * work)));
                        });
    }

    private static Question rays(Sheet sheet, FrameRate game) {
        return Asking.aboutTitle(game.title(), "rays " + game.id())
                .ask(game.title())
                .choices(Levels.steps(game.rays().keySet(), OFF))
                .usual(OFF)
                .read(
                        typed -> {
                            Choice choice =
                                    Entries.choice(Levels.steps(game.rays().keySet(), ""), typed);
                            Settings old = WorkloadSteps.need(sheet, game.id()).settings();
                            boolean off = choice.word().equals(OFF);
                            return set(
                                    sheet,
                                    game,
                                    choice.word(),
                                    new Settings(
                                            old.preset(),
                                            off ? Optional.empty() : Optional.of(choice.word()),
                                            old.upscaling()),
                                    off ? Phrase.of("then.rays.off") : Phrase.of("then.rays"));
                        });
    }

    private static Question upscaling(Sheet sheet, FrameRate game) {
        List<Choice> offered = new ArrayList<>();
        offered.add(Choice.of("upscaling", Entries.NONE));
        game.upscaling()
                .forEach(
                        (name, ratio) ->
                                offered.add(
                                        Choice.called(
                                                name,
                                                Phrase.of(
                                                        "pick.upscaling.means",
                                                        Math.round(100 * ratio * ratio)))));
        return Asking.aboutTitle(game.title(), "upscaling " + game.id())
                .ask(game.title())
                .choices(offered)
                .usual(Entries.NONE)
                .read(
                        typed -> {
                            Choice choice = Entries.choice(offered, typed);
                            Settings old = WorkloadSteps.need(sheet, game.id()).settings();
                            boolean none = choice.word().equals(Entries.NONE);
                            return set(
                                    sheet,
                                    game,
                                    choice.word(),
                                    new Settings(
                                            old.preset(),
                                            old.rays(),
                                            none ? Optional.empty() : Optional.of(choice.word())),
                                    none
                                            ? Phrase.of("then.upscaling.none")
                                            : Phrase.of("then.upscaling"));
                        });
    }

    private static Answer set(
            Sheet sheet, FrameRate game, String text, Settings settings, Phrase consequence) {
        WorkloadNeed old = WorkloadSteps.need(sheet, game.id());
        return new Answer(
                text,
                WorkloadSteps.with(
                        sheet,
                        new WorkloadNeed(
                                old.use(), old.must(), old.wish(), old.weight(), settings)),
                consequence);
    }

    /** How smoothly each game has to run. */
    static List<Question> smoothness(Sheet sheet) {
        List<Question> questions = new ArrayList<>();
        games(sheet).forEach(game -> questions.add(smoothness(sheet, game)));
        return questions;
    }

    private static Question smoothness(Sheet sheet, FrameRate game) {
        return Asking.aboutTitle(game.title(), "smoothness " + game.id())
                .ask(game.title())
                .choices(Levels.smoothness())
                .usual("smooth")
                .read(typed -> smooth(sheet, game, typed));
    }

    private static Answer smooth(Sheet sheet, FrameRate game, String typed) throws NotUnderstood {
        Matcher rates = RATES.matcher(typed.strip());
        boolean own = rates.matches() && Integer.parseInt(rates.group(1)) >= LEAST_FPS;
        if (own) {
            int average = Entries.whole(rates.group(1), LEAST_FPS, MOST_FPS);
            int low =
                    rates.group(2) == null
                            ? Smoothness.low(average)
                            : Entries.whole(rates.group(2), 1, average);
            return demanded(sheet, game, average + "/" + low, average, low);
        }
        Choice choice = Entries.choice(Levels.smoothness(), typed);
        for (Smoothness level : Levels.SMOOTHNESS) {
            if (level.word().equals(choice.word())) {
                return demanded(
                        sheet,
                        game,
                        level.word(),
                        level.averageFps(),
                        Smoothness.low(level.averageFps()));
            }
        }
        return new Answer(choice.word(), sheet.brief(), Phrase.of("then.smoothness.any"));
    }

    private static Answer demanded(Sheet sheet, FrameRate game, String text, int average, int low)
            throws NotUnderstood {
        if (game.engineCapFps().isPresent() && average > game.engineCapFps().getAsDouble()) {
            throw new NotUnderstood(
                    Integer.toString(average),
                    Phrase.of("expected.rate", (int) game.engineCapFps().getAsDouble()),
                    Phrase.of("advice.rate"));
        }
        WorkloadNeed old = WorkloadSteps.need(sheet, game.id());
        Target must =
                new Target(
                        OptionalDouble.of(average), OptionalDouble.of(low), OptionalDouble.empty());
        return new Answer(
                text,
                WorkloadSteps.with(
                        sheet,
                        new WorkloadNeed(
                                old.use(),
                                Optional.of(must),
                                old.wish(),
                                old.weight(),
                                old.settings())),
                Phrase.of("then.smoothness", average, low, beyondScreen(sheet, average)));
    }

    private static Phrase beyondScreen(Sheet sheet, int average) {
        Optional<Screen> screen = sheet.brief().screen();
        return screen.isPresent() && average > screen.get().refreshHz()
                ? Phrase.of("then.smoothness.screen", screen.get().refreshHz())
                : Phrase.NONE;
    }
}
