package rigbrief.file.cell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigbrief.part.Kind;

class ColumnListerTest {
    @ParameterizedTest
    @EnumSource(Kind.class)
    void every_kind_begins_with_the_common_columns_and_repeats_none(Kind kind) {
        List<String> names = ColumnLister.of(kind).stream().map(Column::name).toList();

        // The common columns of every part file, as the catalogue's description lists them.
        assertThat(names)
                .startsWith(
                        "id",
                        "maker",
                        "model",
                        "maker_number",
                        "gtin",
                        "colour",
                        "lighting",
                        "mass_g",
                        "warranty_years")
                .doesNotHaveDuplicates();
    }

    @Test
    void a_column_says_what_it_holds_and_whether_it_must_be_filled() {
        List<Column> columns = ColumnLister.of(Kind.DISPLAY);

        assertThat(columns)
                .contains(
                        new Column("refresh_hz", true, "a whole number of hertz from 24 to 1000"),
                        new Column(
                                "vrr_low_hz",
                                false,
                                "a whole number of hertz from 0 to 200; empty means 0"),
                        new Column(
                                "resolution",
                                true,
                                "a text; each is pixels across and down (write 2560x1440)"));
    }
}
