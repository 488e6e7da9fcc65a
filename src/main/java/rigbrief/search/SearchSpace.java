package rigbrief.search;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.CandidateFinder;
import rigbrief.presolve.Candidates;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Everything that the searches for one brief share. Confined to one thread.
 *
 * @param assessor the assessor
 * @param candidates what may fill each slot
 * @param rules rules that every build keeps
 * @param goals goals with a weight above 0
 * @param tables what all searches of this space use
 */
public record SearchSpace(
        Assessor assessor,
        Candidates candidates,
        List<Rule> rules,
        List<Goal> goals,
        SharedTables tables) {
    /** The space of a brief and a catalogue. */
    public static SearchSpace of(Brief brief, Catalogue catalogue) {
        return of(brief, brief, catalogue, Rules.ALL);
    }

    /**
     * The space of the builds that keep some rules of one brief, valued by the goals of another.
     */
    public static SearchSpace of(Brief brief, Brief valued, Catalogue catalogue, List<Rule> rules) {
        Assessor assessor = new Assessor(brief, valued, catalogue);
        List<Goal> goals = new ArrayList<>();
        for (Goal goal : Goals.ALL) {
            if (brief.wishes().weight(goal.info().id()) > 0) {
                goals.add(goal);
            }
        }
        return new SearchSpace(
                assessor,
                new CandidateFinder(assessor, rules).find(),
                rules,
                List.copyOf(goals),
                new SharedTables());
    }

    /** The problem with a limit on money, in minor units. */
    public Problem within(long limitMinor) {
        return new Problem(assessor, candidates, rules, goals, limitMinor, tables);
    }

    /**
     * A standing found in another space of the same brief and catalogue, with this space's own
     * candidates.
     */
    public Standing rebound(Standing other) {
        List<Candidate> choices = new ArrayList<>();
        for (Candidate choice : other.choices()) {
            choices.add(candidates.of(choice.slot()).get(choice.index()));
        }
        return new Standing(
                choices, other.build(), other.excess(), other.points(), other.totalMinor());
    }
}
