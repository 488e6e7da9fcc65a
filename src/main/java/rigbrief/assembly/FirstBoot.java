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
        String wait =
                build.memory().type() == MemoryType.DDR5
                        ? "; new memory is measured out first, so the screen may stay black for some"
                                + " minutes and the machine restart by itself"
                        : "";
        String path = screens.isEmpty() ? "" : ", screen on the " + screens.get(0).path();
        add("Power on" + path, "fans turn, a picture comes" + wait);
    }

    private void firmware() {
        String version =
                FirmwareStep.of(bench.it())
                        .map(update -> update.needed() + " or newer")
                        .orElse(build.board().shippedFirmware() + " or newer");
        add(
                "Enter the firmware's menu; look at version and clock",
                version + "; date and time right");
    }

    private void memory() {
        int mts = bench.it().memoryMts();
        int sold = build.memory().mts();
        add(
                "Memory the firmware counts",
                "%d GB in %s"
                        .formatted(
                                build.memoryGb(),
                                Wording.counted(build.memoryModules(), "module")));
        add(
                "Turn the kit's memory profile on (it is sold as %d MT/s)".formatted(sold),
                mts < sold
                        ? "set and shown: %d MT/s, the most that board and processor promise with it"
                                .formatted(mts)
                        : "set and shown: %d MT/s".formatted(mts));
    }

    private void drives(List<DriveHome> drives) {
        for (DriveHome home : drives) {
            Drive drive = home.drive();
            String where =
                    home.m2().isPresent()
                            ? "M.2 slot " + home.m2().getAsInt()
                            : home.sataPort().isPresent()
                                    ? "SATA port " + home.sataPort().getAsInt()
                                    : "no place";
            add(
                    "Drive in " + where,
                    "%s, %d GB, is listed%s"
                            .formatted(
                                    drive.name(),
                                    drive.capacityGb(),
                                    home.slot() == Slot.DRIVE ? "; first to boot from" : ""));
        }
    }

    private void fans(FanPlan plan) {
        int cooler = build.has(Slot.COOLER) ? build.cooler().fans() : 1;
        boolean liquid = bench.it().layout().radiator().isPresent();
        int caseFans = plan.count() - (liquid ? cooler : 0);
        add(
                "Fans the firmware shows",
                "%s on the processor's header, %s in the case, all turning"
                        .formatted(
                                Wording.counted(cooler, "fan"), Wording.counted(caseFans, "fan")));
        boolean steered =
                !build.has(Slot.FANS) || build.fan().connector() != FanConnector.PERIPHERAL4;
        if (caseFans > 0 && steered) {
            Climate idle = bench.it().idle();
            Climate load = bench.it().load();
            add(
                    "Set the curve of the case fans",
                    "about %s of full speed at rest, %s under load; the promised noise and heat rest on it"
                            .formatted(percent(idle.caseFanShare()), percent(load.caseFanShare())));
        }
    }

    static String percent(double share) {
        return Math.round(share * WHOLE) + " %";
    }

    private void system() {
        if (!build.has(Slot.SYSTEM)) {
            add(
                    "Install the operating system from its stick",
                    "started from the first drive, updated");
            return;
        }
        OperatingSystem system = build.system();
        if (!system.requires().isEmpty()) {
            add(
                    "Switch on in the firmware what %s asks for".formatted(system.name()),
                    String.join(", ", system.requires()));
        }
        add("Install " + system.name(), "licence entered, started from the first drive, updated");
    }

    private void drivers() {
        add(
                build.has(Slot.GRAPHICS)
                        ? "Drivers from the makers' own sites: board, network, graphics card"
                        : "Drivers from the makers' own sites: board, network, built-in graphics",
                "no unknown device is left in the list of devices");
        long second = build.has(Slot.SECOND_DRIVE) ? 1 : 0;
        if (second > 0) {
            add("Second drive", "set up, given a name, written and read once");
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
                        .map(
                                carried ->
                                        " (passes compressed: leave compression on in the screen's menu)")
                        .orElse("");
        add(
                "Screen %d on the %s".formatted(screen.screen(), screen.path()),
                screen.picture() + how);
    }

    private void network() {
        boolean wireless =
                build.has(Slot.WIRELESS) || build.board().wireless() != WirelessStandard.NONE;
        if (wireless) {
            add(
                    "Wireless network, aerials screwed on",
                    "found, joined, full strength in the same room");
        }
        if (build.board().lanGbps() > 0) {
            add(
                    "Wired network",
                    "link at %s Gbit/s, if the other end has it"
                            .formatted(plain(build.board().lanGbps())));
        }
    }

    private static String plain(double number) {
        return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
