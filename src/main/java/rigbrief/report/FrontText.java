package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.CeilingStep;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.proposal.front.Knee;
import rigbrief.wording.Counted;

/** The front of a budget in plain text: a plot, steps, and what other ceilings would change. */
final class FrontText {
    /** More points of a front than this tell a reader nothing; the CSV has them all. */
    private static final int MOST_POINTS = 12;

    private final TextPage page;
    private final Budget budget;
    private final BudgetWords words;
    private final FrontPlot.Letters letters;

    FrontText(TextPage page, Budget budget, FrontPlot.Letters letters) {
        this.page = page;
        this.budget = budget;
        this.words = new BudgetWords(budget.brief());
        this.letters = letters;
    }

    /** The plot and the steps. */
    void front() {
        List<FrontStep> front = budget.front();
        page.blank();
        page.chapter("THE FRONT", "up to " + words.money(budget.upToMinor()));
        if (front.isEmpty()) {
            page.paragraph(0, "No build that meets every must was found so far down.");
            return;
        }
        page.paragraph(
                0,
                "%s; none is both cheaper and better than another."
                        .formatted(Counted.of(front.size(), "build")));
        page.paragraph(0, proof(front));
        if (front.size() > 1) {
            page.blank();
            new FrontPlot(front, budget.brief().currency(), letters).lines().forEach(page::line);
            page.paragraph(
                    2,
                    "Utility over money in %s. %s"
                            .formatted(budget.brief().currency().getCurrencyCode(), knee(front)));
        }
        steps(shown(front));
    }

    private String knee(List<FrontStep> front) {
        Optional<FrontStep> knee = front.stream().filter(FrontStep::knee).findFirst();
        String letter = letters == FrontPlot.Letters.ASCII ? "K" : "\u25c6";
        return knee.map(
                        step ->
                                "%s is the knee, %s: %s."
                                        .formatted(
                                                letter,
                                                words.money(step.totalMinor()),
                                                Knee.MEANING))
                .orElse("There is no knee: no build lies above the line from end to end.");
    }

    private String proof(List<FrontStep> front) {
        if (budget.frontProven()) {
            return "Proven: no build of this catalogue is missing.";
        }
        double gap = front.stream().mapToDouble(FrontStep::gap).max().orElse(0);
        return "Not proven: builds better by up to %s of utility are not ruled out; gaps stand at each point."
                .formatted(Rounded.gap(3, gap).map(Object::toString).orElse("an unknown amount"));
    }

    /** The ends, the knee, and between them what is farthest apart in utility. */
    private static List<FrontStep> shown(List<FrontStep> front) {
        List<FrontStep> shown = new ArrayList<>();
        FrontStep last = front.get(front.size() - 1);
        double least = (last.utility() - front.get(0).utility()) / (MOST_POINTS - 2);
        for (FrontStep step : front) {
            boolean far =
                    shown.isEmpty()
                            || step.utility() - shown.get(shown.size() - 1).utility() >= least;
            if (far || step.knee() || step == last) {
                shown.add(step);
            }
        }
        return shown;
    }

    private void steps(List<FrontStep> shown) {
        page.section(
                shown.size() < budget.front().size()
                        ? "Some of them; --format csv lists them all"
                        : "Step by step");
        TextTable table =
                new TextTable().right("total").right("utility").right("gap").left("promises", 50);
        FrontStep before = null;
        for (FrontStep step : shown) {
            table.remarked(
                    before == null ? "" : words.step(before, step),
                    words.amount(step.totalMinor()),
                    Rounded.print(4, step.utility(), ""),
                    step.gap() == 0
                            ? "-"
                            : Rounded.gap(3, step.gap()).map(Object::toString).orElse("?"),
                    (step.knee() ? "Knee. " : "")
                            + BudgetWords.rates(step.rates())
                            + ", "
                            + Rounded.print(1, step.noiseDba(), " dB(A)"));
            before = step;
        }
        page.table(table);
    }

    /** What other ceilings would change. */
    void ceiling() {
        if (budget.ceilingSteps().isEmpty()) {
            return;
        }
        page.blank();
        page.chapter("THE CEILING", budget.brief().ceiling().toString());
        if (budget.ceilingSteps().stream().allMatch(step -> step.gained() == 0)) {
            page.paragraph(0, nothing());
            return;
        }
        TextTable table =
                new TextTable()
                        .right("ceiling")
                        .right("best total")
                        .right("utility")
                        .left("what changes", 44);
        for (CeilingStep step : budget.ceilingSteps()) {
            FrontStep from = step.moreMinor() < 0 ? step.to() : step.from();
            FrontStep to = step.moreMinor() < 0 ? step.from() : step.to();
            boolean same = from.totalMinor() == to.totalMinor();
            String bought = step.moreMinor() < 0 ? "the last bought " : "the next would buy ";
            table.row(
                    words.more(step.moreMinor()),
                    words.amount(step.to().totalMinor()),
                    BudgetWords.utility(step.gained()),
                    same ? "nothing" : bought + words.step(from, to));
        }
        page.table(table);
    }

    private String nothing() {
        CeilingStep first = budget.ceilingSteps().get(0);
        CeilingStep last = budget.ceilingSteps().get(budget.ceilingSteps().size() - 1);
        long ceiling = budget.brief().ceiling().minorUnits();
        return "The best build found costs %s, so no ceiling from %s to %s changes it."
                .formatted(
                        words.money(first.from().totalMinor()),
                        words.amount(ceiling + first.moreMinor()),
                        words.amount(ceiling + last.moreMinor()));
    }
}
