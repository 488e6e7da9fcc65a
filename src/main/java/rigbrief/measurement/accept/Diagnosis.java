package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.measurement.accept.Clues.Clue;
import rigbrief.measurement.accept.RankedCause.Effect;

/**
 * Ranks causes by how well each explains everything that was measured.
 *
 * <p>Formula: likelihood of a cause = mean over its strengths of the product over all clues of a
 * Student density with 4 degrees of freedom around what the model then expects; shares are the
 * likelihoods over their sum, every cause being as likely as any other beforehand.
 *
 * <p>Common practice: equal chances beforehand, and the heavy tails, so that one odd figure does
 * not decide.
 */
final class Diagnosis {
    private static final double FREEDOM = 4;

    /** Shares below this are not worth a line. */
    private static final double LEAST_SHARE = 0.01;

    private final Clues clues;

    Diagnosis(Clues clues) {
        this.clues = clues;
    }

    /** A hypothesis with the logarithm of its likelihood. */
    private record Weighed(Hypothesis hypothesis, double log) {}

    /** The causes that explain something, likeliest first. */
    List<RankedCause> rank(List<Hypothesis> hypotheses) {
        Map<Cause, List<Weighed>> byCause = new EnumMap<>(Cause.class);
        double most = Double.NEGATIVE_INFINITY;
        for (Hypothesis hypothesis : hypotheses) {
            Weighed weighed = new Weighed(hypothesis, log(hypothesis));
            byCause.computeIfAbsent(hypothesis.cause(), cause -> new ArrayList<>()).add(weighed);
            most = Math.max(most, weighed.log());
        }
        return shared(byCause, most);
    }

    private List<RankedCause> shared(Map<Cause, List<Weighed>> byCause, double most) {
        Map<Cause, Double> likelihoods = new EnumMap<>(Cause.class);
        double sum = 0;
        for (var entry : byCause.entrySet()) {
            double likelihood = mean(entry.getValue(), most);
            likelihoods.put(entry.getKey(), likelihood);
            sum += likelihood;
        }
        List<RankedCause> ranked = new ArrayList<>();
        for (var entry : byCause.entrySet()) {
            double share = likelihoods.get(entry.getKey()) / sum;
            if (share >= LEAST_SHARE) {
                ranked.add(ranked(entry.getKey(), share, best(entry.getValue())));
            }
        }
        ranked.sort(Comparator.comparingDouble(RankedCause::share).reversed());
        return ranked;
    }

    private static double mean(List<Weighed> strengths, double most) {
        double sum = 0;
        for (Weighed weighed : strengths) {
            sum += Math.exp(weighed.log() - most);
        }
        return sum / strengths.size();
    }

    private static Hypothesis best(List<Weighed> strengths) {
        Weighed best = strengths.get(0);
        for (Weighed weighed : strengths) {
            best = weighed.log() > best.log() ? weighed : best;
        }
        return best.hypothesis();
    }

    private RankedCause ranked(Cause cause, double share, Hypothesis best) {
        List<Effect> effects = new ArrayList<>();
        Map<String, Double> then = clues.expected(best);
        for (SheetLine line : clues.speedLines()) {
            effects.add(
                    new Effect(
                            line.what(),
                            line.unit(),
                            line.middle().orElseThrow(),
                            then.get(line.id()),
                            clues.measured(line.id())));
        }
        return new RankedCause(cause, share, best.strength(), effects);
    }

    private double log(Hypothesis hypothesis) {
        double log = 0;
        for (Clue clue : clues.under(hypothesis)) {
            double z = clue.apart() / clue.sigma();
            log -= (FREEDOM + 1) / 2 * Math.log1p(z * z / FREEDOM) + Math.log(clue.sigma());
        }
        return log;
    }
}
