package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShellWordTest {

    /** Expected words follow POSIX.1-2024, Shell Command Language, 2.2.2 Single-Quotes. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "scenarios/potter.yaml, scenarios/potter.yaml",
                "my briefs/a.yaml, 'my briefs/a.yaml'",
                "a'b, 'a'\\''b'",
                "$HOME, '$HOME'",
                "*, '*'",
                "~x, '~x'"
            })
    void a_word_that_a_shell_would_read_in_its_own_way_is_quoted(String word, String quoted) {
        assertThat(ShellWord.of(word)).isEqualTo(quoted);
    }
}
