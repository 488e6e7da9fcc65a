package rigbrief.bench.choco;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.criteria.Criterion;
import rigbrief.assess.Pricing;
import rigbrief.bench.Clock;
import rigbrief.bench.export.Grid;
import rigbrief.bench.export.Instance;
import rigbrief.bench.export.Proof;
import rigbrief.goal.Goal;
import rigbrief.goal.LifetimeGoal;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Rule;

/**
 * Solves an instance with Choco: one variable per slot, the tables as extensional constraints over
 * classes, every other rule as a propagator that asks the rule itself. Candidates are numbered by
 * price, cheapest first, and tried in that order.
 */
public final class Choco {
    private static final Slot[] SLOTS = Slot.values();
    private static final int SHARE = 10_000;

    private final Instance instance;
    private final Model model = new Model();
    private final IntVar[] picks = new IntVar[SLOTS.length];
    private IntVar supplierSet;

    private Choco(Instance instance) {
        this.instance = instance;
    }

    /**
     * The best choice and its proof.
     *
     * @param seconds most processor time of all threads
     */
    public static Proof solve(Instance instance, double seconds) {
        return instance.impossible() ? new Proof(-1, true, 0) : new Choco(instance).run(seconds);
    }

    private Proof run(double seconds) {
        for (Slot slot : SLOTS) {
            picks[slot.ordinal()] =
                    model.intVar(slot.word(), 0, instance.domain(slot).size() - 1, false);
        }
        instance.rules().forEach(this::forbid);
        instance.wide().forEach(this::ask);
        IntVar base = money();
        boolean byPoints = instance.objective().perPoint() > 0;
        IntVar objective = byPoints ? utility() : base;
        model.setObjective(byPoints ? Model.MAXIMIZE : Model.MINIMIZE, objective);
        Solver solver = model.getSolver();
        IntVar[] decided = Arrays.copyOf(picks, picks.length + 1);
        decided[picks.length] = supplierSet;
        solver.setSearch(Search.domOverWDegSearch(decided));
        Clock clock = Clock.start();
        solver.addStopCriterion(
                new Criterion() {
                    private int asked;
                    private boolean met;

                    // Asked once more when all is over: what was met then has to stay met, or a
                    // run that was cut off is taken for a proof.
                    @Override
                    public boolean isMet() {
                        met |= (++asked & 63) == 0 && clock.cpuS() > seconds;
                        return met;
                    }
                });
        long best = -1;
        while (solver.solve()) {
            best = objective.getValue();
            check(best, byPoints);
        }
        boolean proven = !solver.isStopCriterionMet();
        if (best >= 0 && !byPoints) {
            best = instance.problem().assessor().pricing().totalMinor(best);
        }
        return new Proof(best, proven, 1);
    }

    /** The model must agree with the program's own evaluators. */
    private void check(long figure, boolean byPoints) {
        int[] choice = Arrays.stream(picks).mapToInt(IntVar::getValue).toArray();
        boolean sound = instance.broken(choice).isEmpty();
        // A set of suppliers that is not the cheapest may stand on the way to the best.
        boolean agrees =
                byPoints
                        ? figure == instance.points(choice)
                        : instance.problem().assessor().pricing().totalMinor(figure)
                                >= instance.totalMinor(choice);
        if (!sound || !agrees) {
            throw new IllegalStateException("the model and the evaluators differ");
        }
    }

    private IntVar[] classes(Grid grid, int extra) {
        IntVar[] vars = new IntVar[grid.slots().size() + extra];
        for (int d = 0; d < grid.slots().size(); d++) {
            IntVar own = picks[grid.slots().get(d).ordinal()];
            vars[d] = model.intVar(grid.name() + d, 0, grid.classes()[d] - 1, false);
            model.element(vars[d], grid.classOf().get(d), own).post();
        }
        return vars;
    }

    private void forbid(Grid grid) {
        int dimensions = grid.slots().size();
        Tuples allowed = new Tuples(true);
        for (int[] row : grid.rows()) {
            if (row[dimensions] == 1) {
                allowed.add(Arrays.copyOf(row, dimensions));
            }
        }
        if (allowed.nbTuples() == 0) {
            model.falseConstraint().post();
        } else if (dimensions == 1) {
            List<Integer> values = new ArrayList<>();
            for (int c = 0; c < grid.classOf().get(0).length; c++) {
                if (grid.rows().get(grid.classOf().get(0)[c])[1] == 1) {
                    values.add(c);
                }
            }
            model.member(
                            picks[grid.slots().get(0).ordinal()],
                            values.stream().mapToInt(Integer::intValue).toArray())
                    .post();
        } else {
            model.table(classes(grid, 0), allowed).post();
        }
    }

    private void ask(Rule rule) {
        Set<Slot> scope = Instance.scope(rule);
        post(rule, new ArrayList<>(scope));
        if (!rule.onlyWorsenedBy().isEmpty()) {
            EnumSet<Slot> core = EnumSet.copyOf(scope);
            core.removeAll(rule.onlyWorsenedBy());
            post(rule, new ArrayList<>(core));
        }
    }

    private void post(Rule rule, List<Slot> slots) {
        IntVar[] vars = slots.stream().map(slot -> picks[slot.ordinal()]).toArray(IntVar[]::new);
        model.post(
                new Constraint(rule.info().id(), new RulePropagator(instance, rule, slots, vars)));
    }

    /** Parts and delivery for the supplier set chosen, which is a variable too. */
    private IntVar money() {
        Pricing pricing = instance.problem().assessor().pricing();
        int sets = pricing.supplierSets().length;
        int most = (int) instance.mostBaseMinor();
        supplierSet = model.intVar("suppliers", 0, sets - 1, false);
        List<IntVar> terms = new ArrayList<>();
        for (Slot slot : SLOTS) {
            List<Candidate> domain = instance.domain(slot);
            Tuples prices = new Tuples(true);
            long dearest = 0;
            for (int c = 0; c < domain.size(); c++) {
                for (int k = 0; k < sets; k++) {
                    long minor = domain.get(c).minorBySet()[k];
                    if (minor <= most) {
                        prices.add(c, k, (int) minor);
                        dearest = Math.max(dearest, minor);
                    }
                }
            }
            if (prices.nbTuples() == 0) {
                model.falseConstraint().post();
                continue;
            }
            IntVar price = model.intVar(slot.word() + " price", 0, (int) dearest, true);
            model.table(new IntVar[] {picks[slot.ordinal()], supplierSet, price}, prices).post();
            terms.add(price);
        }
        int[] deliveries =
                LongStream.range(0, sets)
                        .mapToInt(k -> (int) pricing.deliveryMinor((int) k))
                        .toArray();
        IntVar delivery =
                model.intVar("delivery", 0, Arrays.stream(deliveries).max().orElse(0), true);
        model.element(delivery, deliveries, supplierSet).post();
        terms.add(delivery);
        IntVar base = model.intVar("base", 0, Math.max(0, most), true);
        model.sum(terms.toArray(IntVar[]::new), "=", base).post();
        return base;
    }

    private IntVar utility() {
        List<IntVar> terms = new ArrayList<>();
        List<Integer> weights = new ArrayList<>();
        for (Goal goal : instance.problem().goals()) {
            weights.add(instance.problem().weight(goal));
            if (goal instanceof LifetimeGoal) {
                terms.add(guarantees());
            } else {
                Grid grid =
                        instance.goals().stream()
                                .filter(it -> it.name().equals(goal.info().id()))
                                .findFirst()
                                .orElseThrow();
                terms.add(tabled(grid));
            }
        }
        int most = (int) instance.problem().mostPoints();
        IntVar points = model.intVar("points", 0, most, true);
        model.scalar(
                        terms.toArray(IntVar[]::new),
                        weights.stream().mapToInt(Integer::intValue).toArray(),
                        "=",
                        points)
                .post();
        return points;
    }

    private IntVar tabled(Grid grid) {
        int dimensions = grid.slots().size();
        IntVar[] vars = classes(grid, 1);
        Tuples all = new Tuples(true);
        for (int[] row : grid.rows()) {
            all.add(row);
        }
        vars[dimensions] =
                model.intVar(
                        grid.name(),
                        grid.rows().stream().mapToInt(row -> row[dimensions]).distinct().toArray());
        model.table(vars, all).post();
        return vars[dimensions];
    }

    /** Guarantees add up over the slots, rounded once. */
    private IntVar guarantees() {
        List<IntVar> terms = new ArrayList<>();
        for (Slot slot : SLOTS) {
            int[] shares =
                    instance.domain(slot).stream()
                            .mapToInt(
                                    it ->
                                            (int)
                                                    Math.round(
                                                            LifetimeGoal.share(
                                                                            slot, it.partOrNull())
                                                                    * Goal.FULL
                                                                    * SHARE))
                            .toArray();
            IntVar share =
                    model.intVar(
                            slot.word() + " share", 0, Arrays.stream(shares).max().orElse(0), true);
            model.element(share, shares, picks[slot.ordinal()]).post();
            terms.add(share);
        }
        terms.add(model.intVar(SHARE / 2));
        IntVar scaled = model.intVar("guarantees scaled", 0, 2 * Goal.FULL * SHARE, true);
        model.sum(terms.toArray(IntVar[]::new), "=", scaled).post();
        IntVar whole = model.intVar("guarantees", 0, Goal.FULL, true);
        model.div(scaled, model.intVar(SHARE), whole).post();
        return whole;
    }
}
