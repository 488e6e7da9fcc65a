package rigbrief.audit;

import java.util.List;
import java.util.Optional;
import rigbrief.assess.Climate;
import rigbrief.assess.Cost;
import rigbrief.assess.Power;
import rigbrief.assess.Prediction;
import rigbrief.build.Build;

/**
 * Everything that the rules, goals and models say of a build.
 *
 * @param build the build
 * @param findings remarks, breaches first, then cautions, then notes; within a level in the order
 *     of the rules
 * @param margins findings of met and broken rules that measured something, in the order of the
 *     rules
 * @param goals goals with a weight, in their order; empty when something required is missing
 * @param points weight times ten-thousandths, summed over the goals
 * @param mostPoints what full utility in every goal would make
 * @param predictions how each workload runs; empty when something required is missing
 * @param cost what it costs
 * @param figures power, heat and noise; empty when something required is missing
 */
public record Audit(
        Build build,
        List<AuditFinding> findings,
        List<MarginLine> margins,
        List<GoalScore> goals,
        long points,
        long mostPoints,
        List<Prediction> predictions,
        Cost cost,
        Optional<Figures> figures) {
    public Audit {
        findings = List.copyOf(findings);
        margins = List.copyOf(margins);
        goals = List.copyOf(goals);
        predictions = List.copyOf(predictions);
    }

    /**
     * Power, heat and noise.
     *
     * @param power electrical load
     * @param idle heat and noise at idle
     * @param load heat and noise under the brief's heaviest workload
     * @param full heat and noise with every part at its sustained power
     */
    public record Figures(Power power, Climate idle, Climate load, Climate full) {}

    /** Whether no rule is broken. */
    public boolean fits() {
        for (AuditFinding finding : findings) {
            if (finding.level() == AuditFinding.Level.BREACH) {
                return false;
            }
        }
        return true;
    }

    /** The weighted utility, 0 to 1. */
    public double utility() {
        return mostPoints == 0 ? 1 : (double) points / mostPoints;
    }
}
