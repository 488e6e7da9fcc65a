package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** YAML and JSON made to multiply, or to nest without end. */
class HostileTreesTest extends HostileInput {
    @Test
    void aliases_are_refused_before_they_multiply() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            String ten = ("*a" + (i - 1) + ", ").repeat(9) + "*a" + (i - 1);
            bomb.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" [")
                    .append(ten)
                    .append("]\n");
        }

        assertThat(refusedBrief(bomb.toString()))
                .contains("brief.yaml:2:")
                .contains("aliases are not followed");
    }

    @Test
    void a_merge_key_merges_nothing() throws IOException {
        assertThat(refusedBrief("x: &a { ceiling: 900 }\n<<: *a\ncurrency: EUR\n"))
                .contains("aliases are not followed")
                .contains("ceiling: found nothing");
    }

    @Test
    void an_anchor_alone_does_no_harm() throws IOException {
        put("brief.yaml", shop.text("brief.yaml").replace("ceiling: 600", "ceiling: &most 600"));

        assertThat(
                        captured.run(
                                "audit",
                                shop.file("build.yaml"),
                                "--brief",
                                shop.file("brief.yaml"),
                                "--catalog",
                                shop.file("catalog")))
                .isEqualTo(ExitStatus.DONE);
    }

    @ParameterizedTest
    @ValueSource(ints = {51, 1_001, 200_000})
    void depth_ends_in_a_fault_and_not_in_the_stack(int levels) throws IOException {
        for (String text :
                List.of(
                        "{\"a\": " + "[".repeat(levels) + "]".repeat(levels) + "}",
                        "{\"a\":".repeat(levels) + "1" + "}".repeat(levels),
                        "a: " + "[".repeat(levels) + "]".repeat(levels),
                        "a: " + "{a: ".repeat(levels) + "1" + "}".repeat(levels),
                        "a:" + " -".repeat(levels) + " 1",
                        "a: " + "[".repeat(levels))) {
            assertThat(refusedBrief(text)).contains("brief.yaml:1:");
        }
    }
}
