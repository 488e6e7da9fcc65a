package rigbrief.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.intake.Levels.Smoothness;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.Slot;

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
        List<String> makers) {

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

    /** The sheet for a catalogue. */
    public static FormSheet of(Catalogue catalogue) {
        List<Title> games = new ArrayList<>();
        List<Title> tasks = new ArrayList<>();
        List<Title> rooms = new ArrayList<>();
        for (Workload workload : catalogue.workloads()) {
            if (workload instanceof FrameRate game) {
                games.add(game(game));
            } else if (workload instanceof TaskTime task) {
                tasks.add(plain(task, UsualTime.of(task, catalogue)));
            } else if (workload instanceof Capacity room) {
                rooms.add(plain(room, ""));
            }
        }
        return new FormSheet(
                games,
                tasks,
                rooms,
                smoothnesses(),
                loudnesses(),
                standing(),
                sizeOptions(),
                owned(catalogue),
                PartSteps.makers(catalogue));
    }

    private static Title game(FrameRate game) {
        String cap =
                game.engineCapFps().isPresent()
                        ? Entries.plain(BigDecimal.valueOf(game.engineCapFps().getAsDouble()))
                        : "";
        return new Title(
                game.id(),
                game.title(),
                WorkloadSteps.meaning(game),
                game.referencePreset(),
                cap,
                List.copyOf(game.presets().keySet()),
                game.rays().size() > 1 ? List.copyOf(game.rays().keySet()) : List.of(),
                List.copyOf(game.upscaling().keySet()));
    }

    private static Title plain(Workload workload, String usual) {
        return new Title(
                workload.id(),
                workload.title(),
                WorkloadSteps.meaning(workload),
                usual,
                "",
                List.of(),
                List.of(),
                List.of());
    }

    private static List<Option> smoothnesses() {
        List<Option> options = new ArrayList<>();
        for (Choice choice : Levels.smoothness()) {
            String figure = "";
            for (Smoothness level : Levels.SMOOTHNESS) {
                if (level.word().equals(choice.word())) {
                    figure = level.averageFps() + "/" + Smoothness.low(level.averageFps());
                }
            }
            options.add(option(choice, figure));
        }
        return options;
    }

    private static List<Option> loudnesses() {
        List<Option> options = new ArrayList<>();
        for (Choice choice : Levels.loudness()) {
            String figure = "";
            for (Levels.Loudness level : Levels.LOUDNESS) {
                figure = level.word().equals(choice.word()) ? level.dba() + "" : figure;
            }
            options.add(option(choice, figure));
        }
        return options;
    }

    private static List<Option> standing() {
        return LookSteps.PLACES.stream()
                .map(
                        choice ->
                                option(
                                        choice,
                                        Entries.plain(
                                                BigDecimal.valueOf(
                                                        LookSteps.metres(choice.word())))))
                .toList();
    }

    private static List<Option> sizeOptions() {
        List<Option> options = new ArrayList<>();
        for (Choice choice : Levels.sizes()) {
            String figure = "";
            for (Levels.Size size : Levels.SIZES) {
                figure = size.word().equals(choice.word()) ? size.litres() + "" : figure;
            }
            options.add(option(choice, figure));
        }
        return options;
    }

    private static Option option(Choice choice, String figure) {
        return new Option(choice.word(), choice.label(), choice.meaning(), figure);
    }

    /** Each part with the first slot of its kind. */
    private static List<Option> owned(Catalogue catalogue) {
        List<Option> options = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            if (slot != Slot.SECOND_DRIVE) {
                for (Part part : catalogue.parts(slot.kind())) {
                    options.add(new Option(part.id(), part.name(), kind(slot.kind()), slot.word()));
                }
            }
        }
        return options;
    }

    /** What a kind of part is called by who does not know them. */
    private static String kind(Kind kind) {
        return switch (kind) {
            case PROCESSOR -> "Processors: what reckons";
            case BOARD -> "Boards: what everything plugs into";
            case MEMORY -> "Memory: the desk top to work on";
            case GRAPHICS -> "Graphics cards: what draws pictures";
            case DRIVE -> "Drives: where files are kept";
            case SUPPLY -> "Power supplies";
            case COOLER -> "Coolers for the processor";
            case CASE -> "Cases: the box around everything";
            case FAN -> "Fans";
            case WIRELESS -> "Wi-Fi: network without a cable";
            case BRACE -> "Braces that hold up a heavy card";
            case CABLES -> "Cables";
            case SYSTEM -> "Operating systems";
            case DISPLAY -> "Screens";
        };
    }

    /** Lights. */
    public List<Choice> lighting() {
        return Levels.LIGHTING;
    }

    /** Colours. */
    public List<Choice> colours() {
        return Levels.COLOURS;
    }

    /** Side panels. */
    public List<Choice> sides() {
        return Levels.SIDES;
    }

    /** Pictures that screens show. */
    public List<Choice> pictures() {
        return Levels.PICTURES;
    }

    /** Refresh rates. */
    public List<Choice> refresh() {
        return Levels.REFRESH;
    }

    /** Sockets of a screen. */
    public List<Choice> inputs() {
        return Levels.INPUTS;
    }

    /** Room for files. */
    public List<Choice> storage() {
        return Levels.STORAGE;
    }

    /** Wireless network. */
    public List<Choice> wireless() {
        return Levels.WIRELESS;
    }

    /** Sockets on the front. */
    public List<Choice> frontPorts() {
        return Levels.FRONT_PORTS;
    }

    /** Operating system. */
    public List<Choice> system() {
        return Levels.SYSTEM;
    }

    /** What may come first. */
    public List<Choice> goals() {
        return Levels.GOALS;
    }
}
