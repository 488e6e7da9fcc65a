package rigbrief.proposal.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KneeTest {
    private record Point(double cost, double gain) {}

    /** Check: PAR-02, points of cost and performance; computed by an independent program. */
    private static final List<Point> PERFORMANCE =
            List.of(
                    new Point(900, 60),
                    new Point(1000, 75),
                    new Point(1200, 90),
                    new Point(1500, 95));

    @Test
    void the_knee_of_cost_and_performance_is_the_third_point() {
        Optional<Integer> knee = Knee.of(PERFORMANCE, Point::cost, Point::gain);

        assertThat(knee).contains(2);
        assertThat(Knee.offset(PERFORMANCE, 2, Point::cost, Point::gain))
                .isCloseTo(0.3571, within(5e-5));
        assertThat(Knee.offset(PERFORMANCE, 1, Point::cost, Point::gain))
                .isCloseTo(0.2619, within(5e-5));
    }

    /**
     * Check: PAR-03, V. Satopää, J. Albrecht, D. Irwin and B. Raghavan, "Finding a 'Kneedle' in a
     * Haystack", 2011, figure 2: y = 5 - 1 / (x + 0.1) at ten even steps has its knee at 0.222.
     */
    @Test
    void the_knee_of_the_kneedle_papers_curve_lies_at_its_published_place() {
        List<Point> curve = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double x = i / 9.0;
            curve.add(new Point(x, 5 - 1 / (x + 0.1)));
        }

        int knee = Knee.of(curve, Point::cost, Point::gain).orElseThrow();

        assertThat(curve.get(0).gain()).isCloseTo(-5, within(1e-9));
        assertThat(curve.get(9).gain()).isCloseTo(4.091, within(5e-4));
        assertThat(curve.get(knee).cost()).isCloseTo(0.222, within(5e-4));
    }

    @Test
    void a_straight_front_has_no_knee() {
        List<Point> line = List.of(new Point(0, 0), new Point(1, 1), new Point(2, 2));

        assertThat(Knee.of(line, Point::cost, Point::gain)).isEmpty();
    }

    @Test
    void two_points_have_no_knee() {
        assertThat(Knee.of(PERFORMANCE.subList(0, 2), Point::cost, Point::gain)).isEmpty();
    }
}
