package rigbrief.report.page;

import java.util.ArrayList;
import java.util.List;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.proposal.budget.Gain;
import rigbrief.proposal.budget.Rate;
import rigbrief.proposal.budget.Variant;
import rigbrief.proposal.solve.Least;

/** How the figures of a budget are written where the reader is. */
final class BudgetFigures {
    private static final String NOT_PROVEN = "\u00a0*";
    private static final String MINUS = "\u2212";

    /** Differences below half of it are not told: they would be printed as nought. */
    private static final double LEAST_DIFFERENCE = 0.5;

    private final Budget budget;
    private final Words words;
    private final Trades trades;

    BudgetFigures(Budget budget, Words words) {
        this.budget = budget;
        this.words = words;
        this.trades = new Trades(words);
    }

    /** An amount with its currency. */
    String money(long minor) {
        return words.money(minor, budget.brief().currency());
    }

    /** An amount for a column whose head names the currency. */
    String amount(long minor) {
        return words.amount(minor, budget.brief().currency());
    }

    /** A difference of money, with its sign. */
    String more(long minor) {
        return sign(minor) + amount(Math.abs(minor));
    }

    private static String sign(double difference) {
        return difference > 0 ? "+" : difference < 0 ? MINUS : "";
    }

    /** A least total; a star where a lesser one is not ruled out. */
    String least(Least least) {
        return switch (least.answer()) {
            case NO -> words.text("budget.never");
            case NOT_KNOWN ->
                    words.text(least.steps() == 0 ? "budget.not-tried" : "budget.not-found");
            case YES -> amount(least.totalMinor()) + (least.proven() ? "" : NOT_PROVEN);
        };
    }

    /** What another value of a must does to the least total. */
    String moneyOf(Variant variant) {
        if (variant.least().best().isEmpty()) {
            return least(variant.least());
        }
        String saved =
                variant.savedMinor() == 0 ? words.text("budget.same") : more(-variant.savedMinor());
        boolean proven = variant.least().proven() && budget.musts().proven();
        return saved + (proven ? "" : NOT_PROVEN);
    }

    /** What it does to the wishes met by the best build found under the ceiling. */
    String wishesOf(Variant variant) {
        return variant.gain().map(this::wishesOf).orElse("\u2013");
    }

    private String wishesOf(Gain gain) {
        String gained = gained((double) gain.points() / budget.mostPoints());
        double more = Math.ceil(1_000.0 * gain.gapPoints() / budget.mostPoints()) / 10;
        return gain.proven()
                ? gained
                : words.text("budget.gained.open", gained, words.number(1, more));
    }

    /** A difference of utility in hundredths, with its sign. */
    String gained(double utility) {
        String number = words.number(1, Math.abs(100 * utility));
        return number.equals(words.number(1, 0))
                ? words.text("budget.same")
                : sign(utility) + number;
    }

    /** Utility in hundredths, as far as wishes are met. */
    String wishes(double utility) {
        return words.number(1, 100 * utility);
    }

    /** What may be missing to the best there is; rounded up, so that nought means proven. */
    String gap(double gap) {
        if (!Double.isFinite(gap)) {
            return words.text("budget.not-known");
        }
        return gap == 0
                ? words.text("budget.proven")
                : words.text("budget.gap", words.number(1, Math.ceil(1_000 * gap) / 10));
    }

    /** What a build promises, workload by workload, and how loud it is. */
    List<String> promises(FrontStep step) {
        List<String> promises = new ArrayList<>();
        for (Rate rate : step.rates()) {
            promises.add(
                    words.text(
                            "budget.rate",
                            rate.title(),
                            words.quantity(0, rate.value(), unit(rate))));
        }
        promises.add(words.quantity(1, step.noiseDba(), "dB(A)"));
        return promises;
    }

    private String unit(Rate rate) {
        return rate.unit().equals("fps") ? words.text("unit.fps") : rate.unit();
    }

    /** What changes from one build to a dearer one: parts, rates, noise. */
    List<String> changes(FrontStep before, FrontStep step) {
        List<String> changes = new ArrayList<>(trades.changes(step.build(), before.build()));
        for (int i = 0; i < step.rates().size(); i++) {
            Rate now = step.rates().get(i);
            double difference = now.value() - before.rates().get(i).value();
            if (Math.abs(difference) >= LEAST_DIFFERENCE) {
                changes.add(
                        words.text(
                                "budget.rate",
                                now.title(),
                                sign(difference)
                                        + words.quantity(0, Math.abs(difference), unit(now))));
            }
        }
        double louder = step.noiseDba() - before.noiseDba();
        if (Math.abs(louder) >= LEAST_DIFFERENCE) {
            changes.add(
                    words.text(
                            "budget.rate",
                            words.text("figure.noise"),
                            sign(louder) + words.quantity(1, Math.abs(louder), "dB(A)")));
        }
        return changes;
    }
}
