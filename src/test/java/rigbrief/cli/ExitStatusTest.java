package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ExitStatusTest {

    /** The numbers are a promise to scripts. */
    @ParameterizedTest
    @CsvSource({
        "DONE, 0",
        "INTERNAL_FAULT, 1",
        "WRONG_USE, 2",
        "BAD_INPUT, 3",
        "IMPOSSIBLE, 4",
        "BREAKS, 5"
    })
    void a_status_keeps_its_number(ExitStatus status, int code) {
        assertThat(status.code()).isEqualTo(code);
    }

    @ParameterizedTest
    @EnumSource
    void a_status_is_found_by_its_number(ExitStatus status) {
        assertThat(ExitStatus.of(status.code())).isEqualTo(status);
        assertThat(status.meaning()).isNotBlank();
    }

    @Test
    void an_unknown_number_is_refused() {
        assertThatThrownBy(() -> ExitStatus.of(6)).hasMessageContaining("found exit status 6");
    }
}
