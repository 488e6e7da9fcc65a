package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.measurement.accept.SheetLine.Expected;
import rigbrief.measurement.accept.SheetLine.Promised;
import rigbrief.measurement.accept.SheetLine.Station;
import rigbrief.measurement.accept.SheetLine.Suspect;
import rigbrief.part.Slot;

/**
 * Makes the acceptance sheet of a build.
 *
 * <p>Common practice: the durations, and ranges of 5 K, 3 dB and 15 % around the models' heat,
 * noise and power.
 */
final class SheetMaker {
    private static final double HEAT_K = 5;
    private static final double NOISE_DB = 3;
    private static final double POWER_SHARE = 0.15;
    private static final double ROOM_K = 10;
    private static final double MOST_IDLE_PERCENT = 5;
    private static final int CHANNELS = 2;

    private final Assessment it;
    private final Build build;
    private final List<SheetLine> lines = new ArrayList<>();

    private SheetMaker(Assessment it) {
        this.it = it;
        this.build = it.build();
    }

    /** The sheet of a whole build. */
    static Sheet of(Assessment it) {
        SheetMaker maker = new SheetMaker(it);
        maker.look();
        maker.memory();
        maker.stability();
        SpeedLines speed = SpeedLines.of(it);
        maker.lines.addAll(speed.lines());
        maker.lines.addAll(PortLines.of(it));
        return new Sheet(maker.lines, speed.runs());
    }

    private void check(String id, Station part, String what, String how) {
        lines.add(SheetLine.check(id, part, what, how));
    }

    private void look() {
        check(
                "look.leads",
                Station.LOOK,
                "Every lead is home and clear of the fans",
                "pull gently at each plug; turn each fan by hand once");
        if (build.has(Slot.COOLER) || build.processor().boxedCooler().isPresent()) {
            check(
                    "look.cooler",
                    Station.LOOK,
                    "The cooler sits firmly, its film is off, its fan is plugged in",
                    "look from the side; it must not turn under a light push");
        }
        if (build.has(Slot.GRAPHICS)) {
            check(
                    SheetIds.ON_CARD,
                    Station.LOOK,
                    "The screen hangs on the card's own output",
                    "follow the screen's lead to the machine; the board's outputs stay empty");
        }
    }

    private void memory() {
        exact(
                SheetIds.MEMORY_MODULES,
                Station.MEMORY,
                "Modules seen",
                LineUnit.PIECES,
                build.memoryModules(),
                "read in the firmware",
                true);
        exact(
                SheetIds.MEMORY_SIZE,
                Station.MEMORY,
                "Memory seen",
                LineUnit.GB,
                build.memoryGb(),
                "read in the firmware or the system",
                true);
        exact(
                SheetIds.MEMORY_CHANNELS,
                Station.MEMORY,
                "Channels in use",
                LineUnit.PIECES,
                Math.min(CHANNELS, build.memoryModules()),
                "read in the firmware",
                false);
        exact(
                SheetIds.MEMORY_RATE,
                Station.MEMORY,
                "Memory rate",
                LineUnit.MTS,
                it.memoryMts(),
                "read in the firmware with the kit's profile on; twice the clock in MHz",
                false);
        for (int module = 1;
                build.memoryModules() > 1 && module <= build.memoryModules();
                module++) {
            check(
                    "memory.module-" + module,
                    Station.MEMORY,
                    "Module %d alone: no error".formatted(module),
                    "one full pass of a memory test, this module alone in the slot that the"
                            + " board's manual names for one");
        }
        check(
                "memory.slots",
                Station.MEMORY,
                "Every memory slot (%d)".formatted(build.board().memorySlots()),
                "one good module in each slot in turn; the firmware sees it");
        check(
                "memory.together",
                Station.MEMORY,
                "All memory at its rate: no error",
                "two full passes of a memory test with all modules and the profile on");
    }

    private void exact(
            String id,
            Station part,
            String what,
            LineUnit unit,
            double figure,
            String how,
            boolean promised) {
        lines.add(
                new SheetLine(
                        id,
                        part,
                        what,
                        how,
                        unit,
                        Optional.of(new Expected(figure, figure, figure, Suspect.BELOW)),
                        promised
                                ? Optional.of(new Promised(figure, false, true))
                                : Optional.empty()));
    }

    private void stability() {
        check(
                "stability.run",
                Station.STABILITY,
                "Half an hour of full load: no crash, no error, no restart",
                "processor and card together at full load, case closed");
        double roomC = it.brief().place().roomC();
        figure(
                SheetIds.ROOM_C,
                "Room",
                LineUnit.CELSIUS,
                roomC,
                ROOM_K,
                Suspect.EITHER,
                "thermometer at the front of the case; the other temperatures are compared at this"
                        + " one",
                Optional.empty());
        figure(
                SheetIds.PROCESSOR_C,
                "Processor under load",
                LineUnit.CELSIUS,
                it.load().processorC(),
                HEAT_K,
                Suspect.ABOVE,
                "highest figure while the brief's heaviest workload runs, after 20 minutes",
                atMost(build.processor().limitC()));
        if (build.has(Slot.GRAPHICS)) {
            figure(
                    SheetIds.CARD_C,
                    "Card under load",
                    LineUnit.CELSIUS,
                    it.load().graphicsC(),
                    HEAT_K,
                    Suspect.ABOVE,
                    "in the same run",
                    atMost(it.catalogue().reference().cardLimitC()));
            CardLink.planned(build)
                    .ifPresent(
                            link ->
                                    exact(
                                            SheetIds.CARD_LANES,
                                            Station.STABILITY,
                                            "Lanes of the card's link",
                                            LineUnit.LANES,
                                            link.lanes(),
                                            "read under load: at rest a link may shrink to save power",
                                            false));
        }
        figure(
                SheetIds.IDLE_USE,
                "Processor at rest",
                LineUnit.PERCENT,
                MOST_IDLE_PERCENT / 2,
                MOST_IDLE_PERCENT / 2,
                Suspect.ABOVE,
                "share of use in the system's own monitor, ten minutes after the desktop came up",
                Optional.empty());
        power(
                "power.wall-w",
                "At the wall under load",
                it.power().wallW(),
                "meter between plug and socket, screen not on it, in the same run");
        power(
                "power.wall-idle-w",
                "At the wall at rest",
                it.power().wallIdleW(),
                "ten minutes after the desktop came up");
        noise(
                "noise.load-dba",
                "Noise under load",
                it.load().levelDba(),
                it.brief().noise().mustDba(),
                it.brief().noise().wishDba());
        noise(
                "noise.idle-dba",
                "Noise at rest",
                it.idle().levelDba(),
                OptionalInt.empty(),
                OptionalInt.empty());
    }

    private void figure(
            String id,
            String what,
            LineUnit unit,
            double middle,
            double half,
            Suspect suspect,
            String how,
            Optional<Promised> promise) {
        lines.add(
                new SheetLine(
                        id,
                        Station.STABILITY,
                        what,
                        how,
                        unit,
                        Optional.of(new Expected(middle, middle - half, middle + half, suspect)),
                        promise));
    }

    private static Optional<Promised> atMost(double figure) {
        return Optional.of(new Promised(figure, true, true));
    }

    private void power(String id, String what, double watts, String how) {
        figure(
                id,
                what,
                LineUnit.WATTS,
                watts,
                watts * POWER_SHARE,
                Suspect.EITHER,
                how,
                Optional.empty());
    }

    private void noise(String id, String what, double dba, OptionalInt must, OptionalInt wish) {
        Optional<Promised> promise =
                must.isPresent()
                        ? atMost(must.getAsInt())
                        : wish.isPresent()
                                ? Optional.of(new Promised(wish.getAsInt(), true, false))
                                : Optional.empty();
        figure(
                id,
                what,
                LineUnit.DBA,
                dba,
                NOISE_DB,
                Suspect.ABOVE,
                "meter at the seat, %s m away, A weighting, slow; the room alone 10 dB lower"
                        .formatted(it.brief().noise().seatDistanceM()),
                promise);
    }
}
