package rigbrief.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Candidates;
import rigbrief.presolve.Dominance;

/**
 * A space with some of another one's candidates, numbered anew: what is not there costs neither
 * tables nor time.
 */
final class Subspace {
    private static final int ABSENT = -1;

    private final Candidates candidates;
    private final Map<Slot, Candidate[]> originals = new EnumMap<>(Slot.class);
    private final Map<Slot, int[]> places = new EnumMap<>(Slot.class);
    private final SharedTables tables = new SharedTables();
    private Map<Slot, List<Candidate>> forMoney;

    /** The space without candidates that others can always stand in for. */
    static Subspace undominated(Problem problem) {
        return new Subspace(
                problem, Dominance.undominated(problem.assessor(), problem.candidates(), false));
    }

    /**
     * A space.
     *
     * @param left some candidates of every slot, in the slot's order
     */
    Subspace(Problem problem, Map<Slot, List<Candidate>> left) {
        Map<Slot, List<Candidate>> numbered = new EnumMap<>(Slot.class);
        for (Slot slot : Slot.values()) {
            Candidate[] kept = left.get(slot).toArray(Candidate[]::new);
            int[] place = new int[problem.candidates().of(slot).size()];
            Arrays.fill(place, ABSENT);
            List<Candidate> own = new ArrayList<>(kept.length);
            for (int i = 0; i < kept.length; i++) {
                place[kept[i].index()] = i;
                own.add(kept[i].numbered(i));
            }
            originals.put(slot, kept);
            places.put(slot, place);
            numbered.put(slot, List.copyOf(own));
        }
        this.candidates = new Candidates(numbered, problem.candidates().refused());
    }

    /** The same problem with nothing but these candidates. */
    Problem of(Problem problem) {
        return new Problem(
                problem.assessor(),
                candidates,
                problem.rules(),
                problem.goals(),
                problem.limitMinor(),
                tables);
    }

    /** What is left of each slot where utility only decides between builds of equal money. */
    Map<Slot, List<Candidate>> forMoney(Problem problem) {
        forMoney =
                forMoney == null
                        ? Dominance.undominated(problem.assessor(), candidates, true)
                        : forMoney;
        return forMoney;
    }

    /** Whether every candidate of a build is here. */
    boolean holds(Standing standing) {
        return standing.choices().stream()
                .allMatch(choice -> places.get(choice.slot())[choice.index()] != ABSENT);
    }

    /** The twin here of a candidate that is here. */
    Candidate here(Candidate original) {
        Slot slot = original.slot();
        return candidates.of(slot).get(places.get(slot)[original.index()]);
    }

    /** The same build, all of which is here, with the candidates here. */
    Standing here(Standing standing) {
        return with(standing, standing.choices().stream().map(this::here).toList());
    }

    /** The same build with the candidates of the whole space. */
    Standing original(Standing standing) {
        List<Candidate> choices = new ArrayList<>(standing.choices().size());
        for (Candidate choice : standing.choices()) {
            choices.add(originals.get(choice.slot())[choice.index()]);
        }
        return with(standing, choices);
    }

    private static Standing with(Standing standing, List<Candidate> choices) {
        return new Standing(
                choices,
                standing.build(),
                standing.excess(),
                standing.points(),
                standing.totalMinor());
    }
}
