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

    private PromiseMaker() {}

    static Promise of(
            Brief brief, Use use, Measure measure, boolean must, double middle, double required) {
        double sigma = use.workload().fitted().sigma();
        PredictionRange range = new PredictionRange(Math.max(middle, NEXT_TO_NOTHING), sigma);
        double confidence = brief.confidencePercent() / 100.0;
        // One-sided: the brief asks that the must holds with this chance, not that it lies between
        // two ends.
        double deviations = NormalDistribution.quantile(confidence);
        boolean shorterIsBetter = measure == Measure.FINISH;
        return new Promise(
                use.workload().id(),
                measure,
                must,
                middle,
                range.low(confidence),
                range.high(confidence),
                required,
                shorterIsBetter ? range.chanceOfAtMost(required) : range.chanceOfAtLeast(required),
                range.middle() * Math.exp((shorterIsBetter ? 1 : -1) * sigma * deviations));
    }
}
