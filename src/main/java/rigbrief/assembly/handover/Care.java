package rigbrief.assembly.handover;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.Bench;
import rigbrief.build.Build;
import rigbrief.model.memory.DriveEndurance;
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

    /** What a desk writes in a day, rather more than less. Common practice. */
    private static final int USUAL_GB_PER_DAY = 20;

    /** The care for a build. */
    static List<Care> of(Bench bench) {
        Build build = bench.build();
        List<Care> care = new ArrayList<>();
        care.add(new Care(bench.say("care.months3"), bench.say("care.months3.what")));
        care.add(new Care(bench.say("care.yearly"), bench.say("care.yearly.what")));
        care.add(new Care(bench.say("care.louder"), bench.say("care.louder.what")));
        cooler(bench, care);
        drives(bench, care);
        care.add(new Care(bench.say("care.weekly"), bench.say("care.weekly.what")));
        care.add(new Care(bench.say("care.offered"), bench.say("care.offered.what")));
        care.add(new Care(bench.say("care.years5"), bench.say("care.years5.what")));
        return List.copyOf(care);
    }

    private static void cooler(Bench bench, List<Care> care) {
        Build build = bench.build();
        boolean liquid = build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID;
        if (liquid) {
            care.add(new Care(bench.say("care.half"), bench.say("care.half.what")));
        }
        care.add(new Care(bench.say("care.years3"), bench.say("care.years3.what")));
    }

    /** What the rating is a day over the guarantee, and whether usual work stays within it. */
    private static String daily(Drive drive, Bench bench) {
        int years = drive.listing().warrantyYears().orElse(0);
        if (years == 0) {
            return "";
        }
        int ratingTbw = drive.enduranceTbw().or(0);
        double promised = DriveEndurance.promisedYears(ratingTbw, USUAL_GB_PER_DAY, years);
        return bench.say("care.wear.daily", DriveEndurance.gbPerDay(ratingTbw, years), years)
                + (promised < years
                        ? bench.say("care.wear.beyond", USUAL_GB_PER_DAY, promised)
                        : bench.say("care.wear.within", USUAL_GB_PER_DAY));
    }

    private static void drives(Bench bench, List<Care> care) {
        for (Drive drive : bench.build().drives()) {
            if (drive.form() != DriveForm.BAY_35 && drive.enduranceTbw().stated()) {
                care.add(
                        new Care(
                                bench.say("care.yearly"),
                                bench.say(
                                        "care.wear.what",
                                        drive.name(),
                                        drive.enduranceTbw().or(0),
                                        daily(drive, bench))));
            } else if (drive.form() == DriveForm.BAY_35) {
                care.add(
                        new Care(
                                bench.say("care.yearly"),
                                bench.say("care.disk.what", drive.name())));
            }
        }
    }
}
