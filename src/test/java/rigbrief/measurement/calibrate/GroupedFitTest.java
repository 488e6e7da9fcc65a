package rigbrief.measurement.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.measurement.fit.Equations;
import rigbrief.measurement.fit.FitResult;
import rigbrief.measurement.fit.Loss;
import rigbrief.measurement.fit.RobustFit;
import rigbrief.measurement.fit.Scatter;

/** Machines' own pieces are eliminated machine by machine; the fit is that of the full matrix. */
class GroupedFitTest {
    private static final double CLOSE = 1e-8;

    /** So many that rows are not passed whole. */
    private static final int MACHINES = 14;

    /** The same equations to a fit that is told of no groups. */
    private record Ungrouped(Equations of) implements Equations {
        @Override
        public int count() {
            return of.count();
        }

        @Override
        public int parameters() {
            return of.parameters();
        }

        @Override
        public void evaluate(int index, double[] at, Line into) {
            of.evaluate(index, at, into);
        }

        @Override
        public double observed(int index) {
            return of.observed(index);
        }
    }

    /** The equations with the slopes they have at the catalogue's figures, and no bends. */
    private record Straight(SpeedEquations of, List<Equations.Line> lines) implements Equations {
        static Straight of(SpeedEquations of) {
            List<Equations.Line> lines = new ArrayList<>();
            for (int i = 0; i < of.count(); i++) {
                lines.add(new Equations.Line());
                of.evaluate(i, new double[of.parameters()], lines.get(i));
            }
            return new Straight(of, lines);
        }

        @Override
        public int count() {
            return of.count();
        }

        @Override
        public int parameters() {
            return of.parameters();
        }

        @Override
        public int[] groups() {
            return of.groups();
        }

        @Override
        public void evaluate(int index, double[] at, Line into) {
            Line line = lines.get(index);
            double value = line.value();
            for (int k = 0; k < line.size(); k++) {
                value += line.slope(k) * at[line.parameter(k)];
            }
            into.begin(value);
            for (int k = 0; k < line.size(); k++) {
                into.slope(line.parameter(k), line.slope(k));
            }
        }

        @Override
        public double observed(int index) {
            return of.observed(index);
        }
    }

    private final SpeedEquations grouped =
            new SpeedEquations(
                    new InventedWorld(17, 0.10, 1, MACHINES)
                            .measurements().stream()
                                    .map(it -> Observation.of(it, InventedWorld.catalogue()))
                                    .toList());

    private FitResult fit(Equations equations, Loss loss, double tolerance) {
        return new RobustFit(
                        equations, grouped.priors(Terms.usual()), tolerance, new Scatter(0.03, 10))
                .fit(loss);
    }

    @Test
    void pieces_form_one_group_a_machine() {
        int[] groups = grouped.groups();

        assertThat(Arrays.stream(groups).max().orElseThrow()).isEqualTo(MACHINES - 1);
        assertThat(Arrays.stream(groups).filter(group -> group == Equations.SHARED).count())
                .isEqualTo(grouped.parameters() - 2 * MACHINES);
    }

    /** To where the library's method stops: cost can't show a smaller step. */
    @Test
    void figures_and_errors_are_those_of_the_full_matrix() {
        compare(Loss.SQUARES, 1e-12, 1e-7);
    }

    /** Weights that change from round to round stop elsewhere by about their tolerance. */
    @Test
    void robust_figures_and_errors_are_those_of_the_full_matrix() {
        compare(Loss.BISQUARE, 1e-8, 1e-5);
    }

    private void compare(Loss loss, double tolerance, double close) {
        FitResult eliminated = fit(grouped, loss, tolerance);
        FitResult full = fit(new Ungrouped(grouped), loss, tolerance);

        for (int j = 0; j < grouped.parameters(); j++) {
            assertThat(eliminated.parameter(j)).isCloseTo(full.parameter(j), within(close));
            assertThat(eliminated.error(j)).isCloseTo(full.error(j), within(close));
        }
    }

    @Test
    void of_straight_equations_all_is_that_of_the_full_matrix() {
        Equations straight = Straight.of(grouped);
        FitResult eliminated = fit(straight, Loss.SQUARES, 1e-12);
        FitResult full = fit(new Ungrouped(straight), Loss.SQUARES, 1e-12);

        for (int j = 0; j < grouped.parameters(); j++) {
            assertThat(eliminated.parameter(j)).isCloseTo(full.parameter(j), within(CLOSE));
            assertThat(eliminated.error(j)).isCloseTo(full.error(j), within(CLOSE));
            assertThat(eliminated.covariance(j, 2)).isCloseTo(full.covariance(j, 2), within(CLOSE));
        }
        for (int i = 0; i < grouped.count(); i++) {
            assertThat(eliminated.leverage(i)).isCloseTo(full.leverage(i), within(CLOSE));
            assertThat(eliminated.residualLeftOut(i))
                    .isCloseTo(full.residualLeftOut(i), within(CLOSE));
        }
        int[] machines = {0, 5, 40, 77, 160};
        assertThat(eliminated.residualsLeftOut(machines))
                .containsExactly(full.residualsLeftOut(machines), within(CLOSE));
        assertThat(eliminated.effectiveParameters())
                .isCloseTo(full.effectiveParameters(), within(CLOSE));
        assertThat(eliminated.spread()).isCloseTo(full.spread(), within(CLOSE));
    }
}
