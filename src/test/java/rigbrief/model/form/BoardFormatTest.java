package rigbrief.model.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.model.form.BoardFormat.Hole;

class BoardFormatTest {

    /** Source: microATX Motherboard Interface Specification 1.2, pages 9 to 11. */
    @Test
    @DisplayName("FORM-01: ATX and microATX share the holes C, F, H, J, L and M")
    void the_common_holes() {
        EnumSet<Hole> common = EnumSet.copyOf(BoardFormat.ATX.holes());
        common.retainAll(BoardFormat.MICRO_ATX.holes());

        assertThat(common).containsExactly(Hole.C, Hole.F, Hole.H, Hole.J, Hole.L, Hole.M);
    }

    /** Source: the same specification, table 4 and figure 2: nine holes each. */
    @Test
    void both_large_formats_have_nine_holes() {
        assertThat(BoardFormat.ATX.holes())
                .containsExactly(
                        Hole.A, Hole.C, Hole.F, Hole.G, Hole.H, Hole.J, Hole.K, Hole.L, Hole.M);
        assertThat(BoardFormat.MICRO_ATX.holes())
                .containsExactly(
                        Hole.B, Hole.C, Hole.F, Hole.H, Hole.J, Hole.L, Hole.M, Hole.R, Hole.S);
    }

    /**
     * Sources: microATX specification 1.2 (ATX, microATX), Mini-ITX addendum 1.1, restatements for
     * SSI boards; slot counts from restatements; the depth of E-ATX boards is from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "ATX,305,244,7",
        "MICRO_ATX,244,244,4",
        "MINI_ITX,170,170,1",
        "E_ATX,305,277,7",
        "SSI_CEB,305,267,7",
        "SSI_EEB,305,330,7"
    })
    void sizes_are_those_of_the_specifications(
            BoardFormat format, int widthMm, int depthMm, int slots) {
        assertThat(format.widthMm()).isEqualTo(widthMm);
        assertThat(format.depthMm()).isEqualTo(depthMm);
        assertThat(format.mostSlots()).isEqualTo(slots);
    }

    /** From memory: the four letters; the addendum says that there are four. */
    @Test
    void the_smallest_board_has_four_holes_of_the_large_ones() {
        assertThat(BoardFormat.MINI_ITX.holes()).hasSize(4);
        assertThat(BoardFormat.ATX.holes()).containsAll(BoardFormat.MINI_ITX.holes());
        assertThat(BoardFormat.MICRO_ATX.holes()).containsAll(BoardFormat.MINI_ITX.holes());
    }

    @Test
    void holes_cannot_be_changed_from_outside() {
        assertThatThrownBy(() -> BoardFormat.ATX.holes().clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }
}
