package rigbrief.model.memory;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.model.memory.M2Module.Notches;

class M2ModuleTest {

    /** Source: a drive maker's M.2 overview booklet, key table. */
    @Test
    @DisplayName("STO-02: a drive notched for B and M works at x2 in an M socket wired x4")
    void two_notches_mean_two_lanes() {
        assertThat(M2Module.lanes(Notches.B_AND_M, 4)).isEqualTo(2);
        assertThat(M2Module.lanes(Notches.M, 4)).isEqualTo(4);
        assertThat(M2Module.lanes(Notches.M, 2)).isEqualTo(2);
        assertThat(M2Module.lanes(Notches.M, 8)).isEqualTo(4);
        assertThat(M2Module.lanes(Notches.B_AND_M, 1)).isEqualTo(1);
    }

    /** By comparing lengths: 110 mm is none of 42, 60 and 80. */
    @Test
    @DisplayName("STO-03: a 22110 module has no stand-off in a place for 2242, 2260 and 2280")
    void a_module_too_long_for_its_place() {
        var place = List.of(42, 60, 80);

        assertThat(M2Module.of("22110").fits(place)).isFalse();
        assertThat(M2Module.of("2280").fits(place)).isTrue();
        assertThat(M2Module.of("2230").fits(place)).isFalse();
    }

    /** Source: the same booklet: width and then length in millimetres. */
    @ParameterizedTest
    @CsvSource({"2280,22,80", "22110,22,110", "1216,12,16", "1630,16,30", "3042,30,42"})
    void a_code_is_width_and_length(String code, int widthMm, int lengthMm) {
        assertThat(M2Module.of(code)).isEqualTo(new M2Module(widthMm, lengthMm));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2290", "2380", "228", "221100", "", "22x80", "22 80"})
    void what_is_no_standard_size_is_refused(String code) {
        refused("M.2 size", () -> M2Module.of(code));
    }

    @Test
    void a_socket_without_lanes_is_refused() {
        refused("socketLanes", () -> M2Module.lanes(Notches.M, 0));
    }
}
