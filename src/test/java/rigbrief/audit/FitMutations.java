package rigbrief.audit;

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
import static rigbrief.part.Slot.FANS;
import static rigbrief.part.Slot.GRAPHICS;
import static rigbrief.part.Slot.MEMORY;
import static rigbrief.part.Slot.PROCESSOR;
import static rigbrief.part.Slot.SUPPLY;
import static rigbrief.part.Slot.SYSTEM;
import static rigbrief.part.Slot.WIRELESS;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief.Headroom;
import rigbrief.brief.Screen;
import rigbrief.part.Port;
import rigbrief.part.Resolution;

/**
 * Mutations after which parts do not work together any more.
 *
 * <p>Each figure is chosen against the figure on the other side in the sample's cells, which is
 * named beside it where the words don't.
 */
final class FitMutations {
    static final List<Mutation> ALL =
            List.of(
                    on("complete", "no processor", POTTER, it -> it.without(PROCESSOR)),
                    on("complete", "no board", POTTER, it -> it.without(BOARD)),
                    on("complete", "no memory", POTTER, it -> it.without(MEMORY)),
                    on("complete", "no drive", POTTER, it -> it.without(DRIVE)),
                    on("complete", "no supply", POTTER, it -> it.without(SUPPLY)),
                    on("complete", "no case", POTTER, it -> it.without(CASE)),
                    on(
                            "complete",
                            "no cooler, and none in the processor's box",
                            DRAWING_OFFICE,
                            it -> it.without(COOLER)),
                    cell("socket", POTTER, BOARD, "socket", "K880"),
                    cell("socket", POTTER, PROCESSOR, "socket", "K880"),
                    cell("family", POTTER, BOARD, "families", "merrowby-rigaudon@8.05"),
                    // Shipped with 8.05, and no way to update it without a processor.
                    cell("family", POTTER, BOARD, "families", "merrowby-courante@8.06"),
                    cell("board-size", POTTER, CASE, "boards", "mini-itx"),
                    cell("board-size", LIVING_ROOM, BOARD, "form_factor", "micro-atx"),
                    cell("memory-type", POTTER, MEMORY, "type", "ddr4"),
                    cell("memory-type", POTTER, MEMORY, "form", "sodimm"),
                    cell("memory-type", POTTER, PROCESSOR, "memory", "ddr4@3200"),
                    cell("memory-slots", POTTER, MEMORY, "modules", "3"),
                    on("memory-slots", "a second kit", POTTER, it -> it.pieces(MEMORY, 2)),
                    cell("memory-slots", POTTER, MEMORY, "module_gb", "64"),
                    cell("memory-slots", POTTER, PROCESSOR, "memory_max_gb", "31"),
                    // The card is 248 mm long and 125 mm tall, and covers three slots.
                    cell("card-length", POTTER, CASE, "graphics_length_mm", "247"),
                    // 287 mm less a radiator of 27 mm with fans of 25 mm leave 235 mm, which the
                    // card takes; one millimetre less does not.
                    on(
                            "card-length",
                            "the radiator at the front",
                            DRAWING_OFFICE,
                            it ->
                                    it.cell(CASE, "radiators", "front:240@40")
                                            .cell(CASE, "graphics_length_mm", "286")),
                    cell("card-height", POTTER, CASE, "graphics_height_mm", "124"),
                    cell("card-slots", WHITE_POTTER, CASE, "expansion_slots", "2"),
                    // From the first of three openings on.
                    cell("card-slots", LIVING_ROOM, GRAPHICS, "slots", "4"),
                    // 132 mm under a side panel that leaves 162 mm.
                    cell("cooler-height", POTTER, COOLER, "height_mm", "163"),
                    // Raised by 6 mm over modules of 52 mm, 46 mm being free: 138 mm in all.
                    on(
                            "cooler-height",
                            "the fan raised over tall memory",
                            POTTER,
                            it ->
                                    it.cell(MEMORY, "height_mm", "52")
                                            .cell(COOLER, "fan_raise_mm", "10")
                                            .cell(CASE, "cooler_height_mm", "137")),
                    cell("cooler-socket", POTTER, COOLER, "sockets", "K880;K1320"),
                    cell("cooler-heat", POTTER, COOLER, "resistance_kw", "1.5"),
                    cell("cooler-heat", POTTER, GRAPHICS, "board_power_w", "1000"),
                    on("cooler-heat", "no cooler at all", DRAWING_OFFICE, it -> it.without(COOLER)),
                    cell("memory-under-cooler", POTTER, MEMORY, "height_mm", "47"),
                    cell("radiator-place", DRAWING_OFFICE, CASE, "radiators", "none"),
                    cell("radiator-place", DRAWING_OFFICE, COOLER, "radiator_mm", "360"),
                    cell("radiator-place", DRAWING_OFFICE, COOLER, "thickness_mm", "41"),
                    cell("supply-form", LIVING_ROOM, SUPPLY, "form", "atx"),
                    cell("supply-form", POTTER, CASE, "supplies", "sfx;sfx-l"),
                    cell("supply-length", POTTER, SUPPLY, "length_mm", "201"),
                    cell("supply-length", EDITOR, CASE, "supply_length_with_cage_mm", "149"),
                    // 260 W of card and 117 W of processor are 377 W before anything else.
                    cell("supply-load", POTTER, SUPPLY, "watts", "370"),
                    on(
                            "supply-load",
                            "a tenth of the rating in sustained use",
                            POTTER,
                            it -> it.asked((draft, was) -> draft.headroom(new Headroom(10, 1, 5)))),
                    // 309 W times 3 is 927 W of card alone, twice what 450 W are.
                    on(
                            "supply-peak",
                            "high peaks on an older supply",
                            WHITE_POTTER,
                            it ->
                                    it.cell(GRAPHICS, "peak_factor", "3")
                                            .cell(SUPPLY, "watts", "450")
                                            .cell(SUPPLY, "guide", "atx2")),
                    plugs(POTTER, "eps8:1;8pin:2;sata:6;4pin:2"),
                    plugs(POTTER, "atx24:1;8pin:2;sata:6;4pin:2"),
                    plugs(POTTER, "atx24:1;eps8:1;8pin:1;sata:6;4pin:2"),
                    plugs(WHITE_POTTER, "atx24:1;eps8:2;8pin:4;sata:8;4pin:3"),
                    plugs(EDITOR, "atx24:1;eps8:2;8pin:4;12v2x6:1;4pin:3"),
                    on(
                            "supply-connectors",
                            "fans on a 4-pin plug that is not there",
                            POTTER,
                            it ->
                                    it.cell(FANS, "connector", "4pin")
                                            .cell(
                                                    SUPPLY,
                                                    "connectors",
                                                    "atx24:1;eps8:1;8pin:2;sata:6")),
                    // The processor draws 117 W for good.
                    cell("board-power", POTTER, BOARD, "processor_power_w", "116"),
                    cell("drive-place", POTTER, BOARD, "m2", "none"),
                    cell("drive-place", POTTER, DRIVE, "form", "m2-22110"),
                    cell("drive-place", POTTER, DRIVE, "interface", "sata"),
                    cell("drive-place", EDITOR, CASE, "bays_35", "0"),
                    cell("drive-place", EDITOR, BOARD, "sata_ports", "0"),
                    on(
                            "drive-shares",
                            "the only M.2 slot takes the only SATA port",
                            EDITOR,
                            it ->
                                    it.cell(BOARD, "m2", "2280:gen5x4")
                                            .cell(BOARD, "sata_ports", "1")
                                            .cell(BOARD, "shares", "m2-1 takes sata-1")),
                    on(
                            "drive-shares",
                            "the only M.2 slot takes the card's slot",
                            POTTER,
                            it ->
                                    it.cell(BOARD, "m2", "2280:gen4x4")
                                            .cell(BOARD, "shares", "m2-1 takes slot-1")),
                    cell("slot-place", POTTER, BOARD, "slots", "x1:gen3:1;x1:gen3:4"),
                    cell("slot-place", POTTER, BOARD, "slots", "x16:gen4:1;x1:gen3:3"),
                    cell("slot-place", POTTER, WIRELESS, "slot", "m2-e"),
                    cell("fan-place", POTTER, FANS, "size_mm", "200"),
                    // Six places, three of them taken.
                    on("fan-place", "too many fans", POTTER, it -> it.pieces(FANS, 4)),
                    // Three fans come with the case, and one is added: two to a header at most.
                    cell("fan-headers", POTTER, BOARD, "fan_headers", "1"),
                    on(
                            "fan-headers",
                            "two thirsty fans on one header of 1000 mA",
                            WHITE_POTTER,
                            it ->
                                    it.cell(BOARD, "fan_headers", "1")
                                            .cell(FANS, "current_ma", "501")),
                    cell("front-ports", EDITOR, BOARD, "front_usb", "usb2:2;usb3:1;audio:1"),
                    cell("front-ports", EDITOR, CASE, "front_usb", "usb3:1;audio:1"),
                    on("picture", "nothing draws", POTTER, it -> it.without(GRAPHICS)),
                    cell("picture", SCHOOL, BOARD, "outputs", "none"),
                    cell("picture", DRAWING_OFFICE, GRAPHICS, "outputs", "dp1.4"),
                    // 3440 x 1440 at 100 Hz and 24 bits a pixel are 11.9 Gbit/s without blanking;
                    // HDMI 1.4 carries 8.16 Gbit/s (3 lanes of 3.4 Gbit/s, 8 bits of 10).
                    cell("display-link", POTTER, GRAPHICS, "outputs", "hdmi1.4"),
                    on(
                            "display-link",
                            "7680 x 4320 at 240 Hz by HDMI 1.4",
                            POTTER,
                            it -> it.asked((draft, was) -> draft.screen(hugeScreen()))),
                    on(
                            "display-link",
                            "a display and a board with no standard in common",
                            SCHOOL,
                            it ->
                                    it.cell(DISPLAY, "inputs", "dp1.2")
                                            .cell(BOARD, "outputs", "hdmi1.4")),
                    cell("system", DRAWING_OFFICE, BOARD, "features", "tpm2"),
                    cell("system", DRAWING_OFFICE, SYSTEM, "requires", "secure-boot;abacus"),
                    // What follows can't break; the levels are in the test.
                    cell("memory-rate", KEEPER, PROCESSOR, "memory", "ddr5@5200"),
                    cell("memory-rate", KEEPER, BOARD, "memory_max_mts", "2:5200"),
                    cell("brace", POTTER, GRAPHICS, "mass_g", "1501"),
                    cell("brace", POTTER, GRAPHICS, "length_mm", "321"),
                    on(
                            "brace",
                            "a brace for 1800 g under a card of 1801 g",
                            POTTER,
                            it ->
                                    it.cell(GRAPHICS, "mass_g", "1801")
                                            .put(BRACE, "propstead-crutch")),
                    cell("supply-quality", WHITE_POTTER, SUPPLY, "efficiency", "none"),
                    cell("supply-quality", WHITE_POTTER, SUPPLY, "warranty_years", "4"));

    private FitMutations() {}

    private static Mutation plugs(ProposedMachine from, String left) {
        return cell("supply-connectors", from, SUPPLY, "connectors", left);
    }

    private static Optional<Screen> hugeScreen() {
        List<Port> inputs = List.of(new Port("hdmi1.4", 1));
        Resolution resolution = new Resolution(7680, 4320);
        return Optional.of(new Screen(resolution, 240, 8, inputs, 1, false, Optional.empty()));
    }
}
