package rigbrief.goal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.model.power.DutyCycle;
import rigbrief.model.power.TypicalDraw;
import rigbrief.model.power.YearlyEnergy;
import rigbrief.part.Slot;

/**
 * How little energy a year takes.
 *
 * <p>Formula: u = 1 - energy / reference, clipped to 0..1. The reference is a machine that draws
 * 600 W at the wall under load and 100 W at idle, for the brief's hours, so it does not depend on
 * the build.
 *
 * <p>Common practice: 600 W and 100 W stand for the thirstiest desktop in ordinary use.
 */
public final class EnergyGoal implements Goal {
    private static final GoalInfo INFO =
            new GoalInfo(
                    "energy",
                    "It uses little energy",
                    "yearly energy, straight from that of a 600 W machine at the same hours down to nothing");
    private static final Set<Slot> READS = Collections.unmodifiableSet(EnumSet.allOf(Slot.class));

    @Override
    public GoalInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    private static final double REFERENCE_LOAD_W = 600;
    private static final double REFERENCE_IDLE_W = 100;
    private static final int DAYS_A_YEAR = 365;

    @Override
    public int utility(Assessment it) {
        return Goal.tenThousandths(1 - it.power().kwhPerYear() / referenceKwh(it.brief()));
    }

    @Override
    public String because(Assessment it) {
        return String.format(Locale.ROOT, "%.0f kWh a year", it.power().kwhPerYear());
    }

    /** Yearly energy of the reference machine in kWh. */
    public static double referenceKwh(Brief brief) {
        Brief.Place place = brief.place();
        return YearlyEnergy.kwh(
                        DutyCycle.VERSION_8,
                        TypicalDraw.OFF_MAINS_W,
                        TypicalDraw.SLEEP_MAINS_W,
                        REFERENCE_IDLE_W,
                        REFERENCE_IDLE_W)
                + YearlyEnergy.addedByLoadKwh(
                        REFERENCE_LOAD_W,
                        REFERENCE_IDLE_W,
                        place.hoursPerDay() * place.loadShare() * DAYS_A_YEAR);
    }
}
