package rigbrief.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.model.form.BoardFormat.Hole;
import rigbrief.part.BoardForm;

/** Sizes and holes: microATX specification 1.2, tables 3 and 4 (checks FORM-01 to FORM-05). */
class BoardSeatTest {
    @Test
    void a_micro_atx_board_is_244_mm_square_and_an_atx_board_305_wide() {
        assertThat(BoardSeat.widthMm(BoardForm.MICRO_ATX)).isEqualTo(244);
        assertThat(BoardSeat.depthMm(BoardForm.MICRO_ATX)).isEqualTo(244);
        assertThat(BoardSeat.widthMm(BoardForm.ATX)).isEqualTo(305);
        assertThat(BoardSeat.depthMm(BoardForm.ATX)).isEqualTo(244);
    }

    @Test
    void in_a_case_set_up_for_atx_a_micro_atx_board_lacks_three_stand_offs() {
        List<BoardForm> takes = List.of(BoardForm.ATX, BoardForm.MICRO_ATX, BoardForm.MINI_ITX);

        assertThat(BoardSeat.lacking(BoardForm.MICRO_ATX, takes))
                .containsExactly(Hole.B, Hole.R, Hole.S);
        assertThat(BoardSeat.lacking(BoardForm.ATX, takes)).isEmpty();
        assertThat(BoardSeat.lacking(BoardForm.MINI_ITX, takes)).isEmpty();
    }

    @Test
    void nothing_is_said_of_boards_that_no_standard_fixes_nor_of_a_case_without_a_list() {
        assertThat(BoardSeat.holes(BoardForm.E_ATX)).isEmpty();
        assertThat(BoardSeat.lacking(BoardForm.E_ATX, List.of(BoardForm.E_ATX))).isEmpty();
        assertThat(BoardSeat.lacking(BoardForm.MICRO_ATX, List.of())).isEmpty();
    }
}
