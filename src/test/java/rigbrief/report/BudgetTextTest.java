package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.proposal.budget.Budget;

class BudgetTextTest {
    private static String text(Budget budget) {
        return new BudgetText().write(budget, Style.PLAIN);
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(text(Budgets.answered()).lines())
                .allMatch(line -> line.length() <= TextPage.WIDTH);
        assertThat(text(Budgets.impossible()).lines())
                .allMatch(line -> line.length() <= TextPage.WIDTH);
    }

    @Test
    void every_section_is_there_and_says_what_was_proven() {
        String text = text(Budgets.answered());

        assertThat(text)
                .contains("EVERY MUST TOGETHER")
                .contains("EUR 926.90")
                .contains("Proven: no build in this catalogue meets every must for less.")
                .contains("The least total that reaches one goal")
                .contains("What each must costs")
                .contains("THE FRONT")
                .contains("THE CEILING");
    }

    @Test
    void a_plot_in_plain_letters_needs_nothing_beyond_ascii() {
        String text = text(Budgets.answered());

        assertThat(text.chars().allMatch(letter -> letter < 128)).isTrue();
    }

    @Test
    void what_is_over_the_ceiling_is_said_with_the_amount() {
        assertThat(text(Budgets.overCeiling()))
                .contains(
                        "That is EUR 626.90 over the ceiling: under it no build meets every must.");
    }

    @Test
    void an_impossible_brief_tells_its_clash_and_a_way_out() {
        assertThat(text(Budgets.impossible()))
                .contains("no build meets its musts at any price")
                .contains("This must can't be met")
                .contains("- noise at most 5 dB(A)")
                .contains("Ways out");
    }

    @Test
    void what_comes_out_of_files_can_not_act_on_a_terminal() {
        assertThat(text(Budgets.client("\u001b]0;owned\u0007")))
                .doesNotContain("\u001b")
                .contains("\\u001B]0;owned\\u0007");
    }
}
