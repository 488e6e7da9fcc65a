package rigbrief.assembly.order;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.Bench;
import rigbrief.assembly.DriveHome;
import rigbrief.assembly.FanHeaders;
import rigbrief.assembly.FirmwareStep;
import rigbrief.assembly.PortNames;
import rigbrief.assembly.ScreenPlug;
import rigbrief.assembly.order.AlsoNeeded.Need;
import rigbrief.build.Build;
import rigbrief.part.DriveForm;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;

/**
 * Lists what a first boot needs beside the parts. What comes in which box is common practice, since
 * no catalogue says it: such items are to be checked, not bought blindly.
 */
final class FirstBootNeeds {
    private final Bench bench;
    private final Build build;
    private final int machines;
    private final List<AlsoNeeded> needs = new ArrayList<>();

    private FirstBootNeeds(Bench bench) {
        this.bench = bench;
        this.build = bench.build();
        this.machines = bench.brief().quantity();
    }

    static List<AlsoNeeded> of(Bench bench) {
        FirstBootNeeds needs = new FirstBootNeeds(bench);
        needs.paste();
        needs.fixings();
        needs.brace();
        needs.drives();
        needs.fans();
        needs.power();
        needs.system();
        needs.screens();
        needs.atTheDesk();
        return List.copyOf(needs.needs);
    }

    private void buy(String item, int quantity, String why) {
        needs.add(new AlsoNeeded(item, quantity, Need.BUY, why));
    }

    private void check(String item, int quantity, String why) {
        needs.add(new AlsoNeeded(item, quantity, Need.CHECK, why));
    }

    private boolean kept(Slot slot) {
        return build.has(slot)
                && bench.it().brief().keep().stream().anyMatch(own -> own.slot() == slot);
    }

    private void paste() {
        if (!build.has(Slot.COOLER)) {
            check(
                    "thermal paste, small tube",
                    1,
                    "only in case the boxed cooler has to be set down twice: its base carries paste");
        } else if (kept(Slot.COOLER) || kept(Slot.PROCESSOR)) {
            buy(
                    "thermal paste, small tube, with isopropyl alcohol and cloth",
                    1,
                    "the old layer has to come off and a new one on");
        } else {
            check(
                    "thermal paste, small tube",
                    1,
                    "unless it lies in the cooler's box or is on its base; the catalogue doesn't say");
        }
    }

    private void fixings() {
        String board = "board screws and stand-offs, set";
        if (kept(Slot.CASE)) {
            buy(board, machines, "a used case has seldom all of its own left; count them first");
        } else {
            check(board, machines, "they lie in the case's box");
        }
        boolean m2 = build.drives().stream().anyMatch(drive -> drive.form().m2());
        if (m2) {
            check(
                    "M.2 screw with stand-off",
                    machines * (int) build.drives().stream().filter(d -> d.form().m2()).count(),
                    "in the board's box"
                            + (kept(Slot.BOARD) ? "; a used board has often lost it" : ""));
        }
        check("cable ties or hook-and-loop tape", 1, "some lie in the case's or supply's box");
    }

    private void brace() {
        bench.finding("brace")
                .filter(finding -> !build.has(Slot.BRACE))
                .ifPresent(
                        finding ->
                                buy(
                                        "brace for the graphics card",
                                        machines,
                                        finding.text().replace("; add a brace", "")));
    }

    private void drives() {
        int cabled = 0;
        for (DriveHome home : DriveHome.of(bench.it())) {
            cabled += home.cabled() ? 1 : 0;
            if (home.place() == DriveHome.Place.BAY_35_ON_ADAPTER) {
                buy("adapter from 2.5-inch to 3.5-inch bay", machines, "no 2.5-inch bay is left");
            }
        }
        if (cabled > 0) {
            check(
                    "SATA data cable",
                    cabled * machines,
                    kept(Slot.BOARD)
                            ? "if the client's board came without"
                            : "two lie in most boards' boxes");
            boolean disk =
                    build.drives().stream().anyMatch(drive -> drive.form() == DriveForm.BAY_35);
            if (disk) {
                check("screws for 3.5-inch drives, set", machines, "if the bays are not tool-free");
            }
        }
    }

    private void fans() {
        FanHeaders headers = FanHeaders.of(bench.it());
        if (headers.splitLeads() > 0) {
            buy(
                    "split lead for two fans (4-pin)",
                    headers.splitLeads() * machines,
                    "the board has fewer headers than the case has fans");
        }
        if (headers.unfed() > 0) {
            buy("fan hub", machines, "%d fans find no header".formatted(headers.unfed()));
        }
    }

    private void power() {
        if (kept(Slot.SUPPLY)) {
            check(
                    "leads of the client's supply",
                    machines,
                    "all that the list of connections names, and no other supply's; its mains lead too");
        } else {
            check("mains lead with the plug of the country", machines, "in the supply's box");
        }
        bench.finding("supply-connectors")
                .ifPresent(finding -> buy("power leads", machines, finding.text()));
    }

    private void system() {
        if (!build.has(Slot.SYSTEM)) {
            buy(
                    "operating system: licence, or a free one",
                    machines,
                    "the machine has none; free of charge if the client brings one");
        }
        boolean update = FirmwareStep.of(bench.it()).isPresent();
        check(
                "USB stick, 8 GB or more",
                update ? 2 : 1,
                update
                        ? "one for the board's firmware, one to install the operating system from"
                        : "to install the operating system from");
        FirmwareStep.of(bench.it())
                .filter(step -> step.how() == FirmwareStep.How.WITH_HELPER)
                .ifPresent(
                        step ->
                                check(
                                        "helper processor for socket " + build.board().socket(),
                                        1,
                                        "it must run with firmware " + step.shipped()));
    }

    private void screens() {
        List<ScreenPlug> screens = ScreenPlug.of(bench.it());
        for (ScreenPlug screen : screens) {
            String from = PortNames.kind(screen.output());
            String cable =
                    screen.input().isPresent()
                            ? "display cable %s, certified for %s"
                                    .formatted(from, PortNames.of(lesser(screen)))
                            : "display cable " + from;
            check(
                    cable,
                    machines,
                    "screen %d; one lies in most screens' boxes, but not always of this sort"
                            .formatted(screen.screen()));
        }
        if (!build.has(Slot.DISPLAY) && bench.brief().screen().isEmpty()) {
            check("screen", machines, "the client's own, or any for the first start");
        }
    }

    /** The standard at which the pair runs. */
    private static String lesser(ScreenPlug screen) {
        return screen.link()
                .flatMap(link -> link.standard())
                .map(standard -> standard.id())
                .orElse(screen.output());
    }

    private void atTheDesk() {
        check("keyboard and mouse", machines, "the client's own, or any for the first start");
        boolean wireless =
                build.has(Slot.WIRELESS) || build.board().wireless() != WirelessStandard.NONE;
        check(
                "network cable",
                machines,
                wireless
                        ? "for the first updates, until the wireless driver is in"
                        : "the machine has no wireless network");
        bench.finding("front-ports")
                .ifPresent(
                        finding ->
                                check(
                                        "card or adapter for front ports",
                                        machines,
                                        "only if these are missed: " + finding.text()));
    }
}
