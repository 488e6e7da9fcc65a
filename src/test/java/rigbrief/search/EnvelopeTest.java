package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The greatest figure along an envelope, against a fine walk along it that knows no formula. */
class EnvelopeTest {
    private static final int WORLDS = 2_000;
    private static final int STEPS = 4_000;

    @Test
    void the_most_of_a_figure_is_what_a_fine_walk_along_the_envelope_finds() {
        Random random = new Random(11);
        int peaks = 0;
        for (int world = 0; world < WORLDS; world++) {
            FirstFigure figure = figure(random);
            int lines = 1 + random.nextInt(5);
            double[] start = new double[lines];
            double[] slope = new double[lines];
            Envelope envelope = new Envelope(lines);
            for (int line = 0; line < lines; line++) {
                slope[line] = line == 0 ? 0 : random.nextDouble() * 2;
                start[line] =
                        line == 0
                                ? random.nextDouble() * 120_000
                                : (random.nextDouble() - 0.6) * 150_000;
                envelope.set(line, start[line], slope[line]);
            }
            double from = random.nextDouble() * 60_000;
            double to = from + random.nextDouble() * 120_000;

            double most = envelope.most(from, to, figure);

            double walked = Double.NEGATIVE_INFINITY;
            double largestStep = 0;
            double before = Double.NaN;
            int best = 0;
            for (int i = 0; i <= STEPS; i++) {
                double money = from + (to - from) * i / STEPS;
                double points = Double.POSITIVE_INFINITY;
                for (int line = 0; line < lines; line++) {
                    points = Math.min(points, start[line] + slope[line] * money);
                }
                double at = figure.of(points, money);
                largestStep = i == 0 ? 0 : Math.max(largestStep, Math.abs(at - before));
                best = at > walked ? i : best;
                walked = Math.max(walked, at);
                before = at;
            }
            double rounding = 1e-9 * Math.abs(walked) + 1e-6;
            assertThat(most).isGreaterThanOrEqualTo(walked - rounding);
            assertThat(most).isLessThanOrEqualTo(walked + largestStep + rounding);
            peaks += best > 0 && best < STEPS ? 1 : 0;
        }
        assertThat(peaks).as("walks that are greatest between the ends").isGreaterThan(WORLDS / 10);
    }

    private static FirstFigure figure(Random random) {
        Objective objective =
                random.nextInt(3) == 0
                        ? Objective.mostUtility()
                        : Objective.weighted(
                                1 + random.nextInt(100_000), 1 + random.nextInt(100_000));
        return new FirstFigure(
                objective,
                random.nextInt(6) * 10_000,
                20_000 + random.nextInt(120_000),
                new FirstFigure.Money(
                        1 + random.nextInt(3) * 0.1,
                        random.nextInt(3) * 5_000,
                        60_000 + random.nextInt(200_000)));
    }
}
