package rigbrief.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.ConstraintProvider;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import java.util.ArrayList;
import java.util.List;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Turns every rule and every goal into a constraint of its own, once for all of them.
 *
 * <p>Hard: excess of each rule. Medium: the objective's first figure. Soft: what decides between
 * equals. All constraints read one sketch of the whole machine, which is made once a move.
 */
public final class BuildConstraints implements ConstraintProvider {
    private static final HardMediumSoftLongScore HARD = HardMediumSoftLongScore.ONE_HARD;
    private static final HardMediumSoftLongScore FIRST = HardMediumSoftLongScore.ONE_MEDIUM;
    private static final HardMediumSoftLongScore SECOND = HardMediumSoftLongScore.ONE_SOFT;

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        List<Constraint> constraints = new ArrayList<>();
        for (Rule rule : Rules.ALL) {
            constraints.add(
                    sketch(factory)
                            .penalizeLong(HARD, sketch -> sketch.excess(rule))
                            .asConstraint(rule.info().id()));
        }
        constraints.add(
                sketch(factory).penalizeLong(HARD, Sketch::overLimit).asConstraint("limit"));
        for (Goal goal : Goals.ALL) {
            constraints.add(
                    sketch(factory)
                            .impactLong(
                                    FIRST,
                                    sketch -> sketch.objective().perPoint() * sketch.points(goal))
                            .asConstraint(goal.info().id()));
            constraints.add(
                    sketch(factory)
                            .impactLong(
                                    SECOND,
                                    sketch ->
                                            sketch.objective().perPointBetweenEquals()
                                                    * sketch.points(goal))
                            .asConstraint(goal.info().id() + " between equals"));
        }
        constraints.add(
                sketch(factory)
                        .impactLong(
                                FIRST,
                                sketch -> -sketch.objective().perMinor() * sketch.totalMinor())
                        .asConstraint("money"));
        constraints.add(
                sketch(factory)
                        .impactLong(
                                SECOND,
                                sketch ->
                                        -sketch.objective().perMinorBetweenEquals()
                                                * sketch.totalMinor())
                        .asConstraint("money between equals"));
        return constraints.toArray(Constraint[]::new);
    }

    private static UniConstraintStream<Sketch> sketch(ConstraintFactory factory) {
        return factory.forEach(SlotChoice.class).groupBy(new SketchCollector());
    }
}
