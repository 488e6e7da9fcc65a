package rigbrief.bench.export;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Pricing;
import rigbrief.goal.Goal;
import rigbrief.goal.LifetimeGoal;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.presolve.Dominance;
import rigbrief.rule.Rule;
import rigbrief.search.Objective;
import rigbrief.search.Problem;

/**
 * One search problem for solvers that know nothing of computers: the certifier's own presolved
 * candidates, rules and goals as tables where all combinations of the slots they read can be asked,
 * and the rules that are left to be asked of whole choices.
 */
public final class Instance {
    private static final int BOX_SHARE = 10;

    private final Problem problem;
    private final Objective objective;
    private final List<List<Candidate>> domains = new ArrayList<>();
    private final List<Grid> rules = new ArrayList<>();
    private final List<Rule> wide = new ArrayList<>();
    private final List<Grid> goals = new ArrayList<>();
    private final Judge judge;
    private final Boxes boxes;
    private final Optional<Load> load;
    private boolean impossible;

    private Instance(Problem problem, Objective objective, long mostAsked) {
        this.problem = problem;
        this.objective = objective;
        Map<Slot, List<Candidate>> left =
                Dominance.undominated(
                        problem.assessor(), problem.candidates(), objective.perPoint() == 0);
        for (Slot slot : Slot.values()) {
            List<Candidate> domain = new ArrayList<>(left.get(slot));
            domain.sort(
                    Comparator.comparingLong(Instance::leastMinor)
                            .thenComparingInt(Candidate::index));
            domains.add(List.copyOf(domain));
        }
        this.judge = new Judge(problem, domains);
        this.boxes = new Boxes(this, mostAsked / BOX_SHARE);
        for (Rule rule : problem.rules()) {
            add(rule, mostAsked);
        }
        if (objective.perPoint() > 0) {
            for (Goal goal : problem.goals()) {
                if (!(goal instanceof LifetimeGoal)) {
                    goals.add(grid(goal));
                }
            }
        }
        this.load = Load.of(this);
    }

    /**
     * The instance of a problem.
     *
     * @param mostAsked most combinations of one rule to ask for a table; a no-good may take a tenth
     *     of these questions at each slot
     */
    public static Instance of(Problem problem, Objective objective, long mostAsked) {
        return new Instance(problem, objective, mostAsked);
    }

    private void add(Rule rule, long mostAsked) {
        if (rule.reads().isEmpty()) {
            wide.add(rule); // asked of the whole build
            return;
        }
        List<Slot> open = new ArrayList<>();
        for (Slot slot : rule.reads()) {
            if (domain(slot).size() > 1) {
                open.add(slot);
            }
        }
        int[] sizes = sizes(open);
        int[] choice = new int[domains.size()];
        if (Grid.combinations(sizes, mostAsked) > mostAsked) {
            wide.add(rule);
            return;
        }
        Grid grid =
                Grid.ask(
                        rule.info().id(),
                        open,
                        sizes,
                        at -> {
                            put(open, at, choice);
                            return judge.broken(rule, choice, rule.reads()) ? 0 : 1;
                        });
        boolean any = grid.rows().stream().anyMatch(row -> row[row.length - 1] == 0);
        impossible |= open.isEmpty() && any;
        if (any && !open.isEmpty()) {
            rules.add(grid);
        }
    }

    /** Slots to fill before a rule is asked: all of them where it names none. */
    public static Set<Slot> scope(Rule rule) {
        return rule.reads().isEmpty() ? EnumSet.allOf(Slot.class) : rule.reads();
    }

    private Grid grid(Goal goal) {
        List<Slot> open = new ArrayList<>();
        for (Slot slot : goal.reads()) {
            if (domain(slot).size() > 1) {
                open.add(slot);
            }
        }
        int[] choice = new int[domains.size()];
        return Grid.ask(
                goal.info().id(),
                open,
                sizes(open),
                at -> {
                    put(open, at, choice);
                    return goal.utility(judge.assess(choice, goal.reads()));
                });
    }

    private int[] sizes(List<Slot> slots) {
        return slots.stream().mapToInt(slot -> domain(slot).size()).toArray();
    }

    private static void put(List<Slot> slots, int[] at, int[] choice) {
        for (int i = 0; i < at.length; i++) {
            choice[slots.get(i).ordinal()] = at[i];
        }
    }

    private static long leastMinor(Candidate candidate) {
        long least = Long.MAX_VALUE;
        for (long minor : candidate.minorBySet()) {
            least = Math.min(least, minor);
        }
        return least;
    }

    /** The problem it was made of. */
    public Problem problem() {
        return problem;
    }

    /** What makes a build better. */
    public Objective objective() {
        return objective;
    }

    /** A slot's candidates, cheapest first. */
    public List<Candidate> domain(Slot slot) {
        return domains.get(slot.ordinal());
    }

    /** Number of candidates over all slots. */
    public int candidates() {
        return domains.stream().mapToInt(List::size).sum();
    }

    /** Rules as tables; value 0 is forbidden. */
    public List<Grid> rules() {
        return rules;
    }

    /** Rules over too many combinations for a table. */
    public List<Rule> wide() {
        return wide;
    }

    /** Goals as tables of ten-thousandths, when points count; the guarantees are a sum. */
    public List<Grid> goals() {
        return goals;
    }

    /** The supply's rule as a sum. */
    public Optional<Load> load() {
        return load;
    }

    /** Who asks the rules. */
    public Judge judge() {
        return judge;
    }

    /** Whether a rule about slots without a choice is broken. */
    public boolean impossible() {
        return impossible;
    }

    /** No-goods for every rule that a choice breaks; empty for a sound one. */
    public List<Box> broken(int[] choice) {
        List<Box> found = new ArrayList<>();
        for (Rule rule : problem.rules()) {
            if (judge.broken(rule, choice, EnumSet.allOf(Slot.class))) {
                found.add(boxes.around(rule, choice));
            }
        }
        return found;
    }

    /** The total of a choice, in minor units. */
    public long totalMinor(int[] choice) {
        return judge.assess(choice, EnumSet.allOf(Slot.class)).cost().totalMinor();
    }

    /** The points of a choice. */
    public long points(int[] choice) {
        return problem.points(judge.assess(choice, EnumSet.allOf(Slot.class)));
    }

    /** The most that parts and delivery may cost together, in minor units. */
    public long mostBaseMinor() {
        Pricing pricing = problem.assessor().pricing();
        long low = -1;
        long high = problem.limitMinor() + 1;
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            boolean within = pricing.totalMinor(middle) <= problem.limitMinor();
            low = within ? middle : low;
            high = within ? high : middle;
        }
        return low;
    }
}
