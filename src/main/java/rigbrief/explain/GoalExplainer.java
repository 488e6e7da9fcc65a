package rigbrief.explain;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import rigbrief.assess.Assessment;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.goal.EnergyGoal;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.goal.LifetimeGoal;
import rigbrief.goal.LookGoal;
import rigbrief.goal.QuietGoal;
import rigbrief.goal.ValueGoal;
import rigbrief.part.Slot;
import rigbrief.quantity.Contributions;
import rigbrief.quantity.Money;

/** Explains the utility of a build and of each goal with a weight. */
final class GoalExplainer implements Explainer {
    private static final int DECIMALS = 4;
    private static final String PRACTICE = "common practice: curve of the goal";

    @Override
    public List<Topic> topics(Assessment it) {
        List<Topic> topics = new ArrayList<>();
        topics.add(new Topic("utility", "Utility of the build", () -> utility(it)));
        for (Goal goal : weighted(it)) {
            String name = "goal." + goal.info().id();
            topics.add(new Topic(name, goal.info().title(), () -> goal(it, goal, name)));
            String part = name + ".contribution";
            String title = goal.info().title() + ", contribution";
            topics.add(new Topic(part, title, () -> contribution(it, goal, part, title)));
        }
        return topics;
    }

    private static List<Goal> weighted(Assessment it) {
        return Goals.ALL.stream().filter(goal -> weight(it, goal) > 0).toList();
    }

    private static int weight(Assessment it, Goal goal) {
        return it.brief().wishes().weight(goal.info().id());
    }

    private static BigDecimal utility(Assessment it, Goal goal) {
        return BigDecimal.valueOf(goal.utility(it), DECIMALS);
    }

    private static Explanation utility(Assessment it) {
        Derivation how =
                new Derivation(
                        "utility",
                        "Utility of the build",
                        "mean of the goals' utilities by the brief's weights",
                        "the brief: wishes");
        List<Object> values = new ArrayList<>();
        BigDecimal points = BigDecimal.ZERO;
        int weights = 0;
        for (Goal goal : weighted(it)) {
            int weight = weight(it, goal);
            BigDecimal utility = utility(it, goal);
            String id = goal.info().id();
            how.given("weight of " + id, weight, "", "brief, wishes, " + id);
            how.fact("utility of " + id, utility, "", "number goal." + id);
            values.add(weight);
            values.add(utility);
            points = points.add(utility.multiply(BigDecimal.valueOf(weight)));
            weights += weight;
        }
        if (weights == 0) {
            how.remark("no goal has a weight, so nothing is left to wish");
            return how.gives(BigDecimal.ONE.setScale(DECIMALS), "", "1");
        }
        String sum = String.join(" + ", weighted(it).stream().map(any -> "{} x {}").toList());
        values.add(weights);
        return how.gives(
                points.divide(BigDecimal.valueOf(weights), DECIMALS, RoundingMode.HALF_UP),
                "",
                "(" + sum + ") / {}",
                values.toArray());
    }

    private static Explanation goal(Assessment it, Goal goal, String name) {
        Derivation how = new Derivation(name, goal.info().title(), goal.info().curve(), PRACTICE);
        BigDecimal utility = utility(it, goal);
        return switch (goal.info().id()) {
            case "energy" -> energy(how, it, utility);
            case "quiet" -> quiet(how, it, utility);
            case "value" -> value(how, it, utility);
            case "simple-order" -> order(how, it, utility);
            case "lifetime" -> places(how, it, utility, goal, 1);
            case "look" -> places(how, it, utility, goal, goal.reads().size());
            case "workloads" -> new WorkloadsExplanation(how, it).gives(utility);
            case "upgrade-room" -> UpgradeRoomExplanation.of(how, it, utility);
            default -> throw new IllegalStateException("no steps for goal " + goal.info().id());
        };
    }

    private static Explanation energy(Derivation how, Assessment it, BigDecimal utility) {
        double kwh =
                how.given("energy", it.power().kwhPerYear(), "kWh", "number power.kwh-per-year");
        double reference =
                how.given(
                        "reference",
                        EnergyGoal.referenceKwh(it.brief()),
                        "kWh",
                        "600 W under load, 100 W at idle, the brief's hours; common practice");
        return how.gives(utility, "", "max(0, min(1, 1 - {} / {}))", kwh, reference);
    }

    private static Explanation quiet(Derivation how, Assessment it, BigDecimal utility) {
        Brief.Noise noise = it.brief().noise();
        double level = how.given("level", it.load().levelDba(), "dB(A)", "number noise.load-dba");
        int top = noise.mustDba().orElse(QuietGoal.LOUD_DBA);
        int bottom = Math.min(noise.wishDba().orElse(QuietGoal.SILENT_DBA), top - 1);
        how.given(
                "top", top, "dB(A)", noise.mustDba().isPresent() ? "brief, noise, must" : "usual");
        how.given(
                "bottom",
                bottom,
                "dB(A)",
                noise.wishDba().isPresent() ? "brief, noise, wish" : "usual");
        return how.gives(
                utility, "", "max(0, min(1, ({} - {}) / ({} - {})))", top, level, top, bottom);
    }

    private static Explanation value(Derivation how, Assessment it, BigDecimal utility) {
        List<Object> values = new ArrayList<>();
        double points = 0;
        int weights = 0;
        for (Goal goal : weighted(it)) {
            if (!(goal instanceof ValueGoal)) {
                String id = goal.info().id();
                how.fact("utility of " + id, utility(it, goal), "", "number goal." + id);
                values.add(weight(it, goal));
                values.add(utility(it, goal));
                points += weight(it, goal) * utility(it, goal).doubleValue();
                weights += weight(it, goal);
            }
        }
        String sum =
                String.join(" + ", values.stream().map(any -> "{}").toList())
                        .replace("{} + {}", "{} x {}");
        values.add(weights);
        double others =
                weights == 0
                        ? how.step("mean of the other goals", 1, "", "1")
                        : how.step(
                                "mean of the other goals",
                                points / weights,
                                "",
                                "(" + sum + ") / {}",
                                values.toArray());
        BigDecimal total = Money.ofMinor(it.cost().totalMinor(), it.brief().currency()).amount();
        BigDecimal ceiling = it.brief().ceiling().amount();
        String code = it.brief().currency().getCurrencyCode();
        how.fact("total", total, code, "number cost.total");
        how.fact("ceiling", ceiling, code, "brief, ceiling");
        double spent =
                how.step(
                        "share of the ceiling spent",
                        (double) it.cost().totalMinor() / it.brief().ceiling().minorUnits(),
                        "",
                        "{} / {}",
                        total,
                        ceiling);
        return how.gives(utility, "", "{} / ({} + {})", others, others, spent);
    }

    private static Explanation order(Derivation how, Assessment it, BigDecimal utility) {
        Cost cost = it.cost();
        how.given("suppliers", cost.suppliers(), "", "the order's offers");
        how.given("longest lead", cost.longestLeadDays(), "days", "the order's offers");
        how.given("parts with a single offer", cost.singleOffers(), "", "catalogue, offers");
        return how.gives(
                utility,
                "",
                "(min(1, max(0, 1 - ({} - 1) / 3)) + max(0, 1 - {} / 21) + max(0, 1 - {} / 5)) / 3",
                cost.suppliers(),
                cost.longestLeadDays(),
                cost.singleOffers());
    }

    /** Goals that are a sum over places. */
    private static Explanation places(
            Derivation how, Assessment it, BigDecimal utility, Goal goal, int over) {
        List<Object> shares = new ArrayList<>();
        for (Slot slot : goal.reads()) {
            boolean has = it.build().has(slot);
            double share =
                    goal instanceof LookGoal
                            ? LookGoal.share(it.build(), slot, it.brief())
                            : LifetimeGoal.share(slot, has ? it.build().part(slot) : null);
            how.given(slot.word(), share, "", has ? it.build().part(slot).id() : "nothing there");
            shares.add(share);
        }
        String sum = String.join(" + ", shares.stream().map(any -> "{}").toList());
        shares.add(over);
        return how.gives(utility, "", "(" + sum + ") / {}", shares.toArray());
    }

    private static Explanation contribution(Assessment it, Goal goal, String number, String title) {
        List<Goal> goals = weighted(it);
        long[] points =
                goals.stream().mapToLong(any -> (long) weight(it, any) * any.utility(it)).toArray();
        int weights = goals.stream().mapToInt(any -> weight(it, any)).sum();
        long whole =
                BigDecimal.valueOf(LongStream.of(points).sum())
                        .divide(BigDecimal.valueOf(weights), 0, RoundingMode.HALF_UP)
                        .longValueExact();
        int at = goals.indexOf(goal);
        long share = Contributions.of(points, weights, whole)[at];
        long more = share - points[at] / weights;
        Derivation how =
                new Derivation(
                        number,
                        title,
                        "weight x utility / sum of weights, rounded down to ten-thousandths; what"
                                + " the sum then lacks goes to the largest remainders",
                        "the brief: wishes; largest remainder");
        String id = goal.info().id();
        how.given("weight", weight(it, goal), "", "brief, wishes, " + id);
        how.fact("utility", utility(it, goal), "", "number goal." + id);
        how.given("sum of weights", weights, "", "brief, wishes");
        how.given("by the remainder", more, "ten-thousandths", "comparison with the other goals");
        return how.gives(
                BigDecimal.valueOf(share, DECIMALS),
                "",
                "(floor(10000 x {} x {} / {}) + {}) / 10000",
                weight(it, goal),
                utility(it, goal),
                weights,
                more);
    }
}
