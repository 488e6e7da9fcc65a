package rigbrief.explain;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Workings;
import rigbrief.brief.Brief;
import rigbrief.model.power.DutyCycle;
import rigbrief.model.power.Efficiency;
import rigbrief.model.power.EfficiencyLevel;
import rigbrief.model.power.MainsColumn;
import rigbrief.model.power.SupplyLoss;
import rigbrief.model.power.TypicalDraw;
import rigbrief.model.power.YearlyEnergy;

/** Explains what the mains meter shows, and the energy of a year. */
final class WallExplainer implements Explainer {
    private static final String SOURCE =
            "80 PLUS certification table; straight lines between its points and the estimate"
                    + " below them are common practice";

    /** Load points of the table, of which a level's lowest two or three may be silent. */
    private static final double[] POINTS = {0.05, 0.1, 0.2, 0.5, 1};

    @Override
    public List<Topic> topics(Assessment it) {
        return List.of(
                new Topic(
                        "power.wall-w", "At the wall under the heaviest workload", () -> load(it)),
                new Topic("power.wall-idle-w", "At the wall at idle", () -> idle(it)),
                new Topic("power.kwh-per-year", "Energy in a year", () -> energy(it)),
                new Topic(
                        "power.union-kwh-per-year",
                        "Energy in a year by the European Union's measure",
                        () -> union(it)),
                new Topic("cost.energy-per-year", "Energy of a year in money", () -> money(it)),
                new Topic("heat.into-room-w", "Heat into the room under load", () -> room(it)));
    }

    private static Explanation load(Assessment it) {
        return wall(
                it,
                "power.wall-w",
                "At the wall under the heaviest workload",
                "power.load-w",
                it.power().loadW(),
                it.power().wallW());
    }

    private static Explanation idle(Assessment it) {
        return wall(
                it,
                "power.wall-idle-w",
                "At the wall at idle",
                "power.idle-w",
                it.power().idleW(),
                it.power().wallIdleW());
    }

    private static Explanation wall(
            Assessment it, String number, String title, String from, double dcW, double acW) {
        Derivation how =
                new Derivation(
                        number,
                        title,
                        "load / efficiency at that share of the rating; below the table's lowest"
                                + " point load + rating x (a + b share + c share^2)",
                        SOURCE);
        int watts = it.build().supply().watts();
        String supply = it.build().supply().id();
        EfficiencyLevel level = Workings.efficiency(it);
        MainsColumn column = MainsColumn.forMains(it.brief().place().mainsV());
        how.given("load", dcW, "W", "number " + from);
        how.given("rating", watts, "W", supply + ", watts");
        how.fact("80 PLUS level", level.id(), "", supply + ", efficiency");
        how.given("mains", it.brief().place().mainsV(), "V", "brief, place, mains");
        double share = how.step("load share", dcW / watts, "", "{} / {}", dcW, watts);
        how.remark(SupplyLoss.LOAD_SHARE.remark(share));
        if (Efficiency.at(level, column, Math.min(1, share)).isEmpty()) {
            return estimated(how, dcW, watts, share, acW, SupplyLoss.of(level, column));
        }
        double efficiency = efficiency(how, level, column, share);
        return how.gives(acW, 1, "W", "{} / {}", dcW, efficiency);
    }

    private static Explanation money(Assessment it) {
        Derivation how =
                new Derivation(
                        "cost.energy-per-year",
                        "Energy of a year in money",
                        "energy in a year, to the watt hour, x tariff",
                        "exact decimal arithmetic; the tariff of the brief");
        BigDecimal kwh =
                BigDecimal.valueOf(it.power().kwhPerYear()).setScale(3, RoundingMode.HALF_UP);
        Currency currency = it.brief().currency();
        // The brief holds hundredths of the smallest coin.
        BigDecimal tariff =
                BigDecimal.valueOf(
                        it.brief().place().tariffPerKwhMinor(),
                        currency.getDefaultFractionDigits() + 2);
        how.fact("energy", kwh, "kWh", "number power.kwh-per-year, before rounding");
        how.fact("tariff", tariff, currency.getCurrencyCode() + "/kWh", "brief, place, tariff");
        return how.gives(
                YearlyEnergy.cost(it.power().kwhPerYear(), tariff)
                        .setScale(currency.getDefaultFractionDigits(), RoundingMode.HALF_UP),
                currency.getCurrencyCode(),
                "{} x {}",
                kwh,
                tariff);
    }

    private static Explanation room(Assessment it) {
        Derivation how =
                new Derivation(
                        "heat.into-room-w",
                        "Heat into the room under load",
                        "everything that the mains meter shows ends as heat in the room",
                        "conservation of energy: what leaves as sound and light is less than the"
                                + " rounding");
        double wallW = how.given("at the wall", it.power().wallW(), "W", "number power.wall-w");
        return how.gives(it.power().wallW(), 1, "W", "{}", wallW);
    }

    /** A supply without a label is held to what law or its day's guide asks of any. */
    private static String table(EfficiencyLevel level, MainsColumn column) {
        if (level != EfficiencyLevel.NONE) {
            return "80 PLUS table";
        }
        return column == MainsColumn.V230_EU_INTERNAL
                ? "Regulation (EU) No 617/2013, Annex II, least of any supply (from memory)"
                : "ATX12V design guide 2.2, least of any supply (from memory)";
    }

    private static double efficiency(
            Derivation how, EfficiencyLevel level, MainsColumn column, double share) {
        double capped = Math.min(1, share);
        double here = Efficiency.at(level, column, capped).orElseThrow();
        int upper = POINTS.length - 1;
        while (upper > 1
                && POINTS[upper - 1] >= capped
                && Efficiency.at(level, column, POINTS[upper - 1]).isPresent()) {
            upper--;
        }
        double s0 = POINTS[upper - 1];
        double s1 = POINTS[upper];
        if (share >= 1 || Efficiency.at(level, column, s0).isEmpty()) {
            how.given("efficiency", here, "", table(level, column) + " at this load");
            return how.step("efficiency", here, "", "{}", here);
        }
        double e0 = Efficiency.at(level, column, s0).orElseThrow();
        double e1 = Efficiency.at(level, column, s1).orElseThrow();
        how.given("efficiency at load share " + Derivation.print(s0), e0, "", table(level, column));
        how.given("efficiency at load share " + Derivation.print(s1), e1, "", table(level, column));
        return how.step(
                "efficiency",
                here,
                "",
                "{} + ({} - {}) x ({} - {}) / ({} - {})",
                e0,
                share,
                s0,
                e1,
                e0,
                s1,
                s0);
    }

    private static Explanation estimated(
            Derivation how, double dcW, int watts, double share, double acW, SupplyLoss loss) {
        String from = "curve through the level's three lowest points";
        how.given("a", loss.constant(), "", from);
        how.given("b", loss.linear(), "", from);
        how.given("c", loss.square(), "", from);
        how.remark("the load lies below the table's lowest point: an estimate beyond the table");
        return how.gives(
                acW,
                1,
                "W",
                "{} + {} x max(0, {} + {} x {} + {} x {}^2)",
                dcW,
                watts,
                loss.constant(),
                loss.linear(),
                share,
                loss.square(),
                share);
    }

    private static Explanation union(Assessment it) {
        Derivation how =
                new Derivation(
                        "power.union-kwh-per-year",
                        "Energy in a year by the European Union's measure",
                        "8760 / 1000 x (0.55 off + 0.05 asleep + 0.40 idle)",
                        "Commission Regulation (EU) No 617/2013, Annex II (weights from memory)");
        double offW = how.given("off", TypicalDraw.OFF_MAINS_W, "W", "common practice");
        double sleepW = how.given("asleep", TypicalDraw.SLEEP_MAINS_W, "W", "common practice");
        double idleW =
                how.given("at the wall, idle", it.power().wallIdleW(), "W", "power.wall-idle-w");
        return how.gives(
                Workings.unionKwh(it),
                1,
                "kWh",
                "8760 / 1000 x (0.55 x {} + 0.05 x {} + 0.40 x {})",
                offW,
                sleepW,
                idleW);
    }

    private static Explanation energy(Assessment it) {
        Derivation how =
                new Derivation(
                        "power.kwh-per-year",
                        "Energy in a year",
                        "8760 / 1000 x sum of power x share of the year, + (load - idle) x hours"
                                + " under load / 1000",
                        "ENERGY STAR for computers, typical energy consumption; duty cycle of"
                                + " version 8 from memory; load in place of idling is common"
                                + " practice");
        Brief.Place place = it.brief().place();
        double wallW = how.given("at the wall, load", it.power().wallW(), "W", "power.wall-w");
        double idleW =
                how.given("at the wall, idle", it.power().wallIdleW(), "W", "power.wall-idle-w");
        how.given("off", TypicalDraw.OFF_MAINS_W, "W", "common practice");
        how.given("asleep", TypicalDraw.SLEEP_MAINS_W, "W", "common practice");
        DutyCycle cycle = DutyCycle.VERSION_8;
        String of = "duty cycle";
        how.fact("off, asleep", cycle.offPercent() + " %, " + cycle.sleepPercent(), "%", of);
        how.fact(
                "long idle, short idle",
                cycle.longIdlePercent() + " %, " + cycle.shortIdlePercent(),
                "%",
                of);
        how.given("use a day", place.hoursPerDay(), "h", "brief, place, hours");
        how.given("share under load", place.loadShare(), "", "brief, place, load");
        double hours = place.hoursPerDay() * place.loadShare() * 365;
        how.remark(YearlyEnergy.LOAD_HOURS.remark(hours));
        how.step(
                "hours under load",
                hours,
                "h",
                "{} x {} x 365",
                place.hoursPerDay(),
                place.loadShare());
        double idling =
                how.step(
                        "a year without work",
                        YearlyEnergy.kwh(
                                cycle,
                                TypicalDraw.OFF_MAINS_W,
                                TypicalDraw.SLEEP_MAINS_W,
                                idleW,
                                idleW),
                        "kWh",
                        "({} x {} + {} x {} + {} x ({} + {})) / 100 x 8760 / 1000",
                        TypicalDraw.OFF_MAINS_W,
                        cycle.offPercent(),
                        TypicalDraw.SLEEP_MAINS_W,
                        cycle.sleepPercent(),
                        idleW,
                        cycle.longIdlePercent(),
                        cycle.shortIdlePercent());
        return how.gives(
                it.power().kwhPerYear(),
                1,
                "kWh",
                "{} + ({} - {}) x {} / 1000",
                idling,
                wallW,
                idleW,
                hours);
    }
}
