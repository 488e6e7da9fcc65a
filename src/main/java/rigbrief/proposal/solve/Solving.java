package rigbrief.proposal.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;
import rigbrief.rule.need.CeilingRule;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;

/**
 * Asks the certifier one brief at a time. Holds nothing of a brief, so that it may be used from
 * several threads.
 *
 * @param catalogue the catalogue
 * @param steps most steps of the certifier for one brief
 * @param stop asked now and then; true ends every search early
 */
public record Solving(Catalogue catalogue, long steps, BooleanSupplier stop) {
    /** The same with another limit on steps. */
    public Solving within(long otherSteps) {
        return new Solving(catalogue, otherSteps, stop);
    }

    /** Whether some build keeps every rule under a brief. */
    public Answer exists(Brief brief, List<Build> known) {
        for (Build build : known) {
            if (fits(build, brief)) {
                return Answer.YES;
            }
        }
        return first(brief).answer();
    }

    /** Any build under a brief. */
    public Least first(Brief brief) {
        if (stop.getAsBoolean()) {
            return notKnown(0);
        }
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return none(0);
        }
        return first(space.within(CeilingRule.limitMinor(brief)));
    }

    /** Any build of a problem. */
    public Least first(Problem problem) {
        return answer(certifier(problem).untilFirst().run(Optional.empty()));
    }

    /**
     * The least total under a brief.
     *
     * @param known builds to start from; those that break a rule are passed over
     */
    public Least least(Brief brief, List<Build> known) {
        return least(brief, known, 0);
    }

    /**
     * The same where it is known from a looser brief that no build is cheaper than so much: a known
     * build that costs no more needs no search.
     */
    public Least least(Brief brief, List<Build> known, long atLeastMinor) {
        if (stop.getAsBoolean()) {
            return notKnown(0);
        }
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return none(0);
        }
        Problem problem = space.within(CeilingRule.limitMinor(brief));
        Optional<Standing> start = cheapest(standings(problem, withLess(known)));
        if (start.isPresent() && start.get().totalMinor() <= atLeastMinor) {
            return new Least(start, start.get().totalMinor(), Answer.YES, 0);
        }
        Certificate certificate = certifier(problem).run(start);
        return answer(certificate.complete() ? certificate : polished(problem, certificate))
                .notUnder(atLeastMinor);
    }

    /**
     * The most utility of a space under its brief's ceiling.
     *
     * @param known builds to start from; those that break a rule are passed over
     * @param atMostPoints it is known that no build has more: one that has as many needs no search
     */
    public Most most(SearchSpace space, List<Build> known, long atMostPoints) {
        if (space.candidates().impossible()) {
            return new Most(Optional.empty(), 0, true, 0);
        }
        Problem problem = space.within(CeilingRule.limitMinor(space.assessor().brief()));
        Objective objective = Objective.mostUtility();
        Optional<Standing> start = best(standings(problem, withLess(known)), objective);
        boolean reached = start.isPresent() && start.get().points() >= atMostPoints;
        if (reached || stop.getAsBoolean()) {
            return new Most(start, atMostPoints, false, 0);
        }
        Certificate found = new Certifier(problem, objective, steps, stop).run(start);
        if (found.best().isEmpty()) {
            return new Most(found.best(), atMostPoints, found.complete(), found.steps());
        }
        long points = found.best().get().points();
        long bound =
                found.complete()
                        ? points
                        : Math.max(points, (long) Math.floor(found.bound() + 1e-6));
        return new Most(found.best(), Math.min(bound, atMostPoints), false, found.steps());
    }

    /** A least total, or a known build where one is cheaper than what was found. */
    public Least orKnown(Least least, Brief brief, List<Build> known) {
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (least.answer() == Answer.NO || space.candidates().impossible()) {
            return least;
        }
        Problem problem = space.within(CeilingRule.limitMinor(brief));
        return cheapest(standings(problem, known))
                .filter(it -> least.best().isEmpty() || it.totalMinor() < least.totalMinor())
                .flatMap(it -> polished(problem, it))
                .map(
                        it ->
                                new Least(
                                        Optional.of(it),
                                        least.boundMinor(),
                                        Answer.YES,
                                        least.steps()))
                .orElse(least);
    }

    /** What the steps did not reach may lie next to what they did. */
    private Certificate polished(Problem problem, Certificate certificate) {
        return certificate
                .best()
                .flatMap(best -> polished(problem, best))
                .map(certificate::with)
                .orElse(certificate);
    }

    private Optional<Standing> polished(Problem problem, Standing sound) {
        return new TwoStage(1, 0, 1, stop)
                .polished(problem, Objective.leastMoney(), List.of(sound));
    }

    /**
     * Some builds, and each without one of the parts it can do without: what a must alone asked for
     * is idle once nobody asks for it.
     */
    private static List<Build> withLess(List<Build> builds) {
        List<Build> all = new ArrayList<>(builds);
        for (Build build : builds) {
            for (Slot slot : Slot.values()) {
                if (!slot.required() && build.has(slot)) {
                    all.add(build.without(slot));
                }
            }
        }
        return all;
    }

    private static Optional<Standing> cheapest(List<Standing> standings) {
        return best(standings, Objective.leastMoney());
    }

    private static Optional<Standing> best(List<Standing> standings, Objective objective) {
        Standing best = null;
        for (Standing standing : standings) {
            best = standing.betterThan(best, objective) ? standing : best;
        }
        return Optional.ofNullable(best);
    }

    private Certifier certifier(Problem problem) {
        return new Certifier(problem, Objective.leastMoney(), steps, stop);
    }

    private static Least none(long steps) {
        return new Least(Optional.empty(), 0, Answer.NO, steps);
    }

    private static Least notKnown(long steps) {
        return new Least(Optional.empty(), 0, Answer.NOT_KNOWN, steps);
    }

    private static Least answer(Certificate certificate) {
        if (certificate.best().isEmpty()) {
            return certificate.complete()
                    ? none(certificate.steps())
                    : notKnown(certificate.steps());
        }
        long reached = certificate.best().get().totalMinor();
        long bound =
                certificate.complete()
                        ? reached
                        : Math.max(0, (long) Math.ceil(-certificate.bound() - 1e-6));
        return new Least(
                certificate.best(), Math.min(bound, reached), Answer.YES, certificate.steps());
    }

    /** The sound ones of some builds as standings of a problem. */
    public static List<Standing> standings(Problem problem, List<Build> builds) {
        return placed(problem, builds).stream().filter(Standing::sound).toList();
    }

    /**
     * Builds as standings of a problem, broken ones too. A part that is none of its candidates
     * gives way to the first of its slot.
     */
    public static List<Standing> placed(Problem problem, List<Build> builds) {
        List<Standing> standings = new ArrayList<>();
        for (Build build : builds) {
            List<Candidate> choices = new ArrayList<>();
            for (Slot slot : Slot.values()) {
                choices.add(choice(problem.candidates().of(slot), build, slot));
            }
            standings.add(problem.standing(choices));
        }
        return standings;
    }

    private static Candidate choice(List<Candidate> candidates, Build build, Slot slot) {
        for (Candidate candidate : candidates) {
            boolean same =
                    build.has(slot)
                            ? !candidate.none()
                                    && candidate.partOrNull().id().equals(build.part(slot).id())
                                    && candidate.pieces() == build.pieces(slot)
                            : candidate.none();
            if (same) {
                return candidate;
            }
        }
        return candidates.get(0);
    }

    /** Whether a whole build keeps every rule under a brief. */
    public boolean fits(Build build, Brief brief) {
        return fits(build, brief, Rules.ALL);
    }

    /** Whether a whole build keeps some rules under a brief. */
    public boolean fits(Build build, Brief brief, List<Rule> rules) {
        Assessment it = new Assessor(brief, catalogue).assess(build);
        for (Rule rule : rules) {
            if (rule.forbids(rule.check(it))) {
                return false;
            }
        }
        return true;
    }
}
