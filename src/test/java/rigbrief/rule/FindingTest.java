package rigbrief.rule;

import static rigbrief.fixture.FindingAssert.assertThat;

import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import rigbrief.part.Fact;
import rigbrief.quantity.Length;
import rigbrief.quantity.Unit;
import rigbrief.wording.Phrase;

class FindingTest {
    private static final Fact<Length> EMPTY = Fact.notStated("cooler-1", "height_mm");

    @Test
    void a_need_at_most_what_there_is_is_met_with_its_margin() {
        Finding finding = Finding.atMost(5, 5, Unit.PIECE, () -> Phrase.data("words"));

        assertThat(finding).isMet().hasMargin(5, 5, Unit.PIECE);
    }

    @Test
    void a_need_beyond_what_there_is_is_a_breach_of_the_difference() {
        Finding finding = Finding.atMost(8, 5, Unit.PIECE, () -> Phrase.data("words"));

        assertThat(finding).isBreachOf(3).saying("words").hasMargin(5, 8, Unit.PIECE);
    }

    @Test
    void figures_are_compared_in_their_own_unit() {
        Finding finding =
                Finding.atMost(
                        Fact.of(Length.mm(7)), Fact.of(Length.mm(5)), () -> Phrase.data("words"));

        assertThat(finding).isBreachOf(2).hasMargin(5, 7, Unit.MILLIMETRE);
    }

    @Test
    void an_empty_cell_on_either_side_is_named() {
        Fact<Length> stated = Fact.of(Length.mm(1));

        assertThat(Finding.atMost(EMPTY, stated, () -> Phrase.data("")))
                .isUnknown("cooler-1", "height_mm");
        assertThat(Finding.atMost(stated, EMPTY, () -> Phrase.data("")))
                .isUnknown("cooler-1", "height_mm");
    }

    @Test
    void a_breach_of_nothing_is_refused() {
        Assertions.assertThatThrownBy(() -> Finding.breach(0, () -> Phrase.data("words")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("found a breach of 0, expected at least 1");
    }

    @Test
    void a_stated_figure_is_not_unknown() {
        Assertions.assertThatThrownBy(() -> Finding.unknown(Fact.of(Length.mm(3))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected an empty cell");
    }

    @Test
    void a_condition_that_fails_is_a_breach_of_one() {
        assertThat(Finding.require(true, () -> Phrase.data("words"))).isMet();
        assertThat(Finding.require(false, () -> Phrase.data("words")))
                .isBreachOf(1)
                .saying("words");
    }

    @Test
    void an_excess_of_zero_is_met() {
        assertThat(Finding.unlessZero(0, () -> Phrase.data("words"))).isMet();
        assertThat(Finding.unlessZero(4, () -> Phrase.data("words"))).isBreachOf(4).saying("words");
    }

    @Test
    void notes_and_cautions_are_no_breach() {
        assertThat(Finding.note(() -> Phrase.data("look"))).isNote().saying("look");
        assertThat(Finding.caution(() -> Phrase.data("mind"))).isCaution().saying("mind");
    }
}
