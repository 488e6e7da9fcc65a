package rigbrief.search;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.common.SelectionOrder;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.monitoring.MonitoringConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.util.List;
import rigbrief.presolve.Candidate;

/**
 * Finds good builds with Timefold: late acceptance over coupled moves.
 *
 * <p>Stops by a count of moves, so that the same seed gives the same build on any machine.
 */
public final class LocalSearch {
    private static final int LATE_ACCEPTANCE_SIZE = 400;

    private LocalSearch() {}

    /**
     * The best build that local search finds.
     *
     * @param problem what to search
     * @param objective what makes a build better
     * @param start one candidate per slot, in slot order; it need not be sound
     * @param moves how many moves to try
     * @param seed seed of every random choice
     * @param mode how much the solver checks itself
     */
    public static Standing run(
            Problem problem,
            Objective objective,
            List<Candidate> start,
            long moves,
            long seed,
            EnvironmentMode mode) {
        SolverFactory<Workbench> factory = SolverFactory.create(config(moves, seed, mode));
        Workbench best = factory.buildSolver().solve(new Workbench(problem, objective, start));
        return problem.standing(best.choices());
    }

    private static SolverConfig config(long moves, long seed, EnvironmentMode mode) {
        MoveIteratorFactoryConfig selector =
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(CoupledMoves.class);
        selector.setSelectionOrder(SelectionOrder.RANDOM);
        LocalSearchPhaseConfig phase =
                new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(selector)
                        .withAcceptorConfig(
                                new LocalSearchAcceptorConfig()
                                        .withLateAcceptanceSize(LATE_ACCEPTANCE_SIZE))
                        .withForagerConfig(
                                new LocalSearchForagerConfig().withAcceptedCountLimit(1));
        return new SolverConfig()
                .withEnvironmentMode(mode)
                .withSolutionClass(Workbench.class)
                .withEntityClasses(SlotChoice.class)
                .withConstraintProviderClass(BuildConstraints.class)
                .withRandomSeed(seed)
                // Nobody reads the solver's meters, and two solvers side by side quarrel over them.
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
                .withTerminationConfig(new TerminationConfig().withMoveCountLimit(moves))
                .withPhases(phase);
    }
}
