package rigbrief.bench.quality;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.ConstraintProvider;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;

/** Rules first, then the objective's two figures, by the program's own rules and goals. */
public final class NaiveConstraints implements ConstraintProvider {
    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {
            build(factory)
                    .penalizeLong(HardMediumSoftLongScore.ONE_HARD, NaiveBuild::excess)
                    .asConstraint("rules"),
            build(factory)
                    .impactLong(
                            HardMediumSoftLongScore.ONE_MEDIUM,
                            it -> it.objective().first(it.points(), it.totalMinor()))
                    .asConstraint("first figure"),
            build(factory)
                    .impactLong(
                            HardMediumSoftLongScore.ONE_SOFT,
                            it -> it.objective().second(it.points(), it.totalMinor()))
                    .asConstraint("second figure")
        };
    }

    private static UniConstraintStream<NaiveBuild> build(ConstraintFactory factory) {
        return factory.forEach(NaiveSlot.class).groupBy(new NaiveBuild.Collector());
    }
}
