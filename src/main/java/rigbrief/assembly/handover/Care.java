package rigbrief.assembly.handover;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.Bench;
import rigbrief.build.Build;
import rigbrief.part.CoolerType;
import rigbrief.part.Drive;
import rigbrief.part.DriveForm;
import rigbrief.part.Slot;

/**
 * Something to do now and then so that the machine lasts. Common practice throughout; the makers'
 * manuals go before it.
 *
 * @param when how often
 * @param what what to do
 */
public record Care(String when, String what) {

    /** The care for a build. */
    static List<Care> of(Bench bench) {
        Build build = bench.build();
        List<Care> care = new ArrayList<>();
        care.add(
                new Care(
                        "every 3 months",
                        "Shut down, mains lead out. Vacuum the filters and grilles from outside; wash filters that come off and let them dry."));
        care.add(
                new Care(
                        "once a year",
                        "Open the side, hold each fan still with a finger, and blow the dust out with canned air. Never open the supply."));
        care.add(
                new Care(
                        "when it gets louder",
                        "Clean first. A fan that rattles or stands still has to be replaced: see the list of parts for its size."));
        cooler(build, care);
        drives(build, care);
        care.add(
                new Care(
                        "every week, by itself",
                        "Back up what must not be lost to a second place: every drive fails one day."));
        care.add(
                new Care(
                        "when offered",
                        "Updates of the operating system at once; of drivers when something is wrong; of the board's firmware only for a reason, and never in a thunderstorm."));
        care.add(
                new Care(
                        "after about 5 years",
                        "If the clock is wrong after a night without mains, have the coin cell on the board (CR2032) replaced."));
        return List.copyOf(care);
    }

    private static void cooler(Build build, List<Care> care) {
        boolean liquid = build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID;
        if (liquid) {
            care.add(
                    new Care(
                            "every half year",
                            "Listen to the pump and look along the tubes: a gurgle that stays, or a damp spot, means the liquid cooler has to be replaced. They are made for about 5 years."));
        }
        care.add(
                new Care(
                        "after 3 to 5 years",
                        "If the processor runs 10 °C hotter than on this sheet though all is clean, have its paste renewed."));
    }

    private static void drives(Build build, List<Care> care) {
        for (Drive drive : build.drives()) {
            if (drive.form() != DriveForm.BAY_35 && drive.enduranceTbw().stated()) {
                care.add(
                        new Care(
                                "once a year",
                                "Look at the wear that %s reports itself: its guarantee covers %d TB written. Leave 15 %% of it free."
                                        .formatted(drive.name(), drive.enduranceTbw().or(0))));
            } else if (drive.form() == DriveForm.BAY_35) {
                care.add(
                        new Care(
                                "once a year",
                                "Have %s test itself. Do not move or knock the machine while it runs."
                                        .formatted(drive.name())));
            }
        }
    }
}
