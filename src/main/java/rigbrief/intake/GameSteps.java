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
                Asking.about("Pictures of the games", TUNING)
                        .ask(
                                "Shall the games look as they usually do, or do you"
                                        + " want to say it for each?")
                        .explain(
                                "A game can draw plainer or richer pictures: detail,"
                                        + " true reflections, or fewer points enlarged. Richer"
                                        + " pictures need a dearer graphics card, the part that"
                                        + " draws them. Whoever does not know leaves it as usual.")
                        .choices(
                                List.of(
                                        new Choice(
                                                USUAL,
                                                "as usual",
                                                "Each game draws at the detail its"
                                                        + " catalogue entry was measured with."),
                                        new Choice(
                                                EACH,
                                                "say it for each",
                                                "You will be asked about each game.")))
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
        return Asking.about(game.title(), "detail " + game.id())
                .ask("How much detail shall " + game.title() + " draw?")
                .explain(
                        "These are the game's own steps, plainest first. More detail"
                                + " means more to draw in each picture.")
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
                                            ? "That is the usual work for each picture."
                                            : "Each picture is about %d %% of the usual work."
                                                    .formatted(Math.round(100 * work)));
                        });
    }

    private static Question rays(Sheet sheet, FrameRate game) {
        return Asking.about(game.title(), "rays " + game.id())
                .ask(
                        "Shall "
                                + game.title()
                                + " trace rays of light, for true reflections and shadows?")
                .explain(
                        "Ray tracing follows light through the scene. It looks real in"
                                + " water, glass and lamplight, and it is the hardest work there"
                                + " is for a graphics card.")
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
                                    off
                                            ? "No rays are traced."
                                            : "Only graphics cards, the parts that draw"
                                                    + " the pictures, which trace rays can be"
                                                    + " chosen.");
                        });
    }

    private static Question upscaling(Sheet sheet, FrameRate game) {
        List<Choice> offered = new ArrayList<>();
        offered.add(new Choice(Entries.NONE, "no", "every point of the screen is drawn"));
        game.upscaling()
                .forEach(
                        (name, ratio) ->
                                offered.add(
                                        new Choice(
                                                name,
                                                name,
                                                "draws %d of 100 points, guesses the rest"
                                                        .formatted(
                                                                Math.round(100 * ratio * ratio)))));
        return Asking.about(game.title(), "upscaling " + game.id())
                .ask("May " + game.title() + " draw fewer points and enlarge the picture?")
                .explain(
                        "This is called upscaling. The picture is drawn smaller and"
                                + " enlarged cleverly: a little softer, a lot less work.")
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
                                            ? "Every point is drawn."
                                            : "A cheaper graphics card, the part that"
                                                    + " draws the pictures, will do for the same"
                                                    + " smoothness.");
                        });
    }

    private static Answer set(
            Sheet sheet, FrameRate game, String text, Settings settings, String consequence) {
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
        return Asking.about(game.title(), "smoothness " + game.id())
                .ask(
                        "How smoothly must "
                                + game.title()
                                + " run, at the least? Pictures drawn each second; a"
                                + " number of your own may be typed too.")
                .explain(
                        "A game draws many pictures each second; more of them look"
                                + " smoother. The number is an average. In the slowest moments"
                                + " two thirds of it are asked for, the \"1 % low\": only one"
                                + " picture in a hundred takes longer. To set both, type them as"
                                + " 72/50.")
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
        return new Answer(
                choice.word(), sheet.brief(), "Nothing is promised about its smoothness.");
    }

    private static Answer demanded(Sheet sheet, FrameRate game, String text, int average, int low)
            throws NotUnderstood {
        if (game.engineCapFps().isPresent() && average > game.engineCapFps().getAsDouble()) {
            throw new NotUnderstood(
                    Integer.toString(average),
                    "at most %d pictures a second, all that this game ever draws"
                            .formatted((int) game.engineCapFps().getAsDouble()),
                    "choose fewer");
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
                "At least %d pictures a second on average, %d in the slowest moments.%s"
                        .formatted(average, low, beyondScreen(sheet, average)));
    }

    private static String beyondScreen(Sheet sheet, int average) {
        Optional<Screen> screen = sheet.brief().screen();
        return screen.isPresent() && average > screen.get().refreshHz()
                ? " The screen shows %d of them at most.".formatted(screen.get().refreshHz())
                : "";
    }
}
