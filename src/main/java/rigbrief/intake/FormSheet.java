package rigbrief.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.intake.Levels.Smoothness;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.wording.Phrase;
import rigbrief.wording.Texts;

/**
 * What a form offers: the same scales and choices that the interview offers, with the figures that
 * a brief is to hold for each.
 *
 * @param games games, in the catalogue's order
 * @param tasks programs that do a job, likewise
 * @param rooms what only takes room, likewise
 * @param smoothness how smoothly a game may run; the figure is average and low, "60/40"
 * @param loudness how loud it may be; the figure is dB(A)
 * @param places where it may stand; the figure is metres
 * @param sizes how large the case may be; the figure is litres
 * @param parts parts that may be there already; the figure is the slot
 * @param makers makers that may be avoided
 * @param scales the other scales by name; they have no figures
 */
public record FormSheet(
        List<Title> games,
        List<Title> tasks,
        List<Title> rooms,
        List<Option> smoothness,
        List<Option> loudness,
        List<Option> places,
        List<Option> sizes,
        List<Option> parts,
        List<String> makers,
        Map<String, List<Option>> scales) {

    /**
     * One thing to choose.
     *
     * @param word how it is kept
     * @param label what it is called
     * @param meaning in everyday words
     * @param figure what the brief holds for it; empty for nothing
     */
    public record Option(String word, String label, String meaning, String figure) {}

    /**
     * A workload.
     *
     * @param id id
     * @param title title
     * @param meaning what it is, in a few words
     * @param usual the usual preset, or the usual time of a job
     * @param cap most pictures a second; empty without a cap
     * @param presets presets, plainest first
     * @param rays ray-tracing steps, off among them; empty where there is but off
     * @param upscaling upscaling steps; empty where there are none
     */
    public record Title(
            String id,
            String title,
            String meaning,
            String usual,
            String cap,
            List<String> presets,
            List<String> rays,
            List<String> upscaling) {}

    /** The sheet for a catalogue, in a language. */
    public static FormSheet of(Catalogue catalogue, Texts texts) {
        List<Title> games = new ArrayList<>();
        List<Title> tasks = new ArrayList<>();
        List<Title> rooms = new ArrayList<>();
        for (Workload workload : catalogue.workloads()) {
            if (workload instanceof FrameRate game) {
                games.add(game(game, texts));
            } else if (workload instanceof TaskTime task) {
                tasks.add(plain(task, usual(task, catalogue, texts), texts));
            } else if (workload instanceof Capacity room) {
                rooms.add(plain(room, "", texts));
            }
        }
        return new FormSheet(
                games,
                tasks,
                rooms,
                smoothnesses(texts),
                loudnesses(texts),
                standing(texts),
                sizes(texts),
                owned(catalogue, texts),
                PartSteps.makers(catalogue),
                scales(texts));
    }

    private static String usual(TaskTime task, Catalogue catalogue, Texts texts) {
        String usual = UsualTime.of(task, catalogue);
        return usual.equals(Levels.ANY) ? texts.text("word.any") : usual;
    }

    private static Title game(FrameRate game, Texts texts) {
        String cap =
                game.engineCapFps().isPresent()
                        ? Entries.plain(BigDecimal.valueOf(game.engineCapFps().getAsDouble()))
                        : "";
        return new Title(
                game.id(),
                game.title(),
                texts.say(WorkloadSteps.meaning(game)),
                game.referencePreset(),
                cap,
                List.copyOf(game.presets().keySet()),
                game.rays().size() > 1 ? List.copyOf(game.rays().keySet()) : List.of(),
                List.copyOf(game.upscaling().keySet()));
    }

    private static Title plain(Workload workload, String usual, Texts texts) {
        return new Title(
                workload.id(),
                workload.title(),
                texts.say(WorkloadSteps.meaning(workload)),
                usual,
                "",
                List.of(),
                List.of(),
                List.of());
    }

    private static List<Option> smoothnesses(Texts texts) {
        List<Option> options = new ArrayList<>();
        for (Choice choice : Levels.smoothness()) {
            String figure = "";
            for (Smoothness level : Levels.SMOOTHNESS) {
                if (level.word().equals(choice.word())) {
                    figure = level.averageFps() + "/" + Smoothness.low(level.averageFps());
                }
            }
            options.add(option(choice, figure, texts));
        }
        return options;
    }

    private static List<Option> loudnesses(Texts texts) {
        List<Option> options = new ArrayList<>();
        for (Choice choice : Levels.loudness()) {
            String figure = "";
            for (Levels.Loudness level : Levels.LOUDNESS) {
                figure = level.word().equals(choice.word()) ? level.dba() + "" : figure;
            }
            options.add(option(choice, figure, texts));
        }
        return options;
    }

    private static List<Option> standing(Texts texts) {
        return LookSteps.PLACES.stream()
                .map(
                        choice ->
                                option(
                                        choice,
                                        Entries.plain(
                                                BigDecimal.valueOf(
                                                        LookSteps.metres(choice.word()))),
                                        texts))
                .toList();
    }

    private static List<Option> sizes(Texts texts) {
        List<Option> options = new ArrayList<>();
        for (Choice choice : Levels.sizes()) {
            String figure = "";
            for (Levels.Size size : Levels.SIZES) {
                figure = size.word().equals(choice.word()) ? size.litres() + "" : figure;
            }
            options.add(option(choice, figure, texts));
        }
        return options;
    }

    private static Option option(Choice choice, String figure, Texts texts) {
        return new Option(
                choice.word(), texts.say(choice.label()), texts.say(choice.meaning()), figure);
    }

    /** The scales whose words the brief holds as they are, by their names in the page. */
    private static Map<String, List<Option>> scales(Texts texts) {
        return Map.of(
                "lights", options(Levels.LIGHTING, texts),
                "colours", options(Levels.COLOURS, texts),
                "sides", options(Levels.SIDES, texts),
                "sockets", options(Levels.INPUTS, texts),
                "wireless", options(Levels.WIRELESS, texts),
                "front", options(Levels.FRONT_PORTS, texts),
                "system", options(Levels.SYSTEM, texts),
                "goals", options(Levels.GOALS, texts));
    }

    private static List<Option> options(List<Choice> choices, Texts texts) {
        return choices.stream().map(choice -> option(choice, "", texts)).toList();
    }

    /** Each part with the first slot of its kind. */
    private static List<Option> owned(Catalogue catalogue, Texts texts) {
        List<Option> options = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            if (slot != Slot.SECOND_DRIVE) {
                for (Part part : catalogue.parts(slot.kind())) {
                    options.add(
                            new Option(
                                    part.id(),
                                    part.name(),
                                    texts.say(Phrase.of("form.kind." + slot.kind().word())),
                                    slot.word()));
                }
            }
        }
        return options;
    }
}
