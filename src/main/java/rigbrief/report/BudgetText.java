package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.GoalTotal;
import rigbrief.proposal.budget.NeedPrice;
import rigbrief.proposal.budget.Turned;
import rigbrief.proposal.budget.Variant;
import rigbrief.proposal.need.Need;
import rigbrief.proposal.solve.Least;
import rigbrief.wording.Counted;

/** What the goals of a brief cost, in plain text. */
public final class BudgetText implements Report<Budget> {
    private static final ReportInfo INFO =
            ReportInfo.text("budget-text", "what the goals of a brief cost, for people");

    private static final int NEED_WIDTH = 34;
    private static final int MUST_WIDTH = 29;

    private final FrontPlot.Letters letters;

    /** A text that draws with the letters that every terminal has. */
    public BudgetText() {
        this(false);
    }

    /**
     * A text.
     *
     * @param unicode whether it may draw with letters beyond ASCII
     */
    public BudgetText(boolean unicode) {
        this.letters = unicode ? FrontPlot.Letters.UNICODE : FrontPlot.Letters.ASCII;
    }

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(Budget budget, Style style) {
        TextPage page = new TextPage(style);
        new Writing(page, budget, letters).document();
        return page.toString();
    }

    private static final class Writing {
        private final TextPage page;
        private final Budget budget;
        private final BudgetWords words;
        private final FrontPlot.Letters letters;

        Writing(TextPage page, Budget budget, FrontPlot.Letters letters) {
            this.page = page;
            this.budget = budget;
            this.words = new BudgetWords(budget.brief());
            this.letters = letters;
        }

        void document() {
            head();
            if (budget.partial()) {
                page.paragraph(0, "Called off before all was answered: what follows is partial.");
            }
            if (budget.clash().isPresent()) {
                new ClashText(page, budget.brief()).write(budget.clash().get());
            } else {
                everything();
                goals();
                prices();
                FrontText front = new FrontText(page, budget, letters);
                front.front();
                front.ceiling();
            }
            page.blank();
        }

        private void head() {
            page.paragraph(
                    0,
                    "Brief \"%s\" for %s: %s."
                            .formatted(
                                    budget.brief().name(),
                                    budget.brief().client(),
                                    budget.clash().isPresent()
                                            ? "no build meets its musts at any price"
                                            : "what its goals cost"));
            page.paragraph(
                    0,
                    "Ceiling %s all in%s. Catalogue \"%s\" of %s: %s, %s."
                            .formatted(
                                    budget.brief().ceiling(),
                                    budget.brief().quantity() > 1
                                            ? " for " + budget.brief().quantity() + " machines"
                                            : "",
                                    budget.catalogue().name(),
                                    budget.catalogue().asOf(),
                                    Counted.of(budget.catalogue().partCount(), "part"),
                                    Counted.of(budget.catalogue().offerCount(), "offer")));
        }

        private void everything() {
            Least musts = budget.musts();
            page.blank();
            page.chapter(
                    "EVERY MUST TOGETHER",
                    musts.best().isPresent() ? words.money(musts.totalMinor()) : "not found");
            page.paragraph(0, proof(musts));
            over(musts);
            if (!budget.binding().isEmpty()) {
                page.paragraph(
                        0,
                        "What holds it up; were any one of these to give way, it could be less:");
                budget.binding().forEach(line -> page.hanging("  - ", line));
            }
            budget.wishesToo()
                    .ifPresent(
                            least ->
                                    page.paragraph(0, "With every wish met too: " + wishes(least)));
        }

        private String wishes(Least least) {
            return switch (least.answer()) {
                case NO -> "no build can do that at any price.";
                case NOT_KNOWN ->
                        least.steps() == 0 ? "not tried." : "none was found in the steps allowed.";
                case YES ->
                        words.money(least.totalMinor())
                                + (least.proven() ? ", proven." : ", not proven to be the least.");
            };
        }

        private String proof(Least least) {
            if (least.best().isEmpty()) {
                return "No build was found in the steps allowed, and it is not proven that there is none.";
            }
            return least.proven()
                    ? "Proven: no build in this catalogue meets every must for less."
                    : "Not proven: a build for as little as %s is not ruled out."
                            .formatted(words.money(least.boundMinor()));
        }

        private void over(Least musts) {
            long ceiling = budget.brief().ceiling().minorUnits();
            if (musts.best().isPresent() && musts.totalMinor() > ceiling) {
                page.paragraph(
                        0,
                        "That is %s over the ceiling: under it no build meets every must."
                                .formatted(words.money(musts.totalMinor() - ceiling)));
            }
        }

        private void goals() {
            if (budget.goals().isEmpty()) {
                return;
            }
            page.section("The least total that reaches one goal");
            TextTable table =
                    new TextTable()
                            .left("goal", NEED_WIDTH)
                            .left("kind", 4)
                            .right("alone")
                            .right("with every must");
            for (GoalTotal goal : budget.goals()) {
                table.remarked(
                        heldUp(goal),
                        goal.need().name(),
                        goal.need().kind() == Need.Kind.WISH ? "wish" : "must",
                        words.least(goal.alone()),
                        words.least(goal.together()));
            }
            page.table(table);
            page.paragraph(
                    2,
                    "Below each: what would have to move to make it cheaper. Alone, the goal itself and the rules that turn cheaper parts away; a must with every must, what holds all of them up; a wish with every must, at least the musts named and the rules.");
            page.paragraph(
                    2,
                    "In %s. A star: a lesser total is not ruled out in the steps allowed."
                            .formatted(budget.brief().currency().getCurrencyCode()));
        }

        private static String heldUp(GoalTotal goal) {
            List<String> alone = goal.binding().stream().map(Turned::inShort).toList();
            String words =
                    goal.alone().best().isEmpty() || alone.isEmpty()
                            ? ""
                            : "Alone by %s.".formatted(String.join(", ", alone));
            if (goal.need().kind() != Need.Kind.WISH || goal.together().best().isEmpty()) {
                return words;
            }
            List<String> together = new ArrayList<>(goal.bindingNeeds());
            goal.bindingTogether().forEach(rule -> together.add(rule.inShort()));
            return together.isEmpty()
                    ? words
                    : "%s With every must by %s."
                            .formatted(words, String.join("; ", together))
                            .strip();
        }

        private void prices() {
            if (budget.prices().isEmpty()) {
                return;
            }
            page.section("What each must costs, by solving again without it and a step beside it");
            TextTable table =
                    new TextTable()
                            .left("must", MUST_WIDTH)
                            .left("instead", 18)
                            .right("least total")
                            .right("utility")
                            .right("gap");
            for (NeedPrice price : budget.prices()) {
                price(table, price);
            }
            page.table(table);
            page.paragraph(
                    2,
                    "Least total: against %s with every must. Utility: of the best build found under the ceiling, by the goals of the brief as it stands, against %s. Gap: how much more utility is not ruled out; -: proven. A star: not proven."
                            .formatted(
                                    budget.musts().best().isPresent()
                                            ? words.amount(budget.musts().totalMinor())
                                            : "none found",
                                    budget.ceilingSteps().isEmpty()
                                            ? "none"
                                            : Rounded.print(
                                                    4,
                                                    budget.ceilingSteps().get(0).from().utility(),
                                                    "")));
        }

        private void price(TextTable table, NeedPrice price) {
            row(table, price.need().name(), price.without());
            price.softer().ifPresent(variant -> row(table, "", variant));
            price.harder().ifPresent(variant -> row(table, "", variant));
        }

        private void row(TextTable table, String need, Variant variant) {
            table.row(
                    need,
                    variant.words(),
                    words.moneyOf(variant, budget),
                    BudgetWords.utilityOf(variant, budget),
                    BudgetWords.gapOf(variant, budget));
        }
    }
}
