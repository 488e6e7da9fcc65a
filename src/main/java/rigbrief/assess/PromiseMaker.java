package rigbrief.assess;

import rigbrief.assess.Demand.Use;
import rigbrief.assess.Promise.Measure;
import rigbrief.brief.Brief;
import rigbrief.model.speed.NormalDistribution;
import rigbrief.model.speed.PredictionRange;

/** Puts range and chance around a prediction. */
final class PromiseMaker {
    /** Stands in for "not at all": a rate that no client asks for and no machine misses. */
    private static final double NEXT_TO_NOTHING = 1e-3;

    /** Quantiles of the normal distribution by whole percent: asked for millions of times. */
    private static final double[] DEVIATIONS = deviations(false);

    private static final double[] TWO_SIDED = deviations(true);

    private PromiseMaker() {}

    private static double[] deviations(boolean twoSided) {
        double[] table = new double[100];
        for (int percent = 1; percent < 100; percent++) {
            double share = percent / 100.0;
            table[percent] = NormalDistribution.quantile(twoSided ? (1 + share) / 2 : share);
        }
        return table;
    }

    static Promise of(
            Brief brief, Use use, Measure measure, boolean must, double middle, double required) {
        double sigma = use.workload().fitted().sigma();
        PredictionRange range = new PredictionRange(Math.max(middle, NEXT_TO_NOTHING), sigma);
        double twoSided = TWO_SIDED[brief.confidencePercent()];
        // One-sided: the brief asks that the must holds with this chance, not that it lies between
        // two ends.
        double deviations = DEVIATIONS[brief.confidencePercent()];
        boolean shorterIsBetter = measure == Measure.FINISH;
        return new Promise(
                use.workload().id(),
                measure,
                must,
                middle,
                range.middle() * Math.exp(-sigma * twoSided),
                range.middle() * Math.exp(sigma * twoSided),
                required,
                shorterIsBetter ? range.chanceOfAtMost(required) : range.chanceOfAtLeast(required),
                range.middle() * Math.exp((shorterIsBetter ? 1 : -1) * sigma * deviations));
    }
}
