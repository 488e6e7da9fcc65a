package rigbrief.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A batch that is killed again and again has whole results only, and comes to its end at last. */
class KilledBatchIT {
    private static final int KILLS = Integer.getInteger("rigbrief.kills", 6);
    private static final int BRIEFS = 12;
    private static final int SHORTEST_MS = 400;
    private static final int SPAN_MS = 900;

    @TempDir Path folder;

    @Test
    void every_result_is_whole_after_every_kill_and_none_is_made_twice() throws Exception {
        Path briefs = Files.createDirectories(folder.resolve("briefs"));
        for (int i = 0; i < BRIEFS; i++) {
            Files.writeString(
                    briefs.resolve("desk-%02d.yaml".formatted(i)),
                    "client: Ida\ncurrency: EUR\nceiling: %d\nmemory: { at-least: 4000 }\n"
                            .formatted(900 + i));
        }
        Random random = new Random(1);
        int before = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Process process = start();
            if (!process.waitFor(SHORTEST_MS + random.nextInt(SPAN_MS), TimeUnit.MILLISECONDS)) {
                process.destroyForcibly().waitFor();
            }
            int whole = whole();
            assertThat(whole).as("kill %d", kill).isGreaterThanOrEqualTo(before);
            before = whole;
        }

        int status = start().waitFor();

        assertThat(status).isEqualTo(4); // no build meets these
        assertThat(whole()).isEqualTo(BRIEFS);
        assertThat(folder.resolve("out/summary.csv")).content().hasLineCount(1 + BRIEFS);
    }

    private Process start() throws IOException {
        File said = folder.resolve("said").toFile();
        return new ProcessBuilder(
                        Path.of(System.getProperty("rigbrief.launcher", "target/rigbrief"))
                                .toAbsolutePath()
                                .toString(),
                        "propose",
                        folder.resolve("briefs").toString(),
                        "--out",
                        folder.resolve("out").toString())
                .redirectErrorStream(true)
                .redirectOutput(said)
                .start();
    }

    /** How many results there are; each of them has to be whole. */
    private int whole() throws IOException {
        Path out = folder.resolve("out");
        if (!Files.isDirectory(out)) {
            return 0;
        }
        int whole = 0;
        try (Stream<Path> entries = Files.list(out)) {
            for (Path entry : entries.filter(Files::isDirectory).toList()) {
                String name = entry.getFileName().toString();
                if (!name.startsWith(".")) {
                    assertThat(new ResultFolder(out, name).state())
                            .as(name)
                            .isEqualTo(ResultFolder.State.WHOLE);
                    whole++;
                }
            }
        }
        return whole;
    }
}
