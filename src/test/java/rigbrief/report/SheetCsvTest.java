package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetCsvTest {
    private static final String CSV = new SheetCsv().write(SheetJsonTest.answer(), Style.PLAIN);

    @Test
    void another_reader_of_csv_finds_eight_cells_in_every_row() throws IOException {
        List<List<String>> rows = rows();

        assertThat(rows).hasSize(SheetJsonTest.answer().sheet().lines().size() + 1);
        assertThat(rows).allMatch(row -> row.size() == 8);
    }

    @Test
    void the_last_column_is_empty_and_to_be_filled() throws IOException {
        List<List<String>> rows = rows();

        assertThat(rows.get(0).get(7)).isEqualTo("measured");
        assertThat(rows.subList(1, rows.size())).allMatch(row -> row.get(7).isEmpty());
    }

    @Test
    void no_cell_can_be_taken_for_a_formula() throws IOException {
        for (List<String> row : rows()) {
            assertThat(row).noneMatch(cell -> cell.matches("[=+@-].*"));
        }
    }

    private static List<List<String>> rows() throws IOException {
        try (var rows =
                new CsvMapper()
                        .readerForListOf(String.class)
                        .with(CsvParser.Feature.WRAP_AS_ARRAY)
                        .<List<String>>readValues(CSV)) {
            return rows.readAll();
        }
    }
}
