package rigbrief.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.brief.Brief;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.CeilingStep;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.proposal.budget.GoalTotal;
import rigbrief.proposal.budget.NeedPrice;
import rigbrief.proposal.budget.Turned;
import rigbrief.proposal.budget.Variant;
import rigbrief.proposal.need.Level;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.solve.Least;

/** The page of a budget: what the goals of a brief cost. */
public final class BudgetPage {
    /** What the page explains at its end, in this order. */
    private static final List<String> TERMS =
            List.of("need", "wishes-met", "ceiling", "front", "knee", "proof", "fps", "dba");

    private final Budget budget;
    private final Brief brief;
    private final Words words;
    private final BudgetFigures figures;
    private final PartWords parts;

    private BudgetPage(Budget budget, Words words) {
        this.budget = budget;
        this.brief = budget.brief();
        this.words = words;
        this.figures = new BudgetFigures(budget, words);
        this.parts = new PartWords(words, brief.currency());
    }

    /** The page of a budget. */
    public static Page of(Budget budget, Words words) {
        return new BudgetPage(budget, words).page();
    }

    private Page page() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kind", words.text("budget.kind"));
        model.put("plate", plate());
        model.put("partial", budget.partial());
        if (budget.clash().isPresent()) {
            model.put("remarks", partial());
            Clashes.put(model, budget.clash().get(), brief, words);
            return Page.still("impossible.ftlh", brief.client(), model);
        }
        model.put("terms", TERMS);
        model.put("currency", brief.currency().getCurrencyCode());
        model.put("least", least());
        model.put("holds", holds());
        model.put("goals", budget.goals().stream().map(this::goal).toList());
        model.put("prices", budget.prices().stream().map(this::price).toList());
        model.put("pricesNote", pricesNote());
        front(model);
        model.put("ceilings", budget.ceilingSteps().stream().map(this::ceiling).toList());
        return Page.still("budget.ftlh", brief.client(), model);
    }

    private List<String> partial() {
        return budget.partial() ? List.of(words.text("budget.partial")) : List.of();
    }

    private List<List<String>> plate() {
        return List.of(
                List.of(words.text("proposal.plate.brief"), brief.name()),
                List.of(
                        words.text("proposal.plate.ceiling"),
                        figures.money(brief.ceiling().minorUnits())),
                List.of(words.text("proposal.plate.prices"), words.date(budget.catalogue().asOf())),
                List.of(words.text("proposal.plate.catalogue"), budget.catalogue().name()));
    }

    /** The least total in sentences, the first of them the one to be read. */
    private List<String> least() {
        Least musts = budget.musts();
        List<String> sentences = new ArrayList<>();
        if (musts.best().isEmpty()) {
            sentences.add(words.text("budget.musts.none"));
            return sentences;
        }
        sentences.add(words.text("budget.musts", figures.money(musts.totalMinor())));
        sentences.add(
                musts.proven()
                        ? words.text("proof.total")
                        : words.text("budget.musts.open", figures.money(musts.boundMinor())));
        long over = musts.totalMinor() - brief.ceiling().minorUnits();
        if (over > 0) {
            sentences.add(words.text("budget.musts.over", figures.money(over)));
        }
        budget.wishesToo().ifPresent(all -> sentences.add(wishes(all)));
        return sentences;
    }

    private String wishes(Least all) {
        return switch (all.answer()) {
            case NO -> words.text("budget.wishes.never");
            case NOT_KNOWN -> words.text("budget.wishes.unknown");
            case YES ->
                    words.text(
                            all.proven() ? "budget.wishes" : "budget.wishes.open",
                            figures.money(all.totalMinor()));
        };
    }

    /** What holds the least total up: musts first, then rules. */
    private List<String> holds() {
        List<String> holds = new ArrayList<>();
        for (NeedPrice price : budget.prices()) {
            if (price.binds()) {
                holds.add(words.say(price.need().phrase()));
            }
        }
        // Every must together is held up alike whichever of them is looked at.
        budget.goals().stream()
                .filter(goal -> goal.need().kind() != Need.Kind.WISH)
                .findFirst()
                .ifPresent(goal -> goal.bindingTogether().forEach(rule -> holds.add(turned(rule))));
        return holds;
    }

    private String turned(Turned rule) {
        return words.text(
                "budget.turned",
                parts.ruleTitle(rule.rule()),
                rule.count(),
                words.text("slot." + rule.slot().word()));
    }

    private Map<String, Object> goal(GoalTotal goal) {
        boolean wish = goal.need().kind() == Need.Kind.WISH;
        List<String> why = new ArrayList<>();
        if (goal.alone().best().isPresent() && !goal.binding().isEmpty()) {
            why.add(words.text("budget.alone-by", rules(goal.binding())));
        }
        if (wish && goal.together().best().isPresent()) {
            List<String> together = new ArrayList<>();
            goal.bindingNeeds().forEach(name -> together.add(need(name)));
            goal.bindingTogether().forEach(rule -> together.add(rule(rule)));
            if (!together.isEmpty()) {
                why.add(words.text("budget.together-by", String.join("; ", together)));
            }
        }
        return Map.of(
                "need", words.say(goal.need().phrase()),
                "kind", words.text(wish ? "budget.wish" : "budget.must"),
                "alone", figures.least(goal.alone()),
                "together", figures.least(goal.together()),
                "why", why);
    }

    private String rules(List<Turned> rules) {
        return String.join("; ", rules.stream().map(this::rule).toList());
    }

    private String rule(Turned rule) {
        return words.text(
                "budget.rule",
                parts.ruleTitle(rule.rule()),
                words.text("slot." + rule.slot().word()));
    }

    /** A must that is known by its English name. */
    private String need(String name) {
        return budget.prices().stream()
                .map(NeedPrice::need)
                .filter(need -> need.name().equals(name))
                .findFirst()
                .map(need -> words.say(need.phrase()))
                .orElse(name);
    }

    private Map<String, Object> price(NeedPrice price) {
        List<List<String>> variants = new ArrayList<>();
        boolean own = price.need().kind() == Need.Kind.OWN;
        variants.add(variant(words.text(own ? "budget.anew" : "budget.without"), price.without()));
        price.softer()
                .ifPresent(it -> variants.add(variant(level(price.need().softer().get()), it)));
        price.harder()
                .ifPresent(it -> variants.add(variant(level(price.need().harder().get()), it)));
        return Map.of("need", words.say(price.need().phrase()), "variants", variants);
    }

    private String level(Level level) {
        return words.say(level.phrase());
    }

    private List<String> variant(String instead, Variant variant) {
        return List.of(instead, figures.moneyOf(variant), figures.wishesOf(variant));
    }

    private String pricesNote() {
        String least =
                budget.musts().best().isPresent()
                        ? figures.money(budget.musts().totalMinor())
                        : words.text("budget.not-found");
        return budget.ceilingSteps().isEmpty()
                ? words.text("budget.prices.note.no-build", least)
                : words.text(
                        "budget.prices.note",
                        least,
                        figures.wishes(budget.ceilingSteps().get(0).from().utility()));
    }

    private void front(Map<String, Object> model) {
        List<FrontStep> front = budget.front();
        model.put("upTo", figures.money(budget.upToMinor()));
        model.put("frontProven", budget.frontProven());
        List<Map<String, Object>> steps = new ArrayList<>();
        FrontStep before = null;
        for (FrontStep step : front) {
            steps.add(step(before, step));
            before = step;
        }
        model.put("steps", steps);
        if (front.size() > 1) {
            chart(model);
        }
    }

    private Map<String, Object> step(FrontStep before, FrontStep step) {
        return Map.of(
                "total", figures.amount(step.totalMinor()),
                "more", before == null ? "" : figures.more(step.totalMinor() - before.totalMinor()),
                "knee", step.knee(),
                "wishes", figures.wishes(step.utility()),
                "gap", figures.gap(step.gap()),
                "promises", figures.promises(step),
                "changes", before == null ? List.of() : figures.changes(before, step));
    }

    private void chart(Map<String, Object> model) {
        List<FrontPoint> points = new ArrayList<>();
        int knee = -1;
        for (FrontStep step : budget.front()) {
            knee = step.knee() ? points.size() : knee;
            points.add(new FrontPoint(step.totalMinor(), step.utility(), step.build()));
        }
        FrontChart chart = FrontChart.close(points, brief.currency(), words);
        String told = chart.words();
        List<String> at = List.of();
        if (knee >= 0) {
            at = chart.places().subList(2 * knee, 2 * knee + 2);
            told +=
                    " "
                            + words.text(
                                    "budget.knee.at",
                                    figures.money(points.get(knee).totalMinor()),
                                    figures.wishes(points.get(knee).utility()));
        }
        model.put("chart", chart.drawing());
        model.put("chartMoney", chart.moneyLabels());
        model.put("chartWishes", chart.wishLabels());
        model.put("chartWords", told);
        model.put("kneeAt", at);
    }

    private Map<String, Object> ceiling(CeilingStep step) {
        boolean less = step.moreMinor() < 0;
        FrontStep from = less ? step.to() : step.from();
        FrontStep to = less ? step.from() : step.to();
        boolean same = from.totalMinor() == to.totalMinor();
        return Map.of(
                "ceiling", figures.amount(brief.ceiling().minorUnits() + step.moreMinor()),
                "more", figures.more(step.moreMinor()),
                "total", figures.amount(step.to().totalMinor()),
                "wishes", figures.gained(step.gained()),
                "changes", same ? List.of() : figures.changes(from, to),
                "less", less);
    }
}
