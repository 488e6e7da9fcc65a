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
import rigbrief.audit.AuditFinding;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;
import rigbrief.wording.Phrase;

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
        needs.bracket();
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
        return build.has(slot) && bench.brief().keep().stream().anyMatch(own -> own.slot() == slot);
    }

    private void paste() {
        if (!build.has(Slot.COOLER)) {
            check(bench.say("also.paste"), 1, bench.say("also.paste.boxed"));
        } else if (kept(Slot.COOLER) || kept(Slot.PROCESSOR)) {
            buy(bench.say("also.paste.cloth"), 1, bench.say("also.paste.old"));
        } else {
            check(bench.say("also.paste"), 1, bench.say("also.paste.check"));
        }
    }

    /** A cooler that was on another socket may have come without what holds it on this one. */
    private void bracket() {
        if (kept(Slot.COOLER)) {
            check(
                    bench.say("also.bracket", build.board().socket()),
                    machines,
                    bench.say("also.bracket.why"));
        }
        if (kept(Slot.BOARD)) {
            check(bench.say("also.rear-cover"), machines, bench.say("also.rear-cover.why"));
        }
    }

    private void fixings() {
        String board = bench.say("also.screws");
        if (kept(Slot.CASE)) {
            buy(board, machines, bench.say("also.screws.used"));
        } else {
            check(board, machines, bench.say("also.screws.box"));
        }
        boolean m2 = build.drives().stream().anyMatch(drive -> drive.form().m2());
        if (m2) {
            check(
                    bench.say("also.m2-screw"),
                    machines * (int) build.drives().stream().filter(d -> d.form().m2()).count(),
                    bench.say("also.m2-screw.box")
                            + (kept(Slot.BOARD) ? bench.say("also.m2-screw.used") : ""));
        }
        check(bench.say("also.ties"), 1, bench.say("also.ties.box"));
    }

    private void brace() {
        bench.finding("brace")
                .filter(finding -> !build.has(Slot.BRACE))
                .ifPresent(finding -> buy(bench.say("also.brace"), machines, brace(finding)));
    }

    /** Why it is wanted; that it is wanted stands beside it. */
    private String brace(AuditFinding finding) {
        Phrase phrase = finding.phrase();
        boolean added = phrase.key().equals("finding.brace.add");
        return bench.texts().say(added ? (Phrase) phrase.places().get(0) : phrase);
    }

    private void drives() {
        int cabled = 0;
        for (DriveHome home : DriveHome.of(bench.it())) {
            cabled += home.cabled() ? 1 : 0;
            if (home.place() == DriveHome.Place.BAY_35_ON_ADAPTER) {
                buy(bench.say("also.adapter"), machines, bench.say("also.adapter.why"));
            }
        }
        if (cabled > 0) {
            check(
                    bench.say("also.sata"),
                    cabled * machines,
                    kept(Slot.BOARD) ? bench.say("also.sata.own") : bench.say("also.sata.box"));
            check(
                    bench.say("also.drive-screws"),
                    cabled * machines,
                    bench.say("also.drive-screws.why"));
        }
    }

    private void fans() {
        FanHeaders headers = FanHeaders.of(bench.it());
        if (headers.splitLeads() > 0) {
            buy(
                    bench.say("also.split"),
                    headers.splitLeads() * machines,
                    bench.say("also.split.why"));
        }
        if (headers.unfed() > 0) {
            buy(bench.say("also.hub"), machines, bench.say("also.hub.why", headers.unfed()));
        }
    }

    private void power() {
        if (kept(Slot.SUPPLY)) {
            check(bench.say("also.leads"), machines, bench.say("also.leads.why"));
        } else {
            check(bench.say("also.mains"), machines, bench.say("also.mains.why"));
        }
        bench.finding("supply-connectors")
                .ifPresent(
                        finding ->
                                buy(
                                        bench.say("also.power"),
                                        machines,
                                        bench.texts().say(finding.phrase())));
    }

    private void system() {
        if (!build.has(Slot.SYSTEM)) {
            buy(bench.say("also.system"), machines, bench.say("also.system.why"));
        }
        boolean update = FirmwareStep.of(bench.it()).isPresent();
        check(
                bench.say("also.stick"),
                update ? 2 : 1,
                update ? bench.say("also.stick.two") : bench.say("also.stick.why"));
        FirmwareStep.of(bench.it())
                .filter(step -> step.how() == FirmwareStep.How.WITH_HELPER)
                .ifPresent(
                        step ->
                                check(
                                        bench.say("also.helper") + build.board().socket(),
                                        1,
                                        bench.say("also.helper.why") + step.shipped()));
    }

    private void screens() {
        List<ScreenPlug> screens = ScreenPlug.of(bench.it());
        for (ScreenPlug screen : screens) {
            String from = PortNames.kind(screen.output());
            String cable =
                    screen.input().isPresent()
                            ? bench.say("also.cable", from, PortNames.of(lesser(screen)))
                            : bench.say("also.cable.any") + from;
            check(cable, machines, bench.say("also.cable.why", screen.screen()));
        }
        if (!build.has(Slot.DISPLAY) && bench.brief().screen().isEmpty()) {
            check(bench.say("also.screen"), machines, bench.say("also.desk.why"));
        }
    }

    /** The standard at which the pair runs. */
    private static String lesser(ScreenPlug screen) {
        return screen.link()
                .flatMap(link -> link.standard())
                .map(standard -> standard.id())
                .orElse(screen.output());
    }

    private String aerials() {
        Slot source = build.has(Slot.WIRELESS) ? Slot.WIRELESS : Slot.BOARD;
        return bench.say(
                kept(source) ? "also.aerials.used" : "also.aerials.box", build.part(source).name());
    }

    private void atTheDesk() {
        check(bench.say("also.keyboard"), machines, bench.say("also.desk.why"));
        boolean wireless =
                build.has(Slot.WIRELESS) || build.board().wireless() != WirelessStandard.NONE;
        if (wireless) {
            check(bench.say("also.aerials"), machines, aerials());
        }
        check(
                bench.say("also.network"),
                machines,
                wireless ? bench.say("also.network.wireless") : bench.say("also.network.why"));
        bench.finding("front-ports")
                .ifPresent(
                        finding ->
                                check(
                                        bench.say("also.front"),
                                        machines,
                                        bench.say("also.front.why")
                                                + bench.texts().say(finding.phrase())));
    }
}
