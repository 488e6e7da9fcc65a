package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rigbrief.build.Build;
import rigbrief.part.CardPlace;
import rigbrief.part.CoolerType;
import rigbrief.part.Fact;
import rigbrief.part.FrontPort;
import rigbrief.part.Lighting;
import rigbrief.part.Modularity;
import rigbrief.part.Part;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Tally;
import rigbrief.part.WirelessStandard;

/**
 * Lists every connection of a build: power, data, fans, front of the case, screens.
 *
 * <p>Power plugs are counted as rule {@code supply-connectors} counts them: an 8-pin processor plug
 * parts in two and feeds a 4-pin socket, an 8-pin card plug leaves two pins off and feeds a 6-pin
 * one.
 */
final class Connections {
    private final Bench bench;
    private final Build build;
    private final List<Connection> list = new ArrayList<>();

    private Connections(Bench bench) {
        this.bench = bench;
        this.build = bench.build();
    }

    /** The connections in the order in which they are made. */
    static List<Connection> of(
            Bench bench, List<DriveHome> drives, FanHeaders headers, List<ScreenPlug> screens) {
        Connections connections = new Connections(bench);
        connections.processorPower();
        connections.boardPower();
        connections.cooler();
        connections.fans(headers);
        connections.drives(drives);
        connections.front();
        connections.lighting();
        connections.cardPower();
        connections.wireless();
        connections.screens(screens);
        connections.add(Lead.MAINS, "wall socket", "supply", 1, "last of all");
        return List.copyOf(connections.list);
    }

    private void add(Lead lead, String from, String to, int count, String remark) {
        list.add(new Connection(lead, from, to, count, remark));
    }

    private void boardPower() {
        add(Lead.BOARD_POWER, "supply", "board", 1, "until its catch clicks");
    }

    private void processorPower() {
        if (!(build.board().processorPlugs() instanceof Fact.Stated<Tally<Plug>> stated)) {
            add(
                    Lead.PROCESSOR_POWER_8,
                    "supply",
                    "board, beside the processor",
                    0,
                    "number and shape not stated: see the board's manual");
            return;
        }
        Tally<Plug> sockets = stated.value();
        String to = "board, beside the processor";
        power(Lead.PROCESSOR_POWER_8, to, sockets.of(Plug.EPS8), "not the card's 8-pin plug");
        power(
                Lead.PROCESSOR_POWER_4,
                to,
                sockets.of(Plug.EPS4),
                "half of an 8-pin plug that parts in two does it");
    }

    private void cardPower() {
        if (!build.has(Slot.GRAPHICS)) {
            return;
        }
        if (!(build.graphics().plugs() instanceof Fact.Stated<Tally<Plug>> stated)) {
            add(Lead.CARD_POWER_8, "supply", "graphics card", 0, "not stated: look at the card");
            return;
        }
        Tally<Plug> sockets = stated.value();
        power(
                Lead.CARD_POWER_8,
                "graphics card",
                sockets.of(Plug.PCIE8),
                sockets.of(Plug.PCIE8) > 1 ? "a lead of its own for each socket" : "");
        power(
                Lead.CARD_POWER_6,
                "graphics card",
                sockets.of(Plug.PCIE6),
                "an 8-pin plug with two pins left off does it");
        power(
                Lead.CARD_POWER_16,
                "graphics card",
                sockets.of(Plug.PCIE16),
                "push it home until no gap is left; no bend in the first 35 mm");
    }

    private void power(Lead lead, String to, int count, String remark) {
        if (count > 0) {
            add(lead, "supply", to, count, remark);
        }
    }

    private void cooler() {
        if (!build.has(Slot.COOLER)) {
            add(Lead.COOLER_FAN, "boxed cooler", "board, processor fan header", 1, "");
            return;
        }
        int fans = build.cooler().fans();
        boolean liquid = build.cooler().type() == CoolerType.LIQUID;
        if (fans > 0) {
            add(
                    Lead.COOLER_FAN,
                    liquid ? "radiator" : "cooler",
                    "board, processor fan header",
                    fans,
                    fans > 1 ? "together, on the split lead that comes with the cooler" : "");
        }
        if (liquid) {
            add(
                    Lead.PUMP,
                    "cooler",
                    "board, pump header, or as its manual says",
                    1,
                    "at full speed at all times");
        }
    }

    private void fans(FanHeaders headers) {
        for (FanHeaders.HeaderUse use : headers.uses()) {
            String split = use.fans().size() > 1 ? "on a split lead; " : "";
            add(
                    Lead.CASE_FAN,
                    String.join(" and ", use.fans()),
                    "board, case fan header " + use.number(),
                    use.fans().size(),
                    split + use.current());
        }
        for (String fan : headers.onSupply()) {
            add(Lead.PERIPHERAL_POWER, "supply", fan, 1, "runs at full speed at all times");
        }
        if (headers.unfed() > 0) {
            add(
                    Lead.CASE_FAN,
                    headers.unfed() + " more",
                    "no header is left",
                    0,
                    "a fan hub is needed");
        }
    }

    private void drives(List<DriveHome> drives) {
        for (DriveHome home : drives) {
            if (home.cabled()) {
                String name = home.slot().word().replace('-', ' ');
                boolean placed = home.sataPort().isPresent();
                add(
                        Lead.DRIVE_DATA,
                        name,
                        placed
                                ? "board, SATA port " + home.sataPort().getAsInt()
                                : "no SATA port is left",
                        placed ? 1 : 0,
                        "");
                add(Lead.DRIVE_POWER, "supply", name, 1, "");
            }
        }
    }

    private void front() {
        Fact<Tally<FrontPort>> ports = build.pcCase().frontPorts();
        Fact<Tally<FrontPort>> headers = build.board().frontPorts();
        for (Map.Entry<FrontPort, Integer> port : ports.or(Tally.none()).counts().entrySet()) {
            int there = headers.or(Tally.none()).of(port.getKey());
            int plugged = headers.stated() ? Math.min(port.getValue(), there) : port.getValue();
            String to =
                    "board, its " + lead(port.getKey()).title().replace("front ", "") + " header";
            if (plugged > 0) {
                add(lead(port.getKey()), "case front", to, plugged, "");
            }
            if (plugged < port.getValue()) {
                add(
                        lead(port.getKey()),
                        "case front",
                        "the board has no header for it",
                        0,
                        "%s without function; tie the lead back"
                                .formatted(port.getValue() - plugged == 1 ? "port" : "ports"));
            }
        }
        if (!ports.stated()) {
            add(Lead.FRONT_USB3, "case front", "board", 0, "ports not stated: look at the case");
        }
        add(
                Lead.FRONT_SWITCHES,
                "case front",
                "board, front panel pins",
                1,
                "the board's manual shows which pin is which; lamps have a plus and a minus");
    }

    private static Lead lead(FrontPort port) {
        return switch (port) {
            case USB2 -> Lead.FRONT_USB2;
            case USB3 -> Lead.FRONT_USB3;
            case USB_C -> Lead.FRONT_USB_C;
            case AUDIO -> Lead.FRONT_AUDIO;
        };
    }

    private void lighting() {
        int headers = build.board().lightingHeaders();
        for (Slot slot : List.of(Slot.COOLER, Slot.FANS, Slot.CASE)) {
            if (build.has(slot) && lit(build.part(slot))) {
                boolean there = headers > 0;
                add(
                        Lead.LIGHTING,
                        slot.word(),
                        there ? "board, lighting header" : "the board has no lighting header",
                        there ? 1 : 0,
                        there ? "plugs of 3 and of 4 pins are not alike: see both manuals" : "");
            }
        }
    }

    private static boolean lit(Part part) {
        return part.listing().lighting() != Lighting.NONE;
    }

    private void wireless() {
        boolean own = build.board().wireless() != WirelessStandard.NONE;
        if (build.has(Slot.WIRELESS)) {
            boolean slot = build.wireless().place() == CardPlace.X1;
            add(
                    Lead.AERIAL,
                    "wireless card",
                    slot ? "its own sockets behind" : "bracket at the back of the case",
                    2,
                    slot
                            ? "if it has a USB lead for Bluetooth: to a free USB 2 header"
                            : "the thin leads snap on straight from above");
        } else if (own) {
            add(Lead.AERIAL, "board's box", "board, aerial sockets behind", 2, "hand-tight");
        }
    }

    private void screens(List<ScreenPlug> screens) {
        for (ScreenPlug screen : screens) {
            add(
                    Lead.SCREEN,
                    "%s, %s output"
                            .formatted(
                                    screen.card() ? "graphics card" : "board",
                                    PortNames.of(screen.output())),
                    screen.input()
                            .map(
                                    in ->
                                            "screen %d, %s input"
                                                    .formatted(screen.screen(), PortNames.of(in)))
                            .orElse("screen " + screen.screen()),
                    1,
                    screen.card() ? "not the board's outputs" : "");
        }
    }

    /** What to know about the leads of the supply as a whole. */
    static String supplyLeads(Build build) {
        return build.supply().modular() == Modularity.NONE
                ? "All leads are fixed to the supply; tie up those that are not used."
                : "Only plug in the leads of the list below, and only leads that came with this very"
                        + " supply: the plugs at the supply's end are not standard, and a lead of another"
                        + " supply can destroy drives, board and card.";
    }
}
