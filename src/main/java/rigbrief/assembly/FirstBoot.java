package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Climate;
import rigbrief.build.Build;
import rigbrief.model.link.LinkResult;
import rigbrief.part.Drive;
import rigbrief.part.FanConnector;
import rigbrief.part.MemoryType;
import rigbrief.part.OperatingSystem;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;

/** Lists what to see to between the first power and the handover, in order. */
final class FirstBoot {
    private static final int WHOLE = 100;

    private final Bench bench;
    private final Build build;
    private final List<Check> checks = new ArrayList<>();

    private FirstBoot(Bench bench) {
        this.bench = bench;
        this.build = bench.build();
    }

    static List<Check> of(
            Bench bench, List<DriveHome> drives, FanPlan fans, List<ScreenPlug> screens) {
        FirstBoot boot = new FirstBoot(bench);
        boot.picture(screens);
        boot.firmware();
        boot.memory();
        boot.drives(drives);
        boot.fans(fans);
        boot.system();
        boot.drivers();
        screens.forEach(boot::screen);
        boot.network();
        return List.copyOf(boot.checks);
    }

    private void add(String what, String expect) {
        checks.add(new Check(what, expect));
    }

    private void picture(List<ScreenPlug> screens) {
        String wait = build.memory().type() == MemoryType.DDR5 ? bench.say("boot.patience") : "";
        String path =
                screens.isEmpty()
                        ? ""
                        : bench.say("boot.with-screen") + screens.get(0).path(bench.texts());
        add(bench.say("boot.power") + path, bench.say("boot.power.expect") + wait);
    }

    private void firmware() {
        String version =
                FirmwareStep.of(bench.it())
                        .map(update -> update.needed() + bench.say("boot.newer"))
                        .orElse(build.board().shippedFirmware() + bench.say("boot.newer"));
        add(bench.say("boot.menu"), version + bench.say("boot.clock"));
    }

    private void memory() {
        int mts = bench.it().memoryMts();
        int sold = build.memory().mts();
        add(
                bench.say("boot.memory"),
                bench.say(
                        "boot.memory.expect",
                        build.memoryGb(),
                        bench.say("count.module", build.memoryModules())));
        add(
                bench.say("boot.profile", sold),
                mts < sold
                        ? bench.say("boot.profile.most", mts)
                        : bench.say("boot.profile.set", mts));
    }

    private void drives(List<DriveHome> drives) {
        for (DriveHome home : drives) {
            Drive drive = home.drive();
            String where =
                    home.m2().isPresent()
                            ? bench.say("boot.m2") + home.m2().getAsInt()
                            : home.sataPort().isPresent()
                                    ? bench.say("boot.sata") + home.sataPort().getAsInt()
                                    : bench.say("boot.no-place");
            add(
                    bench.say("boot.drive") + where,
                    bench.say(
                            "boot.drive.expect",
                            drive.name(),
                            drive.capacityGb(),
                            home.slot() == Slot.DRIVE ? bench.say("boot.first") : ""));
        }
    }

    private void fans(FanPlan plan) {
        int cooler = build.has(Slot.COOLER) ? build.cooler().fans() : 1;
        boolean liquid = bench.it().layout().radiator().isPresent();
        int caseFans = plan.count() - (liquid ? cooler : 0);
        add(
                bench.say("boot.fans"),
                bench.say(
                        "boot.fans.expect",
                        bench.say("count.fan", cooler),
                        bench.say("count.fan", caseFans)));
        boolean steered =
                !build.has(Slot.FANS) || build.fan().connector() != FanConnector.PERIPHERAL4;
        if (caseFans > 0 && steered) {
            Climate idle = bench.it().idle();
            Climate load = bench.it().load();
            add(
                    bench.say("boot.curve"),
                    bench.say(
                            "boot.curve.expect",
                            percent(idle.caseFanShare()),
                            percent(load.caseFanShare())));
        }
    }

    static String percent(double share) {
        return Math.round(share * WHOLE) + " %";
    }

    private void system() {
        if (!build.has(Slot.SYSTEM)) {
            add(bench.say("boot.system"), bench.say("boot.system.expect"));
            return;
        }
        OperatingSystem system = build.system();
        if (!system.requires().isEmpty()) {
            add(bench.say("boot.switch", system.name()), String.join(", ", system.requires()));
        }
        add(bench.say("boot.install") + system.name(), bench.say("boot.install.expect"));
    }

    private void drivers() {
        add(
                build.has(Slot.GRAPHICS)
                        ? bench.say("boot.drivers.card")
                        : bench.say("boot.drivers"),
                bench.say("boot.drivers.expect"));
        long second = build.has(Slot.SECOND_DRIVE) ? 1 : 0;
        if (second > 0) {
            add(bench.say("boot.second"), bench.say("boot.second.expect"));
        }
    }

    private void screen(ScreenPlug screen) {
        if (screen.resolution().isEmpty()) {
            return;
        }
        String how =
                screen.link()
                        .map(LinkResult::carried)
                        .filter(carried -> carried == LinkResult.Carried.COMPRESSED)
                        .map(carried -> bench.say("boot.compressed"))
                        .orElse("");
        add(
                bench.say("boot.screen", screen.screen(), screen.path(bench.texts())),
                screen.picture(bench.texts()) + how);
    }

    private void network() {
        boolean wireless =
                build.has(Slot.WIRELESS) || build.board().wireless() != WirelessStandard.NONE;
        if (wireless) {
            add(bench.say("boot.wireless"), bench.say("boot.wireless.expect"));
        }
        if (build.board().lanGbps() > 0) {
            add(
                    bench.say("boot.wired"),
                    bench.say("boot.wired.expect", plain(build.board().lanGbps())));
        }
    }

    private static String plain(double number) {
        return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
