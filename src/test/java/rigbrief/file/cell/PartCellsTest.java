package rigbrief.file.cell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigbrief.diagnostic.Faults;
import rigbrief.part.Fact;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.PcCase;

/** A part as cells is the row it was read from, as far as the row says anything. */
class PartCellsTest {
    @ParameterizedTest
    @EnumSource(Kind.class)
    void a_part_with_every_column_filled_is_written_as_its_row(Kind kind) {
        Map<String, String> filled = Rows.filled(kind);

        assertThat(PartCells.of(read(kind, filled))).isEqualTo(filled);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void a_part_with_the_required_columns_alone_reads_back_equal(Kind kind) {
        Part part = read(kind, Rows.required(kind));

        Part again = read(kind, PartCells.of(part));

        assertThat(again).isEqualTo(part);
    }

    @Test
    void what_is_not_stated_stays_so_and_none_stays_none() {
        Map<String, String> cells = Rows.required(Kind.CASE);
        cells.put("boards", "none");

        PcCase read = (PcCase) read(Kind.CASE, PartCells.of(read(Kind.CASE, cells)));

        assertThat(read.boards()).isEqualTo(Fact.of(List.of()));
        assertThat(read.supplies().stated()).isFalse();
    }

    private static Part read(Kind kind, Map<String, String> cells) {
        List<String> names = new ArrayList<>(cells.keySet());
        names.add(0, "id");
        String header = String.join(",", names);
        String row =
                cells.values().stream()
                        .map(cell -> "\"" + cell + "\"")
                        .collect(Collectors.joining(",", "p-1,", "\n"));
        Faults faults = new Faults();
        CsvTable table = CsvTable.open("f", header + "\n" + row, ColumnLister.of(kind), faults);
        assertThat(table.next()).isTrue();
        Part part = kind.read(CellRow.of(table, new CellRow.Memo()));
        assertThat(faults.all()).isEmpty();
        return part;
    }
}
