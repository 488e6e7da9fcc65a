package rigbrief.file.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

/** What is written is judged by a YAML 1.1 reader of its own, the strictest about quoting. */
class YamlTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "no",
                "Yes",
                "ON",
                "y",
                "null",
                "~",
                "true",
                "1e3",
                "0x10",
                "1_000",
                "12:30:45",
                "2026-11-20",
                ".inf",
                ".NaN",
                "-",
                "- a",
                "a: b",
                "a:",
                "a #b",
                "#a",
                "{a}",
                "[a]",
                "&a",
                "*a",
                "!a",
                "|",
                ">",
                "%a",
                "@a",
                "`a",
                "'",
                "\"",
                "\\",
                "a\nb",
                "a\tb",
                "?",
                "=",
                "<<",
                " a",
                "a ",
                "8pin:3",
                "atx24:1;eps8:2",
                "Grün",
                "木",
                "\uD83D\uDE00",
                "\u001b",
                "\u202e",
                "\u0085",
                "\uFEFF",
                "plain words 2.0",
                "e3",
                "sha256:00"
            })
    void every_text_is_read_back_as_that_text(String text) {
        String yaml = new YamlText().text("key", text).list("list", List.of(text, text)).toString();

        Object read = new Yaml().load(yaml);

        assertThat(read).isEqualTo(Map.of("key", text, "list", List.of(text, text)));
    }

    @Test
    void words_numbers_and_nesting_are_laid_out_a_key_a_line() {
        String yaml =
                new YamlText()
                        .remark("who")
                        .text("client", "Osier Weir")
                        .plain("ceiling", "2450.00")
                        .begin("looks")
                        .yes("colour-must", true)
                        .end()
                        .begin("keep")
                        .item()
                        .text("slot", "case")
                        .begin("spec")
                        .plain("watts", 650)
                        .end()
                        .end()
                        .item()
                        .text("slot", "fans")
                        .end()
                        .end()
                        .list("front-ports", List.of("usb-c", "no"))
                        .toString();

        assertThat(yaml)
                .isEqualTo(
                        """
                        # who
                        client: Osier Weir
                        ceiling: 2450.00
                        looks:
                          colour-must: yes
                        keep:
                          - slot: case
                            spec:
                              watts: 650
                          - slot: fans
                        front-ports: [usb-c, "no"]
                        """);
    }
}
