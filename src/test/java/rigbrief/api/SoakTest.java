package rigbrief.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Proposals without end hold no more memory and leave no thread behind. {@code
 * -Drigbrief.soak=10000} makes it a long run.
 */
class SoakTest {
    private static final int PROPOSALS = Integer.getInteger("rigbrief.soak", 200);

    /** What the compiler and class loading may add between two checkpoints and never again. */
    private static final long SLACK_BYTES = 4L << 20;

    @Test
    void memory_stays_flat_and_no_thread_is_left_behind(@TempDir Path folder) throws Exception {
        List<Soak.Checkpoint> checkpoints = Soak.run(folder, PROPOSALS);

        Soak.Checkpoint settled = checkpoints.get(4);
        Soak.Checkpoint last = checkpoints.get(9);
        assertThat(last.heapBytes()).isLessThan(settled.heapBytes() + SLACK_BYTES);
        assertThat(last.threads()).isSubsetOf(checkpoints.get(0).threads());
        assertThat(last.threads()).noneMatch(name -> name.contains("utility"));
    }
}
