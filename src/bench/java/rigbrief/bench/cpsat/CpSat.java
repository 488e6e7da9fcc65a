package rigbrief.bench.cpsat;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.TableConstraint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rigbrief.assess.Pricing;
import rigbrief.bench.Clock;
import rigbrief.bench.export.Box;
import rigbrief.bench.export.Grid;
import rigbrief.bench.export.Instance;
import rigbrief.bench.export.Load;
import rigbrief.bench.export.Proof;
import rigbrief.goal.Goal;
import rigbrief.goal.LifetimeGoal;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Solves an instance with CP-SAT: one literal per candidate, one per candidate and supplier, the
 * tables as clauses over classes. Rules that have no table are asked of each answer; a broken one
 * becomes a clause, and the model is solved again, so that the last answer is proven under the true
 * rules.
 */
public final class CpSat {
    private static final Slot[] SLOTS = Slot.values();
    private static final long SHARE = 1_000_000;

    private final Instance instance;
    private final int workers;
    private final CpModel model = new CpModel();
    private final BoolVar[][] picks = new BoolVar[SLOTS.length][];
    private LinearExpr base;
    private LinearExpr points;

    private CpSat(Instance instance, int workers) {
        this.instance = instance;
        this.workers = workers;
    }

    /** Loads the native library, which takes half a second once. */
    public static void load() {
        Loader.loadNativeLibraries();
    }

    /**
     * The best choice and its proof.
     *
     * @param seconds most processor time of all threads
     * @param workers threads of the solver
     */
    public static Proof solve(Instance instance, double seconds, int workers) {
        return instance.impossible()
                ? new Proof(-1, true, 0)
                : new CpSat(instance, workers).run(seconds);
    }

    private Proof run(double seconds) {
        Clock clock = Clock.start();
        pick();
        instance.rules().forEach(this::forbid);
        instance.load().ifPresent(this::carry);
        money();
        if (instance.objective().perPoint() > 0) {
            utility();
            model.maximize(points);
        } else {
            model.minimize(base);
        }
        for (int rounds = 1; ; rounds++) {
            CpSolver solver = new CpSolver();
            solver.getParameters().setNumWorkers(workers);
            solver.getParameters().setRandomSeed(1);
            CpSolverStatus status = solve(solver, clock, seconds);
            if (status == CpSolverStatus.INFEASIBLE) {
                return new Proof(-1, true, rounds);
            }
            if (status == CpSolverStatus.MODEL_INVALID) {
                throw new IllegalStateException(model.validate());
            }
            if (status != CpSolverStatus.OPTIMAL) {
                return new Proof(-1, false, rounds);
            }
            int[] choice = choice(solver);
            List<Box> broken = instance.broken(choice);
            if (broken.isEmpty()) {
                return new Proof(checked(solver, choice), true, rounds);
            }
            broken.forEach(this::cut);
        }
    }

    /** The solver counts wall time alone, so the other clock has a watchman. */
    private CpSolverStatus solve(CpSolver solver, Clock clock, double seconds) {
        if (clock.cpuS() > seconds) {
            return CpSolverStatus.UNKNOWN;
        }
        Thread watch =
                new Thread(
                        () -> {
                            try {
                                while (clock.cpuS() < seconds) {
                                    Thread.sleep(20);
                                }
                                solver.stopSearch();
                            } catch (InterruptedException done) {
                                Thread.currentThread().interrupt();
                            }
                        });
        watch.setDaemon(true);
        watch.start();
        CpSolverStatus status = solver.solve(model);
        watch.interrupt();
        return status;
    }

    /** The figure of the program's own evaluators, which the model must agree with. */
    private long checked(CpSolver solver, int[] choice) {
        long ours =
                instance.objective().perPoint() > 0
                        ? instance.points(choice)
                        : instance.totalMinor(choice);
        long theirs = Math.round(solver.objectiveValue());
        long same =
                instance.objective().perPoint() > 0
                        ? theirs
                        : instance.problem().assessor().pricing().totalMinor(theirs);
        if (ours != same) {
            throw new IllegalStateException(
                    "found %d in the model, expected %d".formatted(same, ours));
        }
        return ours;
    }

    private int[] choice(CpSolver solver) {
        int[] choice = new int[SLOTS.length];
        for (int s = 0; s < SLOTS.length; s++) {
            for (int c = 0; c < picks[s].length; c++) {
                if (solver.booleanValue(picks[s][c])) {
                    choice[s] = c;
                }
            }
        }
        return choice;
    }

    private void pick() {
        for (Slot slot : SLOTS) {
            int size = instance.domain(slot).size();
            BoolVar[] own = new BoolVar[size];
            for (int c = 0; c < size; c++) {
                own[c] = model.newBoolVar(slot.word() + c);
            }
            model.addExactlyOne(own);
            picks[slot.ordinal()] = own;
        }
    }

    /** One literal per class of a slot: the sum of its candidates. */
    private BoolVar[] classes(Grid grid, int d) {
        BoolVar[] own = picks[grid.slots().get(d).ordinal()];
        int[] classOf = grid.classOf().get(d);
        BoolVar[] classes = new BoolVar[grid.classes()[d]];
        if (classes.length == own.length) {
            for (int c = 0; c < own.length; c++) {
                classes[classOf[c]] = own[c];
            }
            return classes;
        }
        for (int k = 0; k < classes.length; k++) {
            classes[k] = model.newBoolVar(grid.name() + d + "_" + k);
            LinearExprBuilder sum = LinearExpr.newBuilder();
            for (int c = 0; c < own.length; c++) {
                if (classOf[c] == k) {
                    sum.add(own[c]);
                }
            }
            model.addEquality(sum, classes[k]);
        }
        return classes;
    }

    private void forbid(Grid grid) {
        int dimensions = grid.slots().size();
        BoolVar[][] classes = new BoolVar[dimensions][];
        for (int d = 0; d < dimensions; d++) {
            classes[d] = classes(grid, d);
        }
        if (dimensions == 2) {
            supported(grid, classes);
            return;
        }
        for (int[] row : grid.rows()) {
            if (row[dimensions] == 0) {
                Literal[] clause = new Literal[dimensions];
                for (int d = 0; d < dimensions; d++) {
                    clause[d] = classes[d][row[d]].not();
                }
                model.addBoolOr(clause);
            }
        }
    }

    /** Each class implies the sum of those that stand beside it: tighter than clause by clause. */
    private void supported(Grid grid, BoolVar[][] classes) {
        for (int side = 0; side < 2; side++) {
            for (int k = 0; k < classes[side].length; k++) {
                LinearExprBuilder sum = LinearExpr.newBuilder();
                for (int[] row : grid.rows()) {
                    if (row[side] == k && row[2] == 1) {
                        sum.add(classes[1 - side][row[1 - side]]);
                    }
                }
                model.addGreaterOrEqual(sum, classes[side][k]);
            }
        }
    }

    private void carry(Load load) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int s = 0; s < SLOTS.length; s++) {
            for (int c = 0; c < picks[s].length; c++) {
                sum.addTerm(picks[s][c], load.milliwatts().get(s)[c]);
            }
        }
        model.addLessOrEqual(sum, -load.fixed());
    }

    private void cut(Box box) {
        List<Literal> clause = new ArrayList<>();
        for (int d = 0; d < box.slots().size(); d++) {
            BoolVar[] own = picks[box.slots().get(d).ordinal()];
            boolean[] inside = new boolean[own.length];
            for (int c : box.candidates().get(d)) {
                inside[c] = true;
            }
            for (int c = 0; c < own.length; c++) {
                if (!inside[c]) {
                    clause.add(own[c]);
                }
            }
        }
        model.addBoolOr(clause.toArray(Literal[]::new));
    }

    /** Each bought candidate comes from one supplier of those that deliver. */
    private void money() {
        Pricing pricing = instance.problem().assessor().pricing();
        int[] sets = pricing.supplierSets();
        int most = IntStream.of(sets).map(Integer::bitCount).max().orElse(0);
        List<Integer> alone =
                IntStream.range(0, sets.length)
                        .filter(i -> Integer.bitCount(sets[i]) == 1)
                        .boxed()
                        .toList();
        List<BoolVar> delivers = new ArrayList<>();
        LinearExprBuilder sum = LinearExpr.newBuilder();
        LinearExprBuilder used = LinearExpr.newBuilder();
        for (int set : alone) {
            BoolVar it = model.newBoolVar("supplier" + set);
            delivers.add(it);
            sum.addTerm(it, pricing.deliveryMinor(set));
            used.add(it);
        }
        model.addLessOrEqual(used, most);
        for (Slot slot : SLOTS) {
            for (int c = 0; c < picks[slot.ordinal()].length; c++) {
                Candidate candidate = instance.domain(slot).get(c);
                if (!free(candidate)) {
                    buy(candidate, picks[slot.ordinal()][c], alone, delivers, sum);
                }
            }
        }
        base = sum.build();
        model.addLessOrEqual(base, instance.mostBaseMinor());
    }

    private static boolean free(Candidate candidate) {
        for (long minor : candidate.minorBySet()) {
            if (minor != 0) {
                return false;
            }
        }
        return true;
    }

    private void buy(
            Candidate candidate,
            BoolVar pick,
            List<Integer> alone,
            List<BoolVar> delivers,
            LinearExprBuilder sum) {
        LinearExprBuilder bought = LinearExpr.newBuilder();
        for (int j = 0; j < alone.size(); j++) {
            long minor = candidate.minorBySet()[alone.get(j)];
            if (minor < Pricing.notToBeHad()) {
                BoolVar from = model.newBoolVar(candidate + "@" + j);
                model.addImplication(from, delivers.get(j));
                bought.add(from);
                sum.addTerm(from, minor);
            }
        }
        model.addEquality(bought, pick);
    }

    private void utility() {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (Goal goal : instance.problem().goals()) {
            int weight = instance.problem().weight(goal);
            if (goal instanceof LifetimeGoal) {
                sum.addTerm(guarantees(), weight);
            } else {
                Grid grid =
                        instance.goals().stream()
                                .filter(it -> it.name().equals(goal.info().id()))
                                .findFirst()
                                .orElseThrow();
                sum.addTerm(tabled(grid), weight);
            }
        }
        points = sum.build();
    }

    private IntVar tabled(Grid grid) {
        int dimensions = grid.slots().size();
        IntVar[] vars = new IntVar[dimensions + 1];
        for (int d = 0; d < dimensions; d++) {
            vars[d] = model.newIntVar(0, grid.classes()[d] - 1L, grid.name() + "#" + d);
            LinearExprBuilder number = LinearExpr.newBuilder();
            BoolVar[] own = picks[grid.slots().get(d).ordinal()];
            for (int c = 0; c < own.length; c++) {
                number.addTerm(own[c], grid.classOf().get(d)[c]);
            }
            model.addEquality(number, vars[d]);
        }
        vars[dimensions] = model.newIntVar(0, Goal.FULL, grid.name());
        TableConstraint table = model.addAllowedAssignments(vars);
        for (int[] row : grid.rows()) {
            table.addTuple(row);
        }
        return vars[dimensions];
    }

    /** Guarantees add up over the slots, rounded once. */
    private IntVar guarantees() {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (Slot slot : SLOTS) {
            for (int c = 0; c < picks[slot.ordinal()].length; c++) {
                double share = LifetimeGoal.share(slot, instance.domain(slot).get(c).partOrNull());
                sum.addTerm(picks[slot.ordinal()][c], Math.round(share * Goal.FULL * SHARE));
            }
        }
        sum.add(SHARE / 2);
        IntVar scaled = model.newIntVar(0, 2 * Goal.FULL * SHARE, "guarantees scaled");
        model.addEquality(scaled, sum);
        IntVar whole = model.newIntVar(0, Goal.FULL, "guarantees");
        model.addDivisionEquality(whole, scaled, LinearExpr.constant(SHARE));
        return whole;
    }
}
