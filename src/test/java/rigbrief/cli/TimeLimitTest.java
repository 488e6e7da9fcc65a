package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

class TimeLimitTest {

    @ParameterizedTest
    @CsvSource({"2s, 2000", "1.5s, 1500", "500ms, 500", "1m, 60000", "0.25m, 15000", "0s, 1"})
    void a_number_with_its_unit_is_a_time(String word, long milliseconds) {
        assertThat(new TimeLimit().convert(word)).hasMillis(milliseconds);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "s", "2 s", "-1s", "2h", "1e3s", "PT2S", "1,5s", "12345678s", ""})
    void anything_else_is_refused_with_advice(String word) {
        assertThatThrownBy(() -> new TimeLimit().convert(word))
                .isInstanceOf(TypeConversionException.class)
                .hasMessage(
                        "found '%s', expected a number with its unit; write 2s, 500ms or 1m", word);
    }
}
