package rigbrief.rule.fit;

import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.Checked.check;
import static rigbrief.fixture.FindingAssert.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.fixture.BuildFixture;
import rigbrief.part.BoardForm;
import rigbrief.rule.Finding;

class BoardSizeRuleTest {
    @Test
    void a_listed_size_is_met() {
        BuildFixture build = aBuild();

        Finding finding = check(new BoardSizeRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void a_mini_itx_board_in_a_case_that_lists_it_is_met() {
        // FORM-03: a Mini-ITX board installs in ATX cases (Mini-ITX addendum to the microATX
        // specification).
        BuildFixture build = aBuild().with(aBoard().form(BoardForm.MINI_ITX));

        Finding finding = check(new BoardSizeRule(), build);

        assertThat(finding).isMet();
    }

    @Test
    void an_atx_board_in_a_mini_itx_case_is_a_breach_of_one() {
        // FORM-04: 305 mm against 170 mm (ATX and Mini-ITX specifications).
        BuildFixture build =
                aBuild().with(aBoard().form(BoardForm.ATX))
                        .with(aCase().boards(BoardForm.MINI_ITX));

        Finding finding = check(new BoardSizeRule(), build);

        assertThat(finding).isBreachOf(1).saying("takes no ATX board");
    }

    @Test
    void an_empty_cell_is_a_caution() {
        BuildFixture build = aBuild().with(aCase().unknown("boards"));

        Finding finding = check(new BoardSizeRule(), build);

        assertThat(finding).isUnknown("case-1", "boards");
    }
}
