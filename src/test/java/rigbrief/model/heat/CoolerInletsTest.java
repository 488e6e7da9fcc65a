package rigbrief.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rigbrief.model.heat.CoolingCase.Air;
import rigbrief.model.heat.CoolingCase.Card;
import rigbrief.model.heat.CoolingCase.Processor;
import rigbrief.model.heat.CoolingCase.Seat;

/** Checked against {@link FanSpeedSolver}, asked anew for every cooler and every choice of fans. */
class CoolerInletsTest {
    private static final double SILENT = Double.NEGATIVE_INFINITY;

    /** Far wider than rounding, so that the band between cool and cool enough is met often. */
    private static final double TOO_HOT_K = 6;

    private static final int CASES = 4_000;

    private final SplittableRandom random = new SplittableRandom(71);

    @Test
    void many_coolers_at_once_are_as_loud_as_each_alone() {
        int hot = 0;
        int quiet = 0;
        for (int i = 0; i < CASES; i++) {
            int choices = random.nextInt(1, 7);
            double margin = random.nextInt(4) * 5;
            Seat seat = new Seat(between(0, 6), between(0.5, 2), i % 3 == 0 ? SILENT : 20);
            double heat = i % 20 == 0 ? 0 : between(20, 500);
            List<Air> working = new ArrayList<>();
            List<Air> full = new ArrayList<>();
            for (int choice = 0; choice < choices; choice++) {
                double flow = between(0, 300);
                double dba = choice == 0 ? SILENT : between(15, 45);
                working.add(new Air(21, 1.2, heat, flow, dba));
                full.add(new Air(21, 1.2, heat * 1.3, flow, dba));
            }
            double load = between(20, 45);
            double idle = i % 2 == 0 ? SILENT : load - between(0, 12);
            double cardW = i % 7 == 0 ? 0 : between(30, 400);
            Card atWork = cardW == 0 ? Card.NONE : new Card(cardW, 83, 50 / cardW, load, idle);
            Card sustained =
                    cardW == 0 ? Card.NONE : new Card(cardW * 1.1, 83, 50 / cardW, load, idle);
            CoolerInlets inlets =
                    new CoolerInlets(
                            new CoolerInlets.State(working, atWork),
                            new CoolerInlets.State(full, sustained),
                            seat,
                            margin,
                            k -> k >= TOO_HOT_K);
            for (int cooler = 0; cooler < 5; cooler++) {
                double watts = between(20, 250);
                double kw = between(0.05, 0.9);
                double dba = cooler == 0 ? SILENT : between(18, 48);
                Processor quietly = new Processor(watts, 90, kw, dba);
                Processor hard = new Processor(watts * 1.2, 88, kw, dba);

                double least = Double.POSITIVE_INFINITY;
                for (int choice = 0; choice < choices; choice++) {
                    CoolingCase hardCase =
                            new CoolingCase(
                                    full.get(choice), hard, sustained, SILENT, seat, margin);
                    if (FanSpeedSolver.flatOutExcessK(hardCase) < TOO_HOT_K) {
                        CoolingCase it =
                                new CoolingCase(
                                        working.get(choice), quietly, atWork, SILENT, seat, margin);
                        least = Math.min(least, FanSpeedSolver.quietest(it).levelDba());
                    }
                }
                double found = inlets.leastLevelDba(quietly, hard);
                if (Double.isInfinite(least)) {
                    hot += least > 0 ? 1 : 0;
                    assertThat(found).isEqualTo(least);
                } else {
                    quiet++;
                    assertThat(found).isCloseTo(least, within(1e-9));
                }
            }
        }
        assertThat(hot).isGreaterThan(1_000);
        assertThat(quiet).isGreaterThan(1_000);
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
