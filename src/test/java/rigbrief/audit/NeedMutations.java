package rigbrief.audit;

import static rigbrief.audit.Mutation.asked;
import static rigbrief.audit.Mutation.cell;
import static rigbrief.audit.Mutation.on;
import static rigbrief.audit.ProposedMachine.DRAWING_OFFICE;
import static rigbrief.audit.ProposedMachine.EDITOR;
import static rigbrief.audit.ProposedMachine.KEEPER;
import static rigbrief.audit.ProposedMachine.LIVING_ROOM;
import static rigbrief.audit.ProposedMachine.POTTER;
import static rigbrief.audit.ProposedMachine.SCHOOL;
import static rigbrief.audit.ProposedMachine.WHITE_POTTER;
import static rigbrief.part.Slot.BOARD;
import static rigbrief.part.Slot.BRACE;
import static rigbrief.part.Slot.CASE;
import static rigbrief.part.Slot.COOLER;
import static rigbrief.part.Slot.DISPLAY;
import static rigbrief.part.Slot.DRIVE;
import static rigbrief.part.Slot.GRAPHICS;
import static rigbrief.part.Slot.MEMORY;
import static rigbrief.part.Slot.PROCESSOR;
import static rigbrief.part.Slot.SECOND_DRIVE;
import static rigbrief.part.Slot.SYSTEM;
import static rigbrief.part.Slot.WIRELESS;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rigbrief.audit.ProposedMachine.Request;
import rigbrief.brief.Brief.Avoid;
import rigbrief.brief.Brief.Buying;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Looks;
import rigbrief.brief.Brief.MemoryNeed;
import rigbrief.brief.Brief.Noise;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.brief.Brief.StorageNeed;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.Brief.Wireless;
import rigbrief.brief.Screen;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.part.Colour;
import rigbrief.part.SidePanel;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Money;

/** Mutations after which a machine is not what its brief asks for any more. */
final class NeedMutations {
    private static final OptionalDouble NOT_ASKED = OptionalDouble.empty();
    private static final Optional<Length> ANY_LENGTH = Optional.empty();

    static final List<Mutation> ALL =
            List.of(
                    asked("ceiling", "for a hundredth of the money", POTTER, ceiling(24_50)),
                    asked("promise", "an average beyond reach", POTTER, must(9_999, 0, 0)),
                    asked("promise", "lows beyond reach", POTTER, must(0, 9_999, 0)),
                    asked("promise", "a task done in no time", SCHOOL, must(0, 0, 0.01)),
                    cell("promise", POTTER, GRAPHICS, "tflops", "0.5"),
                    cell("promise", SCHOOL, PROCESSOR, "rate_all", "20"),
                    cell("graphics-memory", POTTER, GRAPHICS, "vram_gb", "1"),
                    cell("memory-enough", POTTER, MEMORY, "module_gb", "8"),
                    asked("memory-enough", "33 GB", POTTER, memory(33, false)),
                    cell("memory-ecc", DRAWING_OFFICE, MEMORY, "ecc", "no"),
                    asked("memory-ecc", "error correction", POTTER, memory(32, true)),
                    cell("storage-enough", POTTER, DRIVE, "capacity_gb", "999"),
                    // 1000 GB beside 4000 GB.
                    asked("storage-enough", "5001 GB", EDITOR, storage(5_001)),
                    on(
                            "storage-enough",
                            "without the second drive",
                            EDITOR,
                            it -> it.without(SECOND_DRIVE)),
                    cell("lighting", POTTER, MEMORY, "lighting", "fixed"),
                    cell("lighting", POTTER, CASE, "lighting", "fixed"),
                    asked("colour", "white all over", POTTER, looks(Colour.WHITE)),
                    on(
                            "colour",
                            "black memory behind glass among white",
                            WHITE_POTTER,
                            it -> it.asked(looks(Colour.WHITE)).cell(MEMORY, "colour", "black")),
                    cell("side", LIVING_ROOM, CASE, "side", "tinted"),
                    asked("side", "a closed side", POTTER, looks(SidePanel.SOLID)),
                    cell("noise", POTTER, GRAPHICS, "load_dba", "60"),
                    cell("noise", POTTER, COOLER, "max_dba", "65"),
                    asked(
                            "noise",
                            "5 dB(A) at most",
                            POTTER,
                            (draft, was) -> draft.noise(noise(5))),
                    // 215 x 450 x 435 mm are 42.1 litres.
                    asked("size", "42 l at most", POTTER, size(OptionalInt.of(420))),
                    asked(
                            "size",
                            "449 mm high at most",
                            POTTER,
                            size(mm(449), ANY_LENGTH, ANY_LENGTH)),
                    asked(
                            "size",
                            "214 mm wide at most",
                            POTTER,
                            size(ANY_LENGTH, mm(214), ANY_LENGTH)),
                    asked(
                            "size",
                            "434 mm deep at most",
                            POTTER,
                            size(ANY_LENGTH, ANY_LENGTH, mm(434))),
                    cell("size", LIVING_ROOM, CASE, "depth_mm", "400"),
                    // The case alone has 6332 g.
                    asked("mass", "6.3 kg at most", POTTER, mass(6_300)),
                    on(
                            "mass",
                            "a heavy card",
                            POTTER,
                            it -> it.asked(mass(20_000)).cell(GRAPHICS, "mass_g", "15000")),
                    on("wireless", "no card", POTTER, it -> it.without(WIRELESS)),
                    cell("wireless", POTTER, WIRELESS, "standard", "wifi5"),
                    cell("wireless", LIVING_ROOM, BOARD, "wireless", "none"),
                    cell("wireless", POTTER, BOARD, "lan_gbps", "0"),
                    asked("wireless", "the newest", POTTER, wireless(WirelessStandard.WIFI7)),
                    cell("avoid", DRAWING_OFFICE, DRIVE, "maker", "Tressadine"),
                    asked("avoid", "a maker", POTTER, avoid(List.of("Coffermere"), List.of())),
                    asked(
                            "avoid",
                            "a part",
                            POTTER,
                            avoid(List.of(), List.of("brackenfin-leaf-120"))),
                    asked(
                            "in-stock",
                            "a million of them",
                            POTTER,
                            (d, was) -> d.quantity(1_000_000)),
                    cell("in-stock", POTTER, MEMORY, "id", "offered-by-nobody"),
                    asked("in-stock", "today", POTTER, within(0)),
                    // Quaymark sells neither the supply nor the case.
                    asked("in-stock", "from one shop", POTTER, from("quaymark")),
                    // None of the shops offers all ten parts.
                    asked("suppliers", "from one of all shops", POTTER, fromAtMost(1)),
                    on("kept", "another case", KEEPER, it -> it.put(CASE, "coffermere-bin-40")),
                    on(
                            "kept",
                            "another drive",
                            KEEPER,
                            it -> it.put(DRIVE, "slatecombe-chip-1-tb")),
                    on("system-licence", "none", DRAWING_OFFICE, it -> it.without(SYSTEM)),
                    on(
                            "system-licence",
                            "another than the one named",
                            DRAWING_OFFICE,
                            it -> it.put(SYSTEM, "pennyroyal-hearthside-7-home")),
                    on("display-wanted", "none", SCHOOL, it -> it.without(DISPLAY)),
                    on("display-wanted", "two for one", SCHOOL, it -> it.pieces(DISPLAY, 2)),
                    cell("display-wanted", SCHOOL, DISPLAY, "resolution", "1280x720"),
                    cell("display-wanted", SCHOOL, DISPLAY, "refresh_hz", "74"),
                    cell("display-wanted", SCHOOL, DISPLAY, "bits_per_colour", "6"),
                    asked(
                            "display-wanted",
                            "another by name",
                            SCHOOL,
                            display("murmurel-slate-24-white")),
                    on(
                            "display-wanted",
                            "one that is not asked for",
                            POTTER,
                            it -> it.put(DISPLAY, "glimmerhythe-pane-24")),
                    // What follows can't break; the levels are in the test.
                    on(
                            "idle-wireless",
                            "a card beside a board that has it",
                            LIVING_ROOM,
                            it -> it.put(WIRELESS, "hobbinfold-tether-6")),
                    on(
                            "idle-wireless",
                            "a card nobody asked for",
                            KEEPER,
                            it -> it.put(WIRELESS, "hobbinfold-tether-6")),
                    // The card has 1039 g and 248 mm.
                    on(
                            "idle-brace",
                            "a brace under a light card",
                            POTTER,
                            it -> it.put(BRACE, "propstead-crutch")),
                    on(
                            "idle-brace",
                            "a brace in a case with a bracket",
                            WHITE_POTTER,
                            it -> it.put(BRACE, "propstead-crutch-white")),
                    on(
                            "idle-licence",
                            "a licence nobody asked for",
                            POTTER,
                            it -> it.put(SYSTEM, "pennyroyal-hearthside-7-home")),
                    on(
                            "idle-drive",
                            "a second drive beside one that is enough",
                            POTTER,
                            it -> it.put(SECOND_DRIVE, "slatecombe-chip-1-tb")));

    private NeedMutations() {}

    private static Request ceiling(long minor) {
        return (draft, was) -> draft.ceiling(Money.ofMinor(minor, was.currency()));
    }

    /** The first workload has to do this; 0 is not asked. */
    private static Request must(double averageFps, double lowFps, double finishS) {
        Target target = new Target(figure(averageFps), figure(lowFps), figure(finishS));
        return (draft, was) -> {
            WorkloadNeed first = was.workloads().get(0);
            draft.workloads(
                    List.of(
                            new WorkloadNeed(
                                    first.use(),
                                    Optional.of(target),
                                    first.wish(),
                                    first.weight(),
                                    first.settings())));
        };
    }

    private static OptionalDouble figure(double figure) {
        return figure == 0 ? NOT_ASKED : OptionalDouble.of(figure);
    }

    private static Request memory(int atLeastGb, boolean ecc) {
        return (draft, was) -> draft.memory(new MemoryNeed(atLeastGb, ecc));
    }

    private static Request storage(int atLeastGb) {
        return (draft, was) -> draft.storage(new StorageNeed(atLeastGb, List.of(), 1));
    }

    private static Request looks(Colour colour) {
        return (draft, was) ->
                draft.looks(
                        new Looks(
                                LightingNeed.ANY,
                                Optional.of(colour),
                                Strength.MUST,
                                Optional.empty()));
    }

    private static Request looks(SidePanel side) {
        return (draft, was) ->
                draft.looks(
                        new Looks(
                                LightingNeed.ANY,
                                Optional.empty(),
                                Strength.NONE,
                                Optional.of(side)));
    }

    private static Noise noise(int mustDba) {
        return new Noise(OptionalInt.of(mustDba), OptionalInt.empty(), 0.8);
    }

    private static Optional<Length> mm(int millimetres) {
        return Optional.of(Length.mm(millimetres));
    }

    private static Request size(OptionalInt decilitres) {
        return size(new SizeNeed(decilitres, ANY_LENGTH, ANY_LENGTH, ANY_LENGTH, Optional.empty()));
    }

    private static Request size(
            Optional<Length> height, Optional<Length> width, Optional<Length> depth) {
        return size(new SizeNeed(OptionalInt.empty(), height, width, depth, Optional.empty()));
    }

    private static Request mass(int grams) {
        return size(
                new SizeNeed(
                        OptionalInt.empty(),
                        ANY_LENGTH,
                        ANY_LENGTH,
                        ANY_LENGTH,
                        Optional.of(Mass.g(grams))));
    }

    private static Request size(SizeNeed size) {
        return (draft, was) -> draft.size(size);
    }

    private static Request wireless(WirelessStandard atLeast) {
        return (draft, was) -> draft.wireless(new Wireless(Strength.MUST, atLeast));
    }

    private static Request avoid(List<String> makers, List<String> parts) {
        return (draft, was) -> draft.avoid(new Avoid(makers, parts));
    }

    private static Request within(int days) {
        return buying(new Buying(List.of(), OptionalInt.empty(), OptionalInt.of(days)));
    }

    private static Request from(String supplier) {
        return buying(new Buying(List.of(supplier), OptionalInt.empty(), OptionalInt.empty()));
    }

    private static Request fromAtMost(int suppliers) {
        return buying(new Buying(List.of(), OptionalInt.of(suppliers), OptionalInt.empty()));
    }

    private static Request buying(Buying buying) {
        return (draft, was) -> draft.buying(buying);
    }

    private static Request display(String part) {
        return (draft, was) -> {
            Screen screen = was.screen().orElseThrow();
            draft.screen(
                    Optional.of(
                            new Screen(
                                    screen.resolution(),
                                    screen.refreshHz(),
                                    screen.bitsPerColour(),
                                    screen.inputs(),
                                    screen.count(),
                                    screen.buy(),
                                    Optional.of(part))));
        };
    }
}
