package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.CeilingStep;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.proposal.budget.GoalTotal;
import rigbrief.proposal.budget.NeedPrice;
import rigbrief.proposal.budget.PartChange;
import rigbrief.proposal.budget.Rate;
import rigbrief.proposal.budget.Turned;
import rigbrief.proposal.budget.Variant;
import rigbrief.proposal.front.Knee;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.solve.Answer;
import rigbrief.proposal.solve.Least;
import rigbrief.quantity.Money;

/** What the goals of a brief cost, in JSON, after the contract {@code rigbrief/budget/1}. */
public final class BudgetJson implements Report<Budget> {
    private static final String SCHEMA = "rigbrief/budget/1";
    private static final ReportInfo INFO =
            ReportInfo.json("budget-json", "what the goals of a brief cost, for programs", SCHEMA);

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(Budget budget, Style style) {
        return JsonPage.object(json -> new Writing(json, budget).document());
    }

    private static final class Writing {
        private final JsonPage json;
        private final Budget budget;
        private final Brief brief;

        Writing(JsonPage json, Budget budget) {
            this.json = json;
            this.budget = budget;
            this.brief = budget.brief();
        }

        void document() {
            json.field("schema", SCHEMA)
                    .field("brief", brief.name())
                    .field("client", brief.client())
                    .field("currency", brief.currency().getCurrencyCode())
                    .field("machines", brief.quantity())
                    .field("ceiling", brief.ceiling().plain())
                    .field("up-to", money(budget.upToMinor()));
            CatalogueJson.write(json, budget.catalogue());
            json.field("result", budget.clash().isPresent() ? "impossible" : "answered")
                    .field("partial", budget.partial())
                    .object(
                            "musts",
                            of -> least(budget.musts()).texts("binding", budget.binding()));
            budget.wishesToo()
                    .ifPresentOrElse(
                            least -> json.object("wishes-too", of -> least(least)),
                            () -> json.nothing("wishes-too"));
            json.list("goals", budget.goals(), this::goal)
                    .list("prices", budget.prices(), this::price)
                    .list("ceiling-steps", budget.ceilingSteps(), this::ceiling)
                    .list("front", budget.front(), this::point)
                    .field("front-proven", budget.frontProven())
                    .field("least-gap", money(budget.leastGapMinor()))
                    .field("knee", Knee.MEANING);
            budget.clash()
                    .ifPresentOrElse(
                            clash ->
                                    json.object(
                                            "impossible",
                                            of -> ClashJson.fields(json, clash, brief)),
                            () -> json.nothing("impossible"));
        }

        private JsonPage least(Least least) {
            if (least.best().isPresent()) {
                json.field("least-total", money(least.totalMinor()));
            } else {
                json.nothing("least-total");
            }
            json.field("proven", least.proven());
            return least.answer() == Answer.NO
                    ? json.nothing("at-least")
                    : json.field("at-least", money(least.boundMinor()));
        }

        private void goal(GoalTotal goal) {
            json.field("need", goal.need().name())
                    .field("id", goal.need().id())
                    .field("kind", goal.need().kind() == Need.Kind.WISH ? "wish" : "must");
            least(goal.alone()).texts("binding", words(goal.binding()));
            json.object(
                    "with-musts", of -> least(goal.together()).texts("binding", together(goal)));
        }

        private static List<String> together(GoalTotal goal) {
            List<String> words = new ArrayList<>(goal.bindingNeeds());
            words.addAll(words(goal.bindingTogether()));
            return words;
        }

        private static List<String> words(List<Turned> rules) {
            return rules.stream().map(Turned::words).toList();
        }

        private void price(NeedPrice price) {
            json.field("need", price.need().name())
                    .field("id", price.need().id())
                    .field("asked", price.need().asked().words());
            json.object("without", of -> variant(price.without()));
            variant("softer", price.softer());
            variant("harder", price.harder());
        }

        private void variant(String name, Optional<Variant> variant) {
            variant.ifPresentOrElse(
                    it -> json.object(name, of -> variant(it)), () -> json.nothing(name));
        }

        private void variant(Variant variant) {
            json.field("to", variant.words());
            least(variant.least());
            boolean found = variant.least().best().isPresent();
            if (found) {
                json.field("saves", money(variant.savedMinor()));
            } else {
                json.nothing("saves");
            }
            json.field(
                    "utility", variant.gain().flatMap(gain -> Rounded.to(4, share(gain.points()))));
            json.field(
                    "utility-gap",
                    variant.gain().flatMap(gain -> Rounded.gap(4, share(gain.gapPoints()))));
        }

        private double share(long points) {
            return (double) points / budget.mostPoints();
        }

        private void ceiling(CeilingStep step) {
            json.field("more", money(step.moreMinor()))
                    .field("from-total", money(step.from().totalMinor()))
                    .field("to-total", money(step.to().totalMinor()))
                    .field("utility", Rounded.to(4, step.gained()))
                    .list(
                            "changes",
                            PartChange.between(step.from().build(), step.to().build()),
                            this::change);
        }

        private void point(FrontStep step) {
            json.field("total", money(step.totalMinor()))
                    .field("utility", Rounded.to(4, step.utility()))
                    .field("gap", Rounded.gap(4, step.gap()))
                    .field("knee", step.knee())
                    .list("promised", step.rates(), this::rate)
                    .field("load-dba", Rounded.to(1, step.noiseDba()))
                    .list("changes", step.changes(), this::change)
                    .texts("parts", ClashJson.parts(step.build()));
        }

        private void rate(Rate rate) {
            json.field("workload", rate.use())
                    .field("value", Rounded.to(1, rate.value()))
                    .field("unit", rate.unit());
        }

        private void change(PartChange change) {
            json.field("slot", change.slot().word())
                    .field("from", change.from())
                    .field("to", change.to());
        }

        private String money(long minor) {
            return Money.ofMinor(minor, brief.currency()).plain();
        }
    }
}
