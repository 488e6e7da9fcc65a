package rigbrief.proposal.account;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import rigbrief.brief.Brief;
import rigbrief.explain.Derivation;
import rigbrief.explain.Explanation;
import rigbrief.explain.Topic;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.CeilingStep;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.proposal.front.Knee;
import rigbrief.quantity.Money;

/** Explains the front of a budget: its points, their gaps, the knee, other ceilings. */
final class FrontAccount {
    private final Brief brief;
    private final Supplier<Budget> budget;

    FrontAccount(Brief brief, Supplier<Budget> budget) {
        this.brief = brief;
        this.budget = budget;
    }

    List<Topic> topics() {
        return List.of(
                topic(
                        "front.builds",
                        "Builds on the front",
                        "builds that were found of which none is both cheaper and better",
                        this::builds),
                topic(
                        "front.totals",
                        "What the builds of the front cost and promise",
                        "every point is a build: its total, rates, seconds and noise are the"
                                + " numbers of an audit of its parts",
                        this::totals),
                topic(
                        "front.utility",
                        "Utility of the builds on the front",
                        "points / most points",
                        this::utility),
                topic(
                        "front.gap",
                        "Gaps of the front",
                        "(most points that a build under the next total can have - points) / most"
                                + " points",
                        this::gap),
                topic("front.knee", "Knee of the front", Knee.MEANING, this::knee),
                topic(
                        "front.ceilings",
                        "What other ceilings would change",
                        "utility of the best build found under the other ceiling - utility of the"
                                + " best found under this one",
                        this::ceilings));
    }

    private static Topic topic(
            String number,
            String title,
            String formula,
            Function<Derivation, Explanation> explained) {
        return new Topic(
                number,
                title,
                () -> explained.apply(new Derivation(number, title, formula, ProofAccount.SOURCE)));
    }

    private List<FrontStep> front() {
        return budget.get().front();
    }

    private Explanation none(Derivation how) {
        how.remark("no build that meets every must was found so far down");
        return how.givesNothing("");
    }

    private Explanation builds(Derivation how) {
        how.fact(
                "builds",
                front().size(),
                "",
                "the search; rigbrief budget --format csv lists them");
        return how.gives(front().size(), 0, "", "{}", front().size());
    }

    private Explanation totals(Derivation how) {
        if (front().isEmpty()) {
            return none(how);
        }
        for (FrontStep step : front()) {
            FrontPoint point = new FrontPoint(step.totalMinor(), step.utility(), step.build());
            how.fact(
                    String.join(", ", point.parts()),
                    money(step.totalMinor()),
                    code(),
                    "number cost.total of that list");
        }
        how.remark("rigbrief explain on such a list shows how each of its numbers came about");
        how.remark("what is printed between two points is the difference of their figures");
        return how.givesNothing(code());
    }

    private Explanation utility(Derivation how) {
        if (front().isEmpty()) {
            return none(how);
        }
        long most = most(how);
        FrontStep last = front().get(front().size() - 1);
        for (FrontStep step : front()) {
            how.exact(
                    "utility at " + money(step.totalMinor()),
                    rounded(step.utility(), 4, RoundingMode.HALF_UP),
                    "",
                    "{} / {}",
                    step.points(),
                    most);
        }
        how.remark(
                "points: the sum of weight x utility over the goals, as number proof.reached has it");
        return how.gives(last.utility(), 4, "", "{} / {}", last.points(), most);
    }

    private Explanation gap(Derivation how) {
        if (front().isEmpty()) {
            return none(how);
        }
        long most = most(how);
        FrontStep widest = front().get(0);
        for (FrontStep step : front()) {
            widest = step.gap() > widest.gap() ? step : widest;
            long bound = bound(step, most);
            how.exact(
                    "gap at " + money(step.totalMinor()),
                    rounded(step.gap(), 3, RoundingMode.CEILING),
                    "",
                    "ceil(1000 x ({} - {}) / {}) / 1000",
                    bound,
                    step.points(),
                    most);
        }
        how.remark(
                "the most points under a total follow from the searches along the front: each"
                        + " proves of a weighing of points and money that no build passes its bound,"
                        + " and (bound + money's worth) / points' worth is what is left for points");
        how.remark(ProofAccount.CHECKED);
        return how.gives(
                rounded(widest.gap(), 3, RoundingMode.CEILING),
                "",
                "ceil(1000 x ({} - {}) / {}) / 1000",
                bound(widest, most),
                widest.points(),
                most);
    }

    private static long bound(FrontStep step, long most) {
        return step.points() + Math.round(step.gap() * most);
    }

    private Explanation knee(Derivation how) {
        Optional<FrontStep> knee = front().stream().filter(FrontStep::knee).findFirst();
        if (knee.isEmpty()) {
            how.remark("there is no knee: no build lies above the line from end to end");
            return how.givesNothing(code());
        }
        FrontStep first = front().get(0);
        FrontStep last = front().get(front().size() - 1);
        how.fact("cheapest", money(first.totalMinor()), code(), "the front");
        how.fact("best", money(last.totalMinor()), code(), "the front");
        how.fact("points of the cheapest", first.points(), "", "number front.utility");
        how.fact("points of the best", last.points(), "", "number front.utility");
        for (int i = 1; i < front().size() - 1; i++) {
            FrontStep step = front().get(i);
            how.step(
                    "height over the line at " + money(step.totalMinor()),
                    Knee.offset(front(), i, FrontStep::totalMinor, FrontStep::points),
                    "",
                    "({} - {}) / ({} - {}) - ({} - {}) / ({} - {})",
                    step.points(),
                    first.points(),
                    last.points(),
                    first.points(),
                    money(step.totalMinor()),
                    money(first.totalMinor()),
                    money(last.totalMinor()),
                    money(first.totalMinor()));
        }
        how.remark("the knee is the one with the greatest height");
        how.remark(Knee.SOURCE);
        BigDecimal total = money(knee.get().totalMinor());
        return how.gives(total, code(), "{}", total);
    }

    private Explanation ceilings(Derivation how) {
        List<CeilingStep> steps = budget.get().ceilingSteps();
        if (steps.isEmpty()) {
            return none(how);
        }
        BigDecimal ceiling = brief.ceiling().amount();
        how.fact("ceiling", ceiling, code(), "brief, ceiling");
        CeilingStep last = steps.get(steps.size() - 1);
        for (CeilingStep step : steps) {
            how.fact(
                    "best build under %s".formatted(ceiling.add(money(step.moreMinor()))),
                    money(step.to().totalMinor()),
                    code(),
                    "the front");
            how.exact(
                    "utility under " + ceiling.add(money(step.moreMinor())) + " over that under it",
                    rounded(step.gained(), 3, RoundingMode.HALF_UP),
                    "",
                    "{} - {}",
                    step.to().utility(),
                    step.from().utility());
        }
        how.remark("how much more or less the ceiling is tried with is common practice");
        return how.gives(
                last.gained(), 3, "", "{} - {}", last.to().utility(), last.from().utility());
    }

    private long most(Derivation how) {
        FrontStep step = front().get(front().size() - 1);
        long most = step.utility() == 0 ? 1 : Math.round(step.points() / step.utility());
        how.fact("most points", most, "", "brief, wishes: 10000 x sum of the weights");
        return most;
    }

    private static BigDecimal rounded(double figure, int decimals, RoundingMode mode) {
        return new BigDecimal(figure).setScale(decimals, mode);
    }

    private BigDecimal money(long minor) {
        return Money.ofMinor(minor, brief.currency()).amount();
    }

    private String code() {
        return brief.currency().getCurrencyCode();
    }
}
