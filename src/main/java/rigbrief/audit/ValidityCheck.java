package rigbrief.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.assess.Workings;
import rigbrief.brief.Brief;
import rigbrief.model.Range;
import rigbrief.model.air.AirDensity;
import rigbrief.model.air.AirRise;
import rigbrief.model.heat.CardCooling;
import rigbrief.model.heat.ThermalLadder;
import rigbrief.model.link.CvtTiming;
import rigbrief.model.memory.DriveEndurance;
import rigbrief.model.memory.MemoryBandwidth;
import rigbrief.model.power.SupplyLoss;
import rigbrief.model.power.YearlyEnergy;
import rigbrief.model.speed.PredictionRange;
import rigbrief.part.Drive;
import rigbrief.part.Slot;
import rigbrief.rule.Source;

/**
 * Cautions about figures that were computed outside the range in which their model was checked.
 *
 * <p>No rule: a search never asks it, and it breaks nothing.
 */
public final class ValidityCheck {
    /** What these cautions stand under, in the place of a rule's id. */
    public static final String ID = "model-range";

    private static final String TITLE = "Figures lie where their models were checked";
    private static final int DAYS_A_YEAR = 365;
    private static final int DECIMALS = 3;

    private final Assessment it;
    private final List<AuditFinding> cautions = new ArrayList<>();

    private ValidityCheck(Assessment it) {
        this.it = it;
    }

    /** The cautions on a finished build, in a fixed order; usually none. */
    public static List<AuditFinding> of(Assessment it) {
        ValidityCheck check = new ValidityCheck(it);
        check.place();
        check.heat();
        check.supply();
        check.drives();
        check.speed();
        return List.copyOf(check.cautions);
    }

    private void place() {
        Brief.Place place = it.brief().place();
        add(
                AirDensity.ROOM_C,
                place.roomC(),
                "rooms in which a desktop computer is meant to run",
                List.of());
        add(
                AirDensity.ALTITUDE_M,
                place.altitudeM(),
                "altitudes for which makers' cooling figures still scale with density",
                List.of());
        add(
                YearlyEnergy.LOAD_HOURS,
                place.hoursPerDay() * place.loadShare() * DAYS_A_YEAR,
                "hours under load that leave a day its sleep and pauses",
                List.of());
    }

    private void heat() {
        add(
                ThermalLadder.POWER_W,
                it.build().processor().sustainedPowerW(),
                "powers for which one resistance describes a desktop cooler",
                parts(Slot.PROCESSOR));
        if (it.build().has(Slot.GRAPHICS)) {
            add(
                    CardCooling.CARD_W,
                    it.build().graphics().boardPowerW(),
                    "powers for which air coolers of this kind exist",
                    parts(Slot.GRAPHICS));
        }
        add(
                AirRise.HEAT_W,
                Workings.coolingCase(it, Workings.State.FULL).air().heatW(),
                "heat for which a well-mixed case has been thought of",
                List.of());
    }

    private void supply() {
        int watts = it.build().supply().watts();
        String why = "load shares for which the loss curve is a fair estimate";
        add(SupplyLoss.LOAD_SHARE, it.power().loadW() / watts, why, parts(Slot.SUPPLY));
        add(SupplyLoss.LOAD_SHARE, it.power().idleW() / watts, why, parts(Slot.SUPPLY));
    }

    private void drives() {
        for (Slot slot : List.of(Slot.DRIVE, Slot.SECOND_DRIVE)) {
            if (it.build().has(slot)) {
                Drive drive = (Drive) it.build().part(slot);
                int years = drive.listing().warrantyYears().orElse(0);
                if (drive.enduranceTbw().stated() && years > 0) {
                    add(
                            DriveEndurance.CLIENT_DWPD,
                            DriveEndurance.writesPerDay(
                                    drive.enduranceTbw().or(0), years, drive.capacityGb()),
                            "ratings that drives for desktop computers have",
                            parts(slot));
                }
            }
        }
    }

    private void speed() {
        add(
                MemoryBandwidth.RATE_MTS,
                it.memoryMts(),
                "memory rates that modules are sold for",
                parts(Slot.MEMORY));
        it.brief()
                .screen()
                .ifPresent(
                        screen ->
                                add(
                                        CvtTiming.REFRESH_HZ,
                                        screen.refreshHz(),
                                        "refresh rates for which the timing has been checked",
                                        List.of()));
        for (Prediction prediction : it.predictions()) {
            if (!prediction.promises().isEmpty()) {
                add(
                        PredictionRange.SIGMA,
                        prediction.workload().fitted().sigma(),
                        "spreads for which a range around a prediction still says something",
                        List.of());
            }
        }
    }

    private List<String> parts(Slot slot) {
        return it.build().has(slot) ? List.of(it.build().part(slot).id()) : List.of();
    }

    private void add(Range range, double value, String why, List<String> parts) {
        range.remark(printable(value))
                .ifPresent(
                        text ->
                                cautions.add(
                                        AuditFinding.caution(
                                                ID,
                                                TITLE,
                                                text,
                                                Source.commonPractice(why).text(),
                                                parts)));
    }

    private static double printable(double value) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue()
                : value;
    }
}
