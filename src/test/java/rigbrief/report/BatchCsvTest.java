package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class BatchCsvTest {
    private final List<String> lines =
            new BatchCsv().write(BatchAnswers.mixed(), Style.PLAIN).lines().toList();

    @Test
    void there_is_a_head_and_a_row_per_brief_with_as_many_cells() {
        assertThat(lines).hasSize(6);
        assertThat(lines.get(0) + "\n").isEqualTo(BatchCsv.head());
        assertThat(lines)
                .allSatisfy(line -> assertThat(line.chars().filter(c -> c == ',')).hasSize(13));
    }

    @Test
    void a_row_tells_status_totals_and_proof() {
        assertThat(lines.get(1))
                .isEqualTo("anvil.yaml,anvil,proposed,EUR,479.63,0,,,595.02,1.24,,,no,0");
        assertThat(lines.get(2)).isEqualTo("desks.yaml,desks,proposed,EUR,,,,,,,22978.54,,no,0");
        assertThat(lines.get(3)).isEqualTo("hask.yaml,hask,impossible,EUR,,,,,,,,,,0");
        assertThat(lines.get(5)).isEqualTo("moss.yaml,,called off,,,,,,,,,,,0");
    }

    @Test
    void no_cell_begins_as_a_formula_would() {
        assertThat(lines.get(4)).startsWith("'=mail.yaml,,bad input,");
    }
}
