package rigbrief.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Slot;
import rigbrief.presolve.Candidate;

/**
 * Passing coolers over changes nothing: what the contest comes to is the best over every cooler
 * with the best fans and without any, whatever order they come in and however little is known.
 */
class CoolerContestTest {
    private static final double[] WORTH = {0.02, 0, 0.05};
    private static final double ROUNDING = 1e-6;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void what_a_contest_comes_to_is_the_best_of_all_coolers(int seed) throws Exception {
        Catalogue catalogue = CatalogueReader.read(Path.of("catalog-sample"));
        Brief brief = BriefReader.read(Path.of("scenarios", "potter.yaml"), catalogue);
        Problem problem = SearchSpace.of(brief, catalogue).within(brief.ceiling().minorUnits());
        Random random = new Random(seed);
        int sets = problem.assessor().pricing().supplierSets().length;
        SlotTable coolers = table(problem, Slot.COOLER, sets, random);
        SlotTable fans = table(problem, Slot.FANS, sets, random);
        Bounder.AliveSets alive = new Bounder.AliveSets(sets).fill();
        FansApart apart = new FansApart(fans, WORTH, sets);
        apart.take(alive, fans.domain(problem.candidates().of(Slot.FANS)));
        CoolerContest contest = new CoolerContest(coolers, WORTH, sets, apart);
        contest.among(alive);

        for (int round = 0; round < 30; round++) {
            Losses losses = new Losses(coolers.size(), random);
            contest.begin();
            boolean any = false;
            for (int k : shuffled(coolers.size(), random)) {
                if (any) {
                    contest.offer(k, losses.most[k], losses);
                } else {
                    any = contest.take(k, losses);
                }
            }
            check(contest, coolers, apart, losses, sets);
        }
    }

    private static void check(
            CoolerContest contest, SlotTable coolers, FansApart apart, Losses losses, int sets) {
        for (int s = 0; s < sets; s++) {
            long least = Long.MAX_VALUE;
            double[] net = new double[WORTH.length];
            Arrays.fill(net, Double.NEGATIVE_INFINITY);
            for (int k = 0; k < coolers.size(); k++) {
                if (losses.best[k] == Double.NEGATIVE_INFINITY) {
                    continue;
                }
                boolean bare = losses.bare[k] != Double.NEGATIVE_INFINITY;
                long minor = coolers.candidate(k).minorBySet()[s];
                least = Math.min(least, minor + (bare ? 0 : apart.least(s)));
                for (int w = 0; w < WORTH.length; w++) {
                    double with =
                            Math.max(
                                    losses.best[k] + apart.net(w)[s],
                                    losses.bare[k] + apart.noneGain());
                    net[w] = Math.max(net[w], coolers.gain(k) - WORTH[w] * minor + with);
                }
            }
            assertThat(contest.least(s)).isEqualTo(least);
            for (int w = 0; w < WORTH.length; w++) {
                assertThat(contest.net(w, s)).isCloseTo(net[w], within(ROUNDING));
            }
        }
    }

    private static SlotTable table(Problem problem, Slot slot, int sets, Random random) {
        List<Candidate> candidates = problem.candidates().of(slot);
        double[] gain = candidates.stream().mapToDouble(any -> random.nextInt(500)).toArray();
        return new SlotTable(slot, candidates, gain, gain, sets, WORTH);
    }

    private static List<Integer> shuffled(int count, Random random) {
        List<Integer> order = new ArrayList<>(IntStream.range(0, count).boxed().toList());
        Collections.shuffle(order, random);
        return order;
    }

    /** Losses drawn at random: fewer fans lose no less, and what is known is no less than true. */
    private static final class Losses implements CoolerContest.Inside {
        private final double[] best;
        private final double[] bare;
        private final double[] most;

        Losses(int coolers, Random random) {
            best = new double[coolers];
            bare = new double[coolers];
            most = new double[coolers];
            for (int k = 0; k < coolers; k++) {
                best[k] = random.nextInt(4) == 0 ? Double.NEGATIVE_INFINITY : -random.nextInt(9000);
                bare[k] =
                        random.nextInt(3) == 0
                                ? Double.NEGATIVE_INFINITY
                                : best[k] - random.nextInt(6000);
                most[k] = Math.min(0, Math.max(best[k], -9000) + random.nextInt(9000));
            }
        }

        @Override
        public double mostOfAll() {
            return 0;
        }

        @Override
        public double best(int cooler) {
            return best[cooler];
        }

        @Override
        public double bare(int cooler) {
            return bare[cooler];
        }

        @Override
        public double most(int cooler) {
            return most[cooler];
        }

        @Override
        public double mostBare(int cooler) {
            return most[cooler];
        }
    }
}
