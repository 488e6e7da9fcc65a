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
        connections.add(
                Lead.MAINS,
                bench.say("plug.wall"),
                bench.say("plug.supply"),
                1,
                bench.say("plug.wall.remark"));
        return List.copyOf(connections.list);
    }

    private void add(Lead lead, String from, String to, int count, String remark) {
        list.add(new Connection(lead, from, to, count, remark));
    }

    private void boardPower() {
        add(
                Lead.BOARD_POWER,
                bench.say("plug.supply"),
                bench.say("plug.board"),
                1,
                bench.say("plug.clicks"));
    }

    private void processorPower() {
        if (!(build.board().processorPlugs() instanceof Fact.Stated<Tally<Plug>> stated)) {
            add(
                    Lead.PROCESSOR_POWER_8,
                    bench.say("plug.supply"),
                    bench.say("plug.beside"),
                    0,
                    bench.say("plug.beside.unknown"));
            return;
        }
        Tally<Plug> sockets = stated.value();
        String to = bench.say("plug.beside");
        power(Lead.PROCESSOR_POWER_8, to, sockets.of(Plug.EPS8), bench.say("plug.not-card"));
        power(Lead.PROCESSOR_POWER_4, to, sockets.of(Plug.EPS4), bench.say("plug.half"));
    }

    private void cardPower() {
        if (!build.has(Slot.GRAPHICS)) {
            return;
        }
        if (!(build.graphics().plugs() instanceof Fact.Stated<Tally<Plug>> stated)) {
            add(
                    Lead.CARD_POWER_8,
                    bench.say("plug.supply"),
                    bench.say("plug.card"),
                    0,
                    bench.say("plug.card.unknown"));
            return;
        }
        Tally<Plug> sockets = stated.value();
        power(
                Lead.CARD_POWER_8,
                bench.say("plug.card"),
                sockets.of(Plug.PCIE8),
                sockets.of(Plug.PCIE8) > 1 ? bench.say("plug.own-lead") : "");
        power(
                Lead.CARD_POWER_6,
                bench.say("plug.card"),
                sockets.of(Plug.PCIE6),
                bench.say("plug.two-off"));
        power(
                Lead.CARD_POWER_16,
                bench.say("plug.card"),
                sockets.of(Plug.PCIE16),
                bench.say("plug.home"));
    }

    private void power(Lead lead, String to, int count, String remark) {
        if (count > 0) {
            add(lead, bench.say("plug.supply"), to, count, remark);
        }
    }

    private void cooler() {
        if (!build.has(Slot.COOLER)) {
            add(Lead.COOLER_FAN, bench.say("plug.boxed"), bench.say("plug.fan-header"), 1, "");
            return;
        }
        int fans = build.cooler().fans();
        boolean liquid = build.cooler().type() == CoolerType.LIQUID;
        if (fans > 0) {
            add(
                    Lead.COOLER_FAN,
                    liquid ? bench.say("plug.radiator") : bench.say("plug.cooler"),
                    bench.say("plug.fan-header"),
                    fans,
                    fans > 1 ? bench.say("plug.together") : "");
        }
        if (liquid) {
            add(
                    Lead.PUMP,
                    bench.say("plug.cooler"),
                    bench.say("plug.pump-header"),
                    1,
                    bench.say("plug.full-speed"));
        }
    }

    private void fans(FanHeaders headers) {
        for (FanHeaders.HeaderUse use : headers.uses()) {
            String split = use.fans().size() > 1 ? bench.say("plug.split") : "";
            add(
                    Lead.CASE_FAN,
                    String.join(bench.say("plug.and"), use.fans()),
                    bench.say("plug.case-header") + use.number(),
                    use.fans().size(),
                    split + use.current(bench.texts()));
        }
        for (String fan : headers.onSupply()) {
            add(
                    Lead.PERIPHERAL_POWER,
                    bench.say("plug.supply"),
                    fan,
                    1,
                    bench.say("plug.runs-full"));
        }
        if (headers.unfed() > 0) {
            add(
                    Lead.CASE_FAN,
                    headers.unfed() + bench.say("plug.more"),
                    bench.say("plug.no-header"),
                    0,
                    bench.say("plug.hub"));
        }
    }

    private void drives(List<DriveHome> drives) {
        for (DriveHome home : drives) {
            if (home.cabled()) {
                String name = bench.say("slot.lower." + home.slot().word());
                boolean placed = home.sataPort().isPresent();
                add(
                        Lead.DRIVE_DATA,
                        name,
                        placed
                                ? bench.say("plug.sata") + home.sataPort().getAsInt()
                                : bench.say("plug.no-sata"),
                        placed ? 1 : 0,
                        "");
                add(Lead.DRIVE_POWER, bench.say("plug.supply"), name, 1, "");
            }
        }
    }

    private void front() {
        Fact<Tally<FrontPort>> ports = build.pcCase().frontPorts();
        Fact<Tally<FrontPort>> headers = build.board().frontPorts();
        for (Map.Entry<FrontPort, Integer> port : ports.or(Tally.none()).counts().entrySet()) {
            int there = headers.or(Tally.none()).of(port.getKey());
            int plugged = headers.stated() ? Math.min(port.getValue(), there) : port.getValue();
            String to = bench.say("plug.its", bench.say("port.name." + port.getKey().word()));
            if (plugged > 0) {
                add(lead(port.getKey()), bench.say("plug.front"), to, plugged, "");
            }
            if (plugged < port.getValue()) {
                add(
                        lead(port.getKey()),
                        bench.say("plug.front"),
                        bench.say("plug.no-front-header"),
                        0,
                        bench.say("plug.dead", port.getValue() - plugged));
            }
        }
        if (!ports.stated()) {
            add(
                    Lead.FRONT_USB3,
                    bench.say("plug.front"),
                    bench.say("plug.board"),
                    0,
                    bench.say("plug.front.unknown"));
        }
        add(
                Lead.FRONT_SWITCHES,
                bench.say("plug.front"),
                bench.say("plug.pins"),
                1,
                bench.say("plug.pins.remark"));
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
                        bench.say("slot.lower." + slot.word()),
                        there ? bench.say("plug.light") : bench.say("plug.no-light"),
                        there ? 1 : 0,
                        there ? bench.say("plug.light.remark") : "");
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
                    bench.say("plug.wireless"),
                    slot ? bench.say("plug.own-sockets") : bench.say("plug.bracket"),
                    2,
                    slot ? bench.say("plug.bluetooth") : bench.say("plug.snap"));
        } else if (own) {
            add(
                    Lead.AERIAL,
                    bench.say("plug.box"),
                    bench.say("plug.aerials"),
                    2,
                    bench.say("plug.hand"));
        }
    }

    private void screens(List<ScreenPlug> screens) {
        for (ScreenPlug screen : screens) {
            add(
                    Lead.SCREEN,
                    bench.say(
                            screen.card() ? "plug.card-output" : "plug.board-output",
                            PortNames.of(screen.output())),
                    screen.input()
                            .map(
                                    in ->
                                            bench.say(
                                                    "plug.screen-input",
                                                    screen.screen(),
                                                    PortNames.of(in)))
                            .orElse(bench.say("plug.screen") + screen.screen()),
                    1,
                    screen.card() ? bench.say("plug.not-board") : "");
        }
    }

    /** What to know about the leads of the supply as a whole. */
    static String supplyLeads(Bench bench) {
        return bench.build().supply().modular() == Modularity.NONE
                ? bench.say("plug.fixed")
                : bench.say("plug.modular");
    }
}
