package rigbrief.model.form;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;
import static rigbrief.model.form.BoardFormat.ATX;
import static rigbrief.model.form.BoardFormat.E_ATX;
import static rigbrief.model.form.BoardFormat.MICRO_ATX;
import static rigbrief.model.form.BoardFormat.MINI_ITX;
import static rigbrief.model.form.BoardFormat.SSI_CEB;
import static rigbrief.model.form.BoardFormat.SSI_EEB;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import rigbrief.model.form.BoardFormat.Hole;
import rigbrief.model.form.BoardPlacement.Verdict;

class BoardPlacementTest {

    /** Counted from the hole letters of the microATX specification 1.2. */
    @Test
    @DisplayName("FORM-02: microATX on ATX stand-offs alone misses B, R and S: gaps, not a fit")
    void a_smaller_board_on_the_large_board_s_stand_offs() {
        var placement = BoardPlacement.judge(MICRO_ATX, List.of(ATX));

        assertThat(placement.verdict()).isEqualTo(Verdict.SUPPORTED_WITH_GAPS);
        assertThat(placement.missing()).containsExactly(Hole.B, Hole.R, Hole.S);
        assertThat(MICRO_ATX.holes()).hasSize(9);
    }

    /** Source: Mini-ITX addendum 1.1, section 2.4; the four hole letters are from memory. */
    @Test
    @DisplayName("FORM-03: Mini-ITX in an ATX case fits")
    void the_smallest_board_in_a_large_case() {
        var placement = BoardPlacement.judge(MINI_ITX, List.of(ATX));

        assertThat(placement.verdict()).isEqualTo(Verdict.FITS);
        assertThat(placement.missing()).isEmpty();
    }

    /** Sources: microATX specification 1.2 (305 mm), Mini-ITX addendum 1.1 (170 mm). */
    @Test
    @DisplayName("FORM-04: ATX in a Mini-ITX case is too large")
    void a_large_board_in_the_smallest_case() {
        assertThat(BoardPlacement.judge(ATX, List.of(MINI_ITX)).verdict())
                .isEqualTo(Verdict.TOO_LARGE);
    }

    /** Source: restated tables of board formats: 330 mm deep against 267, and other holes. */
    @Test
    @DisplayName("FORM-05: EEB in a case for ATX and CEB is refused")
    void a_server_board_in_a_desktop_case() {
        var placement = BoardPlacement.judge(SSI_EEB, List.of(ATX, SSI_CEB));

        assertThat(placement.verdict()).isEqualTo(Verdict.TOO_LARGE);
        assertThat(placement.missing()).containsExactly(Hole.EEB_SET);
    }

    @Test
    void a_board_with_none_of_its_holes_met_has_no_place() {
        assertThat(BoardPlacement.judge(ATX, List.of(SSI_EEB)).verdict())
                .isEqualTo(Verdict.OTHER_HOLES);
    }

    @Test
    void stand_offs_of_all_formats_that_a_case_lists_count_together() {
        var placement = BoardPlacement.judge(MICRO_ATX, List.of(ATX, MICRO_ATX));

        assertThat(placement.verdict()).isEqualTo(Verdict.FITS);
        assertThat(placement.missing()).isEmpty();
    }

    /** By hand: an E-ATX board is as wide as ATX, but 277 mm deep where ATX has 244. */
    @Test
    void one_side_too_long_is_enough_to_refuse() {
        assertThat(BoardPlacement.judge(E_ATX, List.of(ATX)).verdict())
                .isEqualTo(Verdict.TOO_LARGE);
        assertThat(BoardPlacement.judge(ATX, List.of(MICRO_ATX)).verdict())
                .isEqualTo(Verdict.TOO_LARGE);
        assertThat(BoardPlacement.judge(ATX, List.of(ATX)).verdict()).isEqualTo(Verdict.FITS);
    }

    @Test
    void a_case_that_takes_nothing_is_refused() {
        refused("caseTakes", () -> BoardPlacement.judge(ATX, List.of()));
    }
}
