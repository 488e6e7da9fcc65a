package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void columns_are_as_wide_as_their_widest_cell() {
        var table = new TextTable().left("slot", 20).right("price").row("board", "94.95");

        assertThat(table.lines()).containsExactly("slot   price", "------------", "board  94.95");
    }

    @Test
    void a_cell_beyond_the_limit_wraps_within_its_column() {
        var table =
                new TextTable().left("part", 10).right("price").row("Kestrel Weald 8", "129.00");

        assertThat(table.lines())
                .containsExactly(
                        "part      price",
                        "----------------".substring(1),
                        "Kestrel  129.00",
                        "Weald 8");
    }

    @Test
    void a_remark_stands_under_its_row_from_the_second_column_on() {
        var table =
                new TextTable()
                        .left("slot", 20)
                        .left("part", 20)
                        .remarked("Quiet enough.", "fans", "Kestrel 120");

        assertThat(table.lines()).last().isEqualTo("      Quiet enough.");
    }

    @Test
    void a_cell_out_of_a_file_can_not_act_on_a_terminal() {
        var table = new TextTable().left("part", 40).row("\u001b[2J");

        assertThat(table.lines()).last().isEqualTo("\\u001B[2J");
    }
}
