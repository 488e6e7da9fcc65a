package rigbrief.api;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rigbrief.batch.ManyBriefs;
import rigbrief.brief.Brief;
import rigbrief.diagnostic.BadInput;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.SearchLimits;
import rigbrief.world.CatalogueGenerator;

/**
 * Many proposals in one process: what is held after each stretch of them, and which threads are
 * left.
 *
 * <p>The searches are short (few parts, few steps), so that it is the number of answers that
 * weighs. Figures are heap in use after full collections; nothing is timed.
 */
public final class Soak {
    private static final int CHECKPOINTS = 10;
    private static final int STEPS = 200;
    private static final int BRIEFS = 48;
    private static final int PARTS = 60;
    private static final List<Path> SCENARIOS =
            List.of(
                    Path.of("scenarios/keeper.yaml"),
                    Path.of("scenarios/streamer.yaml"),
                    Path.of("scenarios/impossible.yaml"));

    private Soak() {}

    /**
     * What a checkpoint found.
     *
     * @param proposals answers given so far
     * @param heapBytes heap in use
     * @param threads names of the threads alive
     */
    record Checkpoint(int proposals, long heapBytes, Set<String> threads) {}

    /**
     * Runs and prints a line per checkpoint.
     *
     * @param arguments folder to make a catalogue in, and number of proposals
     */
    public static void main(String... arguments) throws IOException, BadInput {
        Path catalogue = Path.of(arguments[0]);
        for (Checkpoint at : run(catalogue, Integer.parseInt(arguments[1]))) {
            System.out.printf(
                    "%d proposals: %d KiB held, threads %s%n",
                    at.proposals(), at.heapBytes() >> 10, at.threads());
        }
    }

    /**
     * Proposals in turn for like briefs of three scenarios, one of them impossible; ten
     * checkpoints, evenly spread.
     *
     * @param catalogue folder for a catalogue, which is made there
     */
    static List<Checkpoint> run(Path catalogue, int proposals) throws IOException, BadInput {
        new CatalogueGenerator(Path.of("catalog-sample"))
                .write(catalogue, PARTS, 1, CatalogueGenerator.NAMED_BY_SCENARIOS);
        Rigbrief shop =
                Rigbrief.open(catalogue).within(new SearchLimits(1, 10, STEPS, Optional.empty()));
        List<Brief> briefs = ManyBriefs.of(shop, SCENARIOS, BRIEFS);
        List<Checkpoint> checkpoints = new ArrayList<>();
        long letters = 0;
        for (int done = 1; done <= proposals; done++) {
            Proposals answer = shop.propose(briefs.get(done % briefs.size()));
            letters += answer.brief().name().length();
            if (done * CHECKPOINTS / proposals > (done - 1) * CHECKPOINTS / proposals) {
                checkpoints.add(new Checkpoint(done, heapBytes(), threads()));
            }
        }
        if (letters == 0) {
            throw new IllegalStateException("found no answers, expected some; look at the briefs");
        }
        return checkpoints;
    }

    private static long heapBytes() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private static Set<String> threads() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.getThreadInfo(threads.getAllThreadIds()))
                .filter(Objects::nonNull)
                .map(ThreadInfo::getThreadName)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
