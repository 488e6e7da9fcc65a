package rigbrief.proposal.account;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.explain.Derivation;
import rigbrief.explain.Explanation;
import rigbrief.explain.Topic;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.Gain;
import rigbrief.proposal.budget.GoalTotal;
import rigbrief.proposal.budget.NeedPrice;
import rigbrief.proposal.budget.Variant;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.need.Needs;
import rigbrief.proposal.need.Stretch;
import rigbrief.proposal.solve.Answer;
import rigbrief.proposal.solve.Least;
import rigbrief.quantity.Money;

/** Explains the least totals of a budget and what each must costs. */
final class BudgetAccount {
    private static final String LEAST =
            "parts + delivery + fees + tax of the cheapest build that the search finds; no build"
                    + " costs less where the bound says so";

    private final Brief brief;
    private final Catalogue catalogue;
    private final Supplier<Budget> budget;

    BudgetAccount(Brief brief, Catalogue catalogue, Supplier<Budget> budget) {
        this.brief = brief;
        this.catalogue = catalogue;
        this.budget = budget;
    }

    List<Topic> topics() {
        Map<String, Topic> topics = new LinkedHashMap<>();
        Needs needs = Needs.of(brief, catalogue);
        least(
                topics,
                "budget.musts",
                "Least total that meets every must",
                it -> Optional.of(it.musts()));
        put(
                topics,
                "budget.over-ceiling",
                "What the least total is over the ceiling",
                this::overCeiling);
        put(topics, "budget.turned-away", "Cheaper choices that rules turn away", this::turnedAway);
        if (!needs.wishes().isEmpty()) {
            least(
                    topics,
                    "budget.wishes-too",
                    "Least total that meets every wish too",
                    Budget::wishesToo);
        }
        for (Need need : needs.musts()) {
            if (need.kind() == Need.Kind.MUST || need.kind() == Need.Kind.OWN) {
                goal(topics, need);
                String name = name(need);
                price(
                        topics,
                        name + ".not-asked-for",
                        "not asked for",
                        need,
                        it -> Optional.of(it.without()));
                if (need.softer().isPresent()) {
                    price(topics, name + ".softer", "a step softer", need, NeedPrice::softer);
                }
                if (need.harder().isPresent()) {
                    price(topics, name + ".harder", "a step harder", need, NeedPrice::harder);
                }
            }
        }
        needs.wishes().forEach(need -> goal(topics, need));
        return List.copyOf(topics.values());
    }

    /** The numbers of a need begin with this. */
    static String name(Need need) {
        return "budget." + (need.kind() == Need.Kind.WISH ? "wish." : "must.") + need.id();
    }

    private static void put(
            Map<String, Topic> topics,
            String name,
            String title,
            Function<Derivation, Explanation> explained,
            String formula) {
        topics.putIfAbsent(
                name,
                new Topic(
                        name,
                        title,
                        () ->
                                explained.apply(
                                        new Derivation(
                                                name, title, formula, ProofAccount.SOURCE))));
    }

    private static void put(
            Map<String, Topic> topics,
            String name,
            String title,
            Function<Derivation, Explanation> explained) {
        put(topics, name, title, explained, "counted while every candidate of a slot is tried");
    }

    private void least(
            Map<String, Topic> topics,
            String name,
            String title,
            Function<Budget, Optional<Least>> which) {
        put(
                topics,
                name,
                title,
                how ->
                        which.apply(budget.get())
                                .map(least -> explained(how, least))
                                .orElseGet(() -> unknown(how)),
                LEAST);
    }

    private void goal(Map<String, Topic> topics, Need need) {
        String name = name(need);
        least(
                topics,
                name + ".alone",
                "Least total for " + need.name() + " alone",
                it -> goal(it, need).map(GoalTotal::alone));
        least(
                topics,
                name + ".together",
                "Least total for " + need.name() + " with every must",
                it -> goal(it, need).map(GoalTotal::together));
    }

    private static Optional<GoalTotal> goal(Budget budget, Need need) {
        return budget.goals().stream()
                .filter(goal -> goal.need().name().equals(need.name()))
                .filter(goal -> goal.need().kind() == need.kind())
                .findFirst();
    }

    private void price(
            Map<String, Topic> topics,
            String name,
            String words,
            Need need,
            Function<NeedPrice, Optional<Variant>> which) {
        Function<Budget, Optional<Variant>> variant =
                it ->
                        it.prices().stream()
                                .filter(price -> price.need().name().equals(need.name()))
                                .findFirst()
                                .flatMap(which);
        put(
                topics,
                name,
                need.name() + ", " + words + ", least total",
                how ->
                        variant.apply(budget.get())
                                .map(it -> difference(how, it))
                                .orElseGet(() -> unknown(how)),
                "least total with the must so - least total with every must as asked");
        put(
                topics,
                name + ".utility",
                need.name() + ", " + words + ", utility",
                how ->
                        variant.apply(budget.get())
                                .map(it -> utility(how, it))
                                .orElseGet(() -> unknown(how)),
                "(points of the best build found with the must so - points of the best as asked) /"
                        + " most points");
    }

    private static Explanation unknown(Derivation how) {
        how.remark("not in this budget");
        return how.givesNothing("");
    }

    private Explanation overCeiling(Derivation how) {
        Least musts = budget.get().musts();
        if (musts.best().isEmpty()) {
            return unknown(how);
        }
        BigDecimal total = money(musts.totalMinor());
        how.fact("least total", total, code(), "number budget.musts");
        how.fact("ceiling", brief.ceiling().amount(), code(), "brief, ceiling");
        return how.gives(
                total.subtract(brief.ceiling().amount()),
                code(),
                "{} - {}",
                total,
                brief.ceiling().amount());
    }

    private Explanation turnedAway(Derivation how) {
        budget.get().binding().forEach(how::remark);
        how.remark(
                "every cheaper candidate of a slot was put into the build of number budget.musts,"
                        + " and the first rule that it breaks was counted; rigbrief audit of that"
                        + " list with the candidate names it too");
        return how.givesNothing("");
    }

    private Explanation explained(Derivation how, Least least) {
        how.remark(ProofAccount.CHECKED);
        if (least.best().isEmpty()) {
            how.remark(
                    least.answer() == Answer.NO
                            ? "proven: no build can do that at any price"
                            : "no build was found in the steps allowed");
            return how.givesNothing(code());
        }
        how.fact("branches looked into", least.steps(), "", "the search");
        how.fact("no build costs less than", money(least.boundMinor()), code(), "the search");
        how.remark(least.proven() ? "proven" : "not proven: a lesser total is not ruled out");
        Assessment it =
                new Assessor(Stretch.boundless(brief), catalogue)
                        .assess(least.best().get().build());
        Cost cost = it.cost();
        if (cost.totalMinor() != least.totalMinor()) {
            how.fact(
                    "total", money(least.totalMinor()), code(), "cost of the build under its need");
            return how.gives(money(least.totalMinor()), code(), "{}", money(least.totalMinor()));
        }
        List<Object> values = new ArrayList<>();
        for (Cost.Line line : cost.lines()) {
            BigDecimal price = money(line.unitMinor());
            how.fact(
                    line.slot().word() + " " + it.build().part(line.slot()).id(),
                    price,
                    code(),
                    "catalogue, offer of " + line.supplier());
            values.addAll(List.of(price, line.pieces(), brief.quantity()));
        }
        how.exact(
                "parts",
                money(cost.partsMinor()),
                code(),
                values.isEmpty()
                        ? "0"
                        : String.join(
                                " + ", Collections.nCopies(values.size() / 3, "{} x {} x {}")),
                values.toArray());
        how.fact("delivery", money(cost.deliveryMinor()), code(), "catalogue, suppliers used");
        how.fact("fees", money(cost.feesMinor()), code(), "brief, fees");
        how.fact("tax", money(cost.taxMinor()), code(), "brief, fees, tax");
        return how.gives(
                money(least.totalMinor()),
                code(),
                "{} + {} + {} + {}",
                money(cost.partsMinor()),
                money(cost.deliveryMinor()),
                money(cost.feesMinor()),
                money(cost.taxMinor()));
    }

    private Explanation difference(Derivation how, Variant variant) {
        if (variant.least().best().isEmpty() || budget.get().musts().best().isEmpty()) {
            how.remark(variant.words() + ": no build was found");
            return how.givesNothing(code());
        }
        how.remark(variant.words());
        BigDecimal so = money(variant.least().totalMinor());
        BigDecimal asked = money(budget.get().musts().totalMinor());
        String parts =
                String.join(
                        ", ",
                        variant.least().best().get().build().filled().values().stream()
                                .map(part -> part.id())
                                .toList());
        how.fact("least total so", so, code(), "cost of " + parts);
        how.fact("least total as asked", asked, code(), "number budget.musts");
        if (variant.savedMinor()
                != budget.get().musts().totalMinor() - variant.least().totalMinor()) {
            how.remark("where the difference is not proven to be one it is told as none");
            return how.gives(
                    money(-variant.savedMinor()), code(), "{}", money(-variant.savedMinor()));
        }
        return how.gives(money(-variant.savedMinor()), code(), "{} - {}", so, asked);
    }

    private Explanation utility(Derivation how, Variant variant) {
        how.remark(variant.words());
        if (variant.gain().isEmpty()) {
            how.remark("no build under the ceiling was found");
            return how.givesNothing("");
        }
        Gain gain = variant.gain().get();
        long asked = budget.get().ceilingSteps().get(0).from().points();
        long most = budget.get().mostPoints();
        how.fact("points of the best build as asked", asked, "", "best build of the front");
        how.fact("points of the best build so", asked + gain.points(), "", "the search");
        how.fact(
                "no build has more points than",
                asked + gain.points() + gain.gapPoints(),
                "",
                "the search");
        if (!gain.proven()) {
            how.fact(
                    "gap: what is not ruled out, over most points, rounded up",
                    BigDecimal.valueOf(gain.gapPoints())
                            .divide(BigDecimal.valueOf(most), 3, RoundingMode.CEILING),
                    "",
                    "the search");
        }
        how.fact("most points", most, "", "brief, wishes: 10000 x sum of the weights");
        return how.gives(
                gain.points() / (double) Math.max(1, most),
                3,
                "",
                "({} - {}) / {}",
                asked + gain.points(),
                asked,
                most);
    }

    private BigDecimal money(long minor) {
        return Money.ofMinor(minor, brief.currency()).amount();
    }

    private String code() {
        return brief.currency().getCurrencyCode();
    }
}
