package rigbrief.explain;

import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Layout;
import rigbrief.assess.Workings;
import rigbrief.assess.Workings.State;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.model.air.AirDensity;
import rigbrief.model.air.AirRise;
import rigbrief.model.air.OperatingPoint;
import rigbrief.model.heat.CoolingCase;
import rigbrief.model.heat.Speeds;

/** The steps that explanations of heat share: the air in the case. */
final class Cooling {
    /** The last step of the case air over the room. */
    static final String RISE = "{} x 3600 / ({} x 1005 x {})";

    private final Derivation how;
    private final Assessment it;
    private final CoolingCase cooling;
    private final Speeds speeds;
    private final State state;
    private Draws.Two draw;

    Cooling(Derivation how, Assessment it, State state) {
        this.how = how;
        this.it = it;
        this.state = state;
        this.cooling = Workings.coolingCase(it, state);
        this.speeds = Workings.speeds(cooling);
        if (speeds.excessK() > 0) {
            how.remark("no set of fan speeds keeps every part cool enough: all run at full speed");
        }
    }

    CoolingCase cooling() {
        return cooling;
    }

    Speeds speeds() {
        return speeds;
    }

    private String solved(FanExplanation.Fans fans) {
        return "number " + FanExplainer.name(state, fans) + ", before rounding";
    }

    /** Case fans' share of full speed, as an input. */
    double caseShare() {
        return how.given(
                "case fans, share of full speed",
                speeds.caseShare(),
                "",
                solved(FanExplanation.Fans.CASE));
    }

    /** Cooler fans' share of full speed, as an input. */
    double coolerShare() {
        return how.given(
                "cooler fans, share of full speed",
                speeds.coolerShare(),
                "",
                solved(FanExplanation.Fans.COOLER));
    }

    /** Card fans' ratio to their reference speed, as an input. */
    double cardRatio() {
        return how.given(
                "card fans, ratio to their reference speed",
                speeds.cardRatio(),
                "",
                solved(FanExplanation.Fans.CARD));
    }

    /** What processor and card draw; worked out with the case air. */
    Draws.Two draw() {
        return draw;
    }

    private double heat() {
        draw =
                state == State.FULL
                        ? new Draws.Two(Draws.processorW(how, it), Draws.cardW(how, it))
                        : Draws.working(how, it);
        double othersW = Draws.othersW(how, it.build(), true);
        double heatW = cooling.air().heatW();
        boolean blownOut = draw.processorW() > 0 && draw.cardW() + othersW >= heatW - 1e-9;
        if (blownOut) {
            how.remark("the radiator blows the processor's heat straight out of the case");
            return how.step("heat in the case", heatW, "W", "{} + {}", draw.cardW(), othersW);
        }
        return how.step(
                "heat in the case",
                heatW,
                "W",
                "{} + {} + {}",
                draw.processorW(),
                draw.cardW(),
                othersW);
    }

    /** Case air over room air in K, before the last rounding, with the arguments of its step. */
    Object[] rise() {
        double heatW = heat();
        how.remark(AirRise.HEAT_W.remark(heatW));
        double density = density();
        double share = caseShare();
        double full = fullFlow();
        double moved =
                how.step(
                        "air through the case",
                        Math.max(AirRise.NATURAL_FLOW_M3H, share * full),
                        "m³/h",
                        "max({}, {} x {})",
                        AirRise.NATURAL_FLOW_M3H,
                        share,
                        full);
        return new Object[] {heatW, density, moved};
    }

    /** The case air, °C, as a step after the rise. */
    double inletC() {
        Object[] rise = rise();
        double riseK = how.step("case air over the room", speeds.caseRiseK(), "K", RISE, rise);
        double roomC = it.brief().place().roomC();
        return how.step("case air", roomC + riseK, "°C", "{} + {}", roomC, riseK);
    }

    private double density() {
        Brief.Place place = it.brief().place();
        how.given("room", place.roomC(), "°C", "brief, place, room");
        how.given("altitude", place.altitudeM(), "m", "brief, place, altitude");
        how.remark(AirDensity.ROOM_C.remark(place.roomC()));
        how.remark(AirDensity.ALTITUDE_M.remark(place.altitudeM()));
        return how.step(
                "density of the air",
                cooling.air().densityKgM3(),
                "kg/m³",
                "101325 x (1 - 0.0000225577 x {})^5.25588 / (287.05 x ({} + 273.15))",
                place.altitudeM(),
                place.roomC());
    }

    private double fullFlow() {
        Build build = it.build();
        int included = count(it.layout().includedFans());
        int added = count(it.layout().addedFans());
        double free = 0;
        double perPressure = 0;
        if (included > 0) {
            double m3h = build.pcCase().includedFanM3h();
            double pa = build.pcCase().includedFanPa();
            String id = build.pcCase().id();
            how.given(
                    "fan of the case, free flow, each of " + included,
                    m3h,
                    "m³/h",
                    id + ", included_fan_m3h");
            how.given("fan of the case, shut-off pressure", pa, "Pa", id + ", included_fan_pa");
            free += included * m3h;
            perPressure += included * m3h / pa;
        }
        if (added > 0) {
            double m3h = build.fan().flowM3h();
            double pa = build.fan().pressurePa();
            String id = build.fan().id();
            how.given("added fan, free flow, each of " + added, m3h, "m³/h", id + ", flow_m3h");
            how.given("added fan, shut-off pressure", pa, "Pa", id + ", pressure_pa");
            free += added * m3h;
            perPressure += added * m3h / pa;
        }
        double impedance =
                how.given(
                        "impedance of the case",
                        build.pcCase().impedance(),
                        "Pa/(m³/h)²",
                        build.pcCase().id() + ", impedance");
        flows(included, added, free, perPressure);
        return how.step(
                "flow with the case fans at full speed",
                OperatingPoint.flowM3h(free, perPressure, impedance),
                "m³/h",
                "2 x {} / (1 + sqrt(1 + 4 x {} x {} x {}))",
                free,
                impedance,
                free,
                perPressure);
    }

    private void flows(int included, int added, double free, double perPressure) {
        double ownM3h = included > 0 ? it.build().pcCase().includedFanM3h() : 0;
        double ownPa = included > 0 ? it.build().pcCase().includedFanPa() : 1;
        double moreM3h = added > 0 ? it.build().fan().flowM3h() : 0;
        double morePa = added > 0 ? it.build().fan().pressurePa() : 1;
        how.step(
                "free flow of all case fans",
                free,
                "m³/h",
                "{} x {} + {} x {}",
                included,
                ownM3h,
                added,
                moreM3h);
        how.step(
                "free flow over shut-off pressure",
                perPressure,
                "m³/h per Pa",
                "{} x {} / {} + {} x {} / {}",
                included,
                ownM3h,
                ownPa,
                added,
                moreM3h,
                morePa);
    }

    /** Fans on all sides together. */
    static int count(List<Layout.PlacedFans> sides) {
        int count = 0;
        for (Layout.PlacedFans fans : sides) {
            count += fans.count();
        }
        return count;
    }
}
