package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.proposal.budget.Budget;

class BudgetCsvTest {
    @Test
    void there_is_a_head_and_a_row_per_build_with_as_many_cells() {
        Budget budget = Budgets.answered();

        List<String> lines = new BudgetCsv().write(budget, Style.PLAIN).lines().toList();

        assertThat(lines).hasSize(1 + budget.front().size());
        assertThat(lines.get(0))
                .startsWith("total,currency,utility,gap,knee,lantern-marsh_fps,kiln-drafting_s");
        assertThat(lines)
                .allSatisfy(
                        line ->
                                assertThat(line.split(",", -1))
                                        .hasSize(lines.get(0).split(",", -1).length));
        assertThat(lines.get(1)).startsWith("926.90,EUR,0.");
    }

    @Test
    void no_cell_begins_as_a_formula_would() {
        String csv = new BudgetCsv().write(Budgets.answered(), Style.PLAIN);

        for (String cell : csv.split("[,\n]")) {
            assertThat(cell).doesNotStartWith("=").doesNotStartWith("+").doesNotStartWith("@");
        }
    }
}
