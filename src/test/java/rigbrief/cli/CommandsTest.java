package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {

    @ParameterizedTest
    @ValueSource(strings = {"propose", "audit", "explain", "catalog", "intake", "rules"})
    void a_command_that_is_named_comes_alone(String name) {
        assertThat(Commands.neededFor(List.of(name, "--help"))).containsExactly(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"help", "completion", "--help", "--no-color", "propse", ""})
    void all_come_where_it_is_not_plain_which_is_meant(String first) {
        assertThat(Commands.neededFor(List.of(first, "propose"))).isEqualTo(Commands.NAMES);
    }

    @Test
    void the_version_needs_none_of_them() {
        assertThat(Commands.neededFor(List.of("--version"))).isEmpty();
        assertThat(Commands.neededFor(List.of())).isEqualTo(Commands.NAMES);
    }
}
