package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.FanPlan.Origin;
import rigbrief.build.Build;
import rigbrief.part.BoardForm;
import rigbrief.part.CardPlace;
import rigbrief.part.CoolerType;
import rigbrief.part.Place;
import rigbrief.part.Slot;

/**
 * Puts the steps at the bench in order for one build. Common practice throughout; the makers'
 * manuals go before it.
 */
final class OrderOfWork {
    private final Bench bench;
    private final Build build;
    private final List<DriveHome> drives;
    private final MemoryPlaces memory;
    private final FanPlan fans;
    private final CoolerMounting mounting;
    private final CoolerSteps cooler;
    private final List<Step> steps = new ArrayList<>();

    private OrderOfWork(Bench bench, List<DriveHome> drives, MemoryPlaces memory, FanPlan fans) {
        this.bench = bench;
        this.build = bench.build();
        this.drives = drives;
        this.memory = memory;
        this.fans = fans;
        this.mounting = CoolerMounting.of(bench);
        this.cooler = new CoolerSteps(bench, mounting);
    }

    static List<Step> of(Bench bench, List<DriveHome> drives, MemoryPlaces memory, FanPlan fans) {
        OrderOfWork work = new OrderOfWork(bench, drives, memory, fans);
        work.onTheBench();
        work.inTheCase();
        work.toTheEnd();
        return List.copyOf(work.steps);
    }

    private void onTheBench() {
        prepare();
        FirmwareStep.of(bench.it())
                .ifPresent(update -> steps.add(FirmwareWork.step(update, build)));
        processor();
        memory();
        onBoard();
        steps.addAll(cooler.onTheBench());
    }

    private void inTheCase() {
        pcCase();
        if (mounting == CoolerMounting.RADIATOR_FIRST) {
            steps.add(cooler.radiator());
        }
        addedFans();
        supply();
        bays();
        board();
        if (mounting == CoolerMounting.RADIATOR_AFTER_THE_BOARD) {
            steps.add(cooler.radiator());
        }
        steps.addAll(cooler.afterTheBoard());
    }

    private void toTheEnd() {
        leads();
        cards();
        check();
        start();
        close();
    }

    private void add(String id, String title, List<String> actions) {
        steps.add(new Step(id, title, actions));
    }

    private void prepare() {
        List<String> actions = new ArrayList<>();
        actions.add(
                "Clear a table, not a carpet. Tick every part off against the order list, and copy the"
                        + " serial numbers to the handover sheet before they vanish in the case.");
        if (!TightSpot.of(bench.audit()).isEmpty()) {
            actions.add(
                    "Measure the tight spots listed above now, while everything can still go back to the"
                            + " shop.");
        }
        actions.add("Have the manuals of board, case and cooler open: they go before this plan.");
        add("prepare", "Get ready", actions);
    }

    private void processor() {
        add(
                "processor",
                "Fit the processor",
                List.of(
                        "Lay the board, %s, on its box. Open the socket's lever, lower the processor, %s, straight in with the marked corners together, no force, and close the lever."
                                .formatted(build.board().name(), build.processor().name()),
                        "Touch neither its contacts nor the socket's. The plastic lid of the socket, if"
                                + " there is one, comes off by itself; keep it for the guarantee."));
    }

    private void memory() {
        List<Integer> slots = memory.slots();
        String where =
                slots.size() == memory.boardSlots()
                        ? "fill all %d slots.".formatted(slots.size())
                        : "use %s %s of %d, counted from the processor, unless the board's manual names %s first."
                                .formatted(
                                        slots.size() == 1 ? "slot" : "slots",
                                        Wording.list(slots),
                                        memory.boardSlots(),
                                        slots.size() == 1 ? "another" : "others");
        add(
                "memory",
                "Fit the memory",
                List.of(
                        build.memory().name() + ": " + where,
                        "Open the catches, turn the notch the right way round, press on both ends until"
                                + " the catches click by themselves."));
    }

    private void onBoard() {
        List<String> actions = new ArrayList<>();
        for (DriveHome home : drives) {
            if (home.m2().isPresent()) {
                actions.add(M2Work.action(home));
            }
        }
        if (!actions.isEmpty()) {
            actions.add(M2Work.HEAT_SPREADER);
        }
        if (build.has(Slot.WIRELESS) && build.wireless().place() == CardPlace.M2_E) {
            actions.add(
                    "Put %s into the short M.2 slot for wireless cards and snap its two thin aerial leads on."
                            .formatted(build.wireless().name()));
        }
        if (!actions.isEmpty()) {
            add("on-board", "Fit what lies flat on the board", actions);
        }
    }

    private void pcCase() {
        List<String> actions = new ArrayList<>();
        actions.add(
                "%s: take both side panels off, lay the case down, take out the box of screws."
                        .formatted(build.pcCase().name()));
        actions.add(standoffs(build.board().form()));
        actions.add(
                "If the board's metal plate for the sockets behind is loose, press it into its opening"
                        + " from inside.");
        if (build.has(Slot.GRAPHICS)) {
            int first = bench.it().layout().cardFirst();
            int last = bench.it().layout().cardLast();
            actions.add(
                    first == last
                            ? "Take out the cover of opening %d behind, counted from the processor's end."
                                    .formatted(first)
                            : "Take out the covers of openings %d to %d behind, counted from the processor's end."
                                    .formatted(first, last));
        }
        add("case", "Make the case ready", actions);
    }

    private static String standoffs(BoardForm form) {
        String size =
                switch (form) {
                    case MINI_ITX -> "Mini-ITX board (4 holes)";
                    case MICRO_ATX -> "microATX board";
                    case ATX -> "ATX board (9 holes)";
                    case E_ATX -> "E-ATX board";
                };
        return "Set the stand-offs for this %s: one under each hole of the board, and none where it has no hole, or it may short."
                .formatted(size);
    }

    private void addedFans() {
        List<String> actions = new ArrayList<>();
        for (FanPlan.PlacedFan group : fans.fans()) {
            if (group.origin() == Origin.ADDED) {
                actions.add(
                        "%s, %s at the %s, blowing %s."
                                .formatted(
                                        build.fan().name(),
                                        Wording.counted(group.count(), "fan"),
                                        group.place().word(),
                                        group.direction() == FanPlan.Direction.IN ? "in" : "out"));
            }
        }
        if (!actions.isEmpty()) {
            actions.add(
                    "Air leaves a fan on the side of its struts; many frames carry an arrow. Turn the lead"
                            + " towards the board.");
            add("fans", "Fit the fans that were bought", actions);
        }
    }

    private void supply() {
        List<String> actions = new ArrayList<>();
        actions.add(build.supply().name() + ". " + Connections.supplyLeads(build));
        actions.add(
                "Turn the supply's own fan towards the grille of the case, screw it in with four screws,"
                        + " and draw its leads through the openings nearest to where they go.");
        actions.add(
                "If it has a voltage switch, set it to %d V."
                        .formatted(bench.brief().place().mainsV()));
        add("supply", "Fit the supply", actions);
    }

    private void bays() {
        List<String> actions = new ArrayList<>();
        for (DriveHome home : drives) {
            if (home.cabled()) {
                actions.add(
                        switch (home.place()) {
                            case BAY_25 -> home.drive().name() + ": in a 2.5-inch bay.";
                            case BAY_35 ->
                                    home.drive().name()
                                            + ": in a 3.5-inch bay, on rubber if the case has any.";
                            case BAY_35_ON_ADAPTER ->
                                    home.drive().name() + ": on an adapter in a 3.5-inch bay.";
                            case M2, NONE -> home.drive().name() + ": no bay is left for it.";
                        });
            }
        }
        if (!actions.isEmpty()) {
            add("bays", "Fit the drives in their bays", actions);
        }
    }

    private void board() {
        add(
                "board",
                "Put the board into the case",
                List.of(
                        "Lower it in at a slant, sockets first, until the holes lie over the stand-offs;"
                                + " start all screws, then tighten them hand-tight crosswise.",
                        "Plug in the processor's power lead at the upper edge now: later it is hard to"
                                + " reach."));
    }

    private void leads() {
        List<String> actions = new ArrayList<>();
        if (build.has(Slot.CABLES)) {
            actions.add(
                    "%s: between the supply's own leads and the sockets, as extensions. If the set goes straight into the supply, it must be made for this very supply."
                            .formatted(build.cables().name()));
        }
        actions.addAll(
                List.of(
                        "Work through the list of connections below from top to bottom, all but the card's"
                                + " power and the screens. Tick each one off.",
                        "Lead them behind the board's tray. Nothing may touch a fan."));
        add("leads", "Plug in the leads", actions);
    }

    private void cards() {
        List<String> actions = new ArrayList<>();
        if (build.has(Slot.WIRELESS) && build.wireless().place() == CardPlace.X1) {
            int position = bench.it().layout().wirelessPosition();
            actions.add(
                    "%s: into the slot at opening %d; take its cover out first."
                            .formatted(build.wireless().name(), position));
        }
        if (build.has(Slot.GRAPHICS)) {
            graphics(actions);
        }
        if (!actions.isEmpty()) {
            add("cards", "Fit the cards", actions);
        }
    }

    private void graphics(List<String> actions) {
        actions.add(
                "%s: into the long slot at opening %d, until its catch clicks; screw its bracket down, then plug in its power."
                        .formatted(build.graphics().name(), bench.it().layout().cardFirst()));
        if (build.has(Slot.BRACE)) {
            actions.add(
                    "%s: under the card’s free end, without lifting it."
                            .formatted(build.brace().name()));
        } else if (build.pcCase().cardBracket()) {
            actions.add("Set the case's own bracket under the card's free end.");
        }
    }

    private void check() {
        List<String> actions = new ArrayList<>();
        actions.add("Count the screws: none may be loose in the case. Shake it gently.");
        actions.add(
                "Look once more: processor power in, board power in, cooler's fan plugged, films off, "
                        + (build.has(Slot.GRAPHICS) ? "card's power in, " : "")
                        + "no lead in a fan.");
        add("check", "Check before power", actions);
    }

    private void start() {
        List<String> actions = new ArrayList<>();
        if (build.has(Slot.DISPLAY)) {
            actions.add(
                    "Set up %s%s; take the films off."
                            .formatted(
                                    build.pieces(Slot.DISPLAY) > 1
                                            ? build.pieces(Slot.DISPLAY) + " x "
                                            : "",
                                    build.display().name()));
        }
        actions.addAll(
                List.of(
                        "Plug in screen, keyboard and mouse, then the mains lead; switch the supply on and"
                                + " press the power button.",
                        "Go through the first-boot list below before you close the case."));
        add("first-start", "First start, with the panel off", actions);
    }

    private void close() {
        List<String> actions = new ArrayList<>();
        actions.add("Shut down, mains lead out. Tie the leads, close both panels.");
        if (build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID) {
            actions.add("Check the tubes: no kink, and no fan touches them.");
        }
        actions.add("Put what is left of screws, leads and brackets into one bag for the client.");
        if (bench.it().layout().radiator().filter(Place.TOP::equals).isPresent()) {
            actions.add("Leave a hand's breadth free above the case.");
        }
        add("close", "Close the case", actions);
    }
}
