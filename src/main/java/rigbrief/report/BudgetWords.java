package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigbrief.brief.Brief;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.FrontStep;
import rigbrief.proposal.budget.PartChange;
import rigbrief.proposal.budget.Rate;
import rigbrief.proposal.budget.Variant;
import rigbrief.proposal.solve.Least;
import rigbrief.quantity.Money;

/** How the figures of a budget are spelt. */
final class BudgetWords {
    private final Brief brief;

    BudgetWords(Brief brief) {
        this.brief = brief;
    }

    /** An amount without its currency. */
    String amount(long minor) {
        return Money.ofMinor(minor, brief.currency()).grouped();
    }

    /** An amount with its currency. */
    String money(long minor) {
        return Money.ofMinor(minor, brief.currency()).toString();
    }

    /** A difference of money, with its sign. */
    String more(long minor) {
        return (minor > 0 ? "+" : "") + amount(minor);
    }

    /** A least total; a star where a lesser one is not ruled out. */
    String least(Least least) {
        return switch (least.answer()) {
            case NO -> "can't be had";
            case NOT_KNOWN -> least.steps() == 0 ? "not tried" : "not found";
            case YES -> amount(least.totalMinor()) + (least.proven() ? "" : " *");
        };
    }

    /** A difference of utility, with its sign. */
    static String utility(double difference) {
        String words = Rounded.print(3, Math.abs(difference), "");
        if (words.equals("0.000")) {
            return "same";
        }
        return (difference > 0 ? "+" : "-") + words;
    }

    /** What another value of a must does to the least total; a star where that is not proven. */
    String moneyOf(Variant variant, Budget budget) {
        if (variant.least().best().isEmpty()) {
            return least(variant.least());
        }
        String saved = variant.savedMinor() == 0 ? "same" : more(-variant.savedMinor());
        return saved + (variant.least().proven() && budget.musts().proven() ? "" : " *");
    }

    /** What it does to the utility of the best build found under the ceiling. */
    static String utilityOf(Variant variant, Budget budget) {
        return variant.gain()
                .map(gain -> utility((double) gain.points() / budget.mostPoints()))
                .orElse("-");
    }

    /** How much more utility another build could have at most; rounded up. */
    static String gapOf(Variant variant, Budget budget) {
        return variant.gain()
                .filter(gain -> !gain.proven())
                .flatMap(gain -> Rounded.gap(3, (double) gain.gapPoints() / budget.mostPoints()))
                .map(Object::toString)
                .orElse("-");
    }

    /** What a build promises, workload by workload. */
    static String rates(List<Rate> rates) {
        List<String> words = new ArrayList<>();
        for (Rate rate : rates) {
            words.add(rate.title() + " " + Rounded.print(0, rate.value(), " " + rate.unit()));
        }
        return String.join(", ", words);
    }

    /** What changed from one build to the next: money, parts, rates. */
    String step(FrontStep before, FrontStep step) {
        List<String> words = new ArrayList<>();
        for (PartChange change : PartChange.between(before.build(), step.build())) {
            words.add("%s: %s -> %s".formatted(change.slot().word(), change.from(), change.to()));
        }
        for (int i = 0; i < step.rates().size(); i++) {
            Rate now = step.rates().get(i);
            double difference = now.value() - before.rates().get(i).value();
            if (Math.abs(difference) >= 0.5) {
                words.add(
                        String.format(
                                Locale.ROOT,
                                "%+.0f %s in %s",
                                difference,
                                now.unit(),
                                now.title()));
            }
        }
        double quieter = step.noiseDba() - before.noiseDba();
        if (Math.abs(quieter) >= 0.5) {
            words.add(String.format(Locale.ROOT, "%+.1f dB(A)", quieter));
        }
        return more(step.totalMinor() - before.totalMinor()) + ": " + String.join(", ", words);
    }
}
