package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;

/**
 * Input that somebody made to do harm, or that looks like it: one answer for each sort, over a shop
 * whose files are put right after each test.
 */
abstract class HostileInput {
    static SmallShop shop;

    final Captured captured = new Captured();

    /** Names of files to be put right. */
    final List<String> spoilt = new ArrayList<>();

    @BeforeAll
    static void open() throws IOException {
        shop = SmallShop.in(Files.createTempDirectory("rigbrief-shop"));
    }

    @AfterAll
    static void close() throws IOException {
        shop.remove();
    }

    @AfterEach
    void restore() throws IOException {
        spoilt.addAll(shop.changed());
        shop.restore(spoilt);
    }

    final void put(String name, byte[] bytes) throws IOException {
        spoilt.add(name);
        shop.spoil(name, bytes);
    }

    final void put(String name, String text) throws IOException {
        put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** What is said of a command line whose input is refused. */
    static String refused(String... arguments) {
        Captured said = new Captured();
        ExitStatus status = said.run(arguments);
        assertThat(status).as(said.err()).isEqualTo(ExitStatus.BAD_INPUT);
        return said.err();
    }

    /** What is said of a brief that is refused. */
    final String refusedBrief(String text) throws IOException {
        put("brief.yaml", text);
        return refused(
                "audit",
                shop.file("build.yaml"),
                "--brief",
                shop.file("brief.yaml"),
                "--catalog",
                shop.file("catalog"));
    }
}
