package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.FanPlan.Origin;
import rigbrief.build.Build;
import rigbrief.model.form.BoardFormat.Hole;
import rigbrief.part.BoardForm;
import rigbrief.part.CardPlace;
import rigbrief.part.CoolerType;
import rigbrief.part.Place;
import rigbrief.part.Slot;
import rigbrief.wording.Phrase;

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
                .ifPresent(update -> steps.add(FirmwareWork.step(update, bench)));
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
        actions.add(bench.say("work.ready.1"));
        if (!TightSpot.of(bench.audit()).isEmpty()) {
            actions.add(bench.say("work.ready.2"));
        }
        actions.add(bench.say("work.ready.3"));
        add("prepare", bench.say("work.ready"), actions);
    }

    private void processor() {
        add(
                "processor",
                bench.say("work.processor"),
                List.of(
                        bench.say(
                                "work.processor.1", build.board().name(), build.processor().name()),
                        bench.say("work.processor.2")));
    }

    private void memory() {
        List<Integer> slots = memory.slots();
        String where =
                slots.size() == memory.boardSlots()
                        ? bench.say("work.memory.all", slots.size())
                        : bench.say(
                                "work.memory.some",
                                slots.size(),
                                Phrase.list(slots),
                                memory.boardSlots());
        add(
                "memory",
                bench.say("work.memory"),
                List.of(build.memory().name() + ": " + where, bench.say("work.memory.press")));
    }

    private void onBoard() {
        List<String> actions = new ArrayList<>();
        for (DriveHome home : drives) {
            if (home.m2().isPresent()) {
                actions.add(M2Work.action(home, bench.texts()));
            }
        }
        if (!actions.isEmpty()) {
            actions.add(M2Work.heatSpreader(bench.texts()));
        }
        if (build.has(Slot.WIRELESS) && build.wireless().place() == CardPlace.M2_E) {
            actions.add(bench.say("work.flat.wireless", build.wireless().name()));
        }
        if (!actions.isEmpty()) {
            add("on-board", bench.say("work.flat"), actions);
        }
    }

    private void pcCase() {
        List<String> actions = new ArrayList<>();
        actions.add(bench.say("work.case.1", build.pcCase().name()));
        actions.add(standoffs(build.board().form()));
        actions.add(bench.say("work.case.2"));
        if (build.has(Slot.GRAPHICS)) {
            int first = bench.it().layout().cardFirst();
            int last = bench.it().layout().cardLast();
            actions.add(
                    first == last
                            ? bench.say("work.case.cover", first)
                            : bench.say("work.case.covers", first, last));
        }
        add("case", bench.say("work.case"), actions);
    }

    private String standoffs(BoardForm form) {
        String size =
                switch (form) {
                    case MINI_ITX -> bench.say("work.board.itx");
                    case MICRO_ATX -> bench.say("work.board.matx");
                    case ATX -> bench.say("work.board.atx");
                    case E_ATX -> bench.say("work.board.eatx");
                };
        List<Hole> holes = BoardSeat.holes(form);
        List<Hole> lacking = BoardSeat.lacking(form, build.pcCase().boards().or(List.of()));
        return bench.say("work.standoffs", size)
                + (holes.isEmpty() ? "" : bench.say("work.standoffs.holes", Phrase.list(holes)))
                + (lacking.isEmpty()
                        ? ""
                        : bench.say("work.standoffs.lacking", Phrase.list(lacking)));
    }

    private void addedFans() {
        List<String> actions = new ArrayList<>();
        for (FanPlan.PlacedFan group : fans.fans()) {
            if (group.origin() == Origin.ADDED) {
                actions.add(
                        bench.say(
                                group.direction() == FanPlan.Direction.IN
                                        ? "work.fan.in"
                                        : "work.fan.out",
                                build.fan().name(),
                                bench.say("count.fan", group.count()),
                                bench.say("place.at." + group.place().word())));
            }
        }
        if (!actions.isEmpty()) {
            actions.add(bench.say("work.fan.struts"));
            add("fans", bench.say("work.fans"), actions);
        }
    }

    private void supply() {
        List<String> actions = new ArrayList<>();
        actions.add(build.supply().name() + ". " + Connections.supplyLeads(bench));
        actions.add(bench.say("work.supply.1"));
        actions.add(bench.say("work.supply.2", bench.brief().place().mainsV()));
        add("supply", bench.say("work.supply"), actions);
    }

    private void bays() {
        List<String> actions = new ArrayList<>();
        for (DriveHome home : drives) {
            if (home.cabled()) {
                actions.add(
                        switch (home.place()) {
                            case BAY_25 -> home.drive().name() + bench.say("work.bay25");
                            case BAY_35 -> home.drive().name() + bench.say("work.bay35");
                            case BAY_35_ON_ADAPTER ->
                                    home.drive().name() + bench.say("work.bay-adapter");
                            case M2, NONE -> home.drive().name() + bench.say("work.bay-none");
                        });
            }
        }
        if (!actions.isEmpty()) {
            add("bays", bench.say("work.drives"), actions);
        }
    }

    private void board() {
        add(
                "board",
                bench.say("work.board"),
                List.of(bench.say("work.board.1"), bench.say("work.board.2")));
    }

    private void leads() {
        List<String> actions = new ArrayList<>();
        if (build.has(Slot.CABLES)) {
            actions.add(bench.say("work.leads.cables", build.cables().name()));
        }
        actions.addAll(List.of(bench.say("work.leads.list"), bench.say("work.leads.behind")));
        add("leads", bench.say("work.leads"), actions);
    }

    private void cards() {
        List<String> actions = new ArrayList<>();
        if (build.has(Slot.WIRELESS) && build.wireless().place() == CardPlace.X1) {
            int position = bench.it().layout().wirelessPosition();
            actions.add(bench.say("work.cards.wireless", build.wireless().name(), position));
        }
        if (build.has(Slot.GRAPHICS)) {
            graphics(actions);
        }
        if (!actions.isEmpty()) {
            add("cards", bench.say("work.cards"), actions);
        }
    }

    private void graphics(List<String> actions) {
        actions.add(
                bench.say(
                        "work.cards.graphics",
                        build.graphics().name(),
                        bench.it().layout().cardFirst()));
        if (build.has(Slot.BRACE)) {
            actions.add(bench.say("work.cards.brace", build.brace().name()));
        } else if (build.pcCase().cardBracket()) {
            actions.add(bench.say("work.cards.bracket"));
        }
    }

    private void check() {
        List<String> actions = new ArrayList<>();
        actions.add(bench.say("work.check.1"));
        actions.add(
                bench.say("work.check.2")
                        + (build.has(Slot.GRAPHICS) ? bench.say("work.check.card") : "")
                        + bench.say("work.check.3"));
        add("check", bench.say("work.check"), actions);
    }

    private void start() {
        List<String> actions = new ArrayList<>();
        if (build.has(Slot.DISPLAY)) {
            actions.add(
                    bench.say(
                            "work.start.screen",
                            build.pieces(Slot.DISPLAY) > 1
                                    ? build.pieces(Slot.DISPLAY) + " x "
                                    : "",
                            build.display().name()));
        }
        actions.addAll(List.of(bench.say("work.start.1"), bench.say("work.start.2")));
        add("first-start", bench.say("work.start"), actions);
    }

    private void close() {
        List<String> actions = new ArrayList<>();
        actions.add(bench.say("work.close.1"));
        if (build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID) {
            actions.add(bench.say("work.close.2"));
        }
        actions.add(bench.say("work.close.3"));
        if (bench.it().layout().radiator().filter(Place.TOP::equals).isPresent()) {
            actions.add(bench.say("work.close.4"));
        }
        add("close", bench.say("work.close"), actions);
    }
}
