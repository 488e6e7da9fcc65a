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

    @Test
    void wide_characters_keep_the_next_column_in_line() {
        var table = new TextTable().left("part", 20).right("price").row("漢字", "9").row("ab", "10");

        assertThat(table.lines())
                .containsExactly("part  price", "-----------", "漢字      9", "ab       10");
    }

    @Test
    void a_wider_page_lets_cells_run_on_that_wrap_on_the_narrowest() {
        var table =
                new TextTable().left("part", 10).right("price").row("Kestrel Weald 8", "129.00");

        assertThat(table.lines(120))
                .containsExactly(
                        "part              price", "-".repeat(23), "Kestrel Weald 8  129.00");
    }

    @Test
    void what_a_wider_page_adds_is_shared_by_the_columns_that_wrap() {
        String words = "word ".repeat(20).strip();
        var table = new TextTable().left("a", 20).left("b", 20).row(words, words);

        assertThat(table.lines(98)).hasSize(6).allMatch(line -> line.length() <= 98);
        assertThat(table.lines(78)).hasSize(7);
    }

    @Test
    void a_table_too_wide_for_the_page_is_narrowed_and_long_words_break_behind_hyphens() {
        String id = "weir-and-wold-long-case-four-hundred-and-twelve-millimetres-deep";
        var table =
                new TextTable().left("part", 60).left("also", 60).right("price").row(id, id, "9");

        assertThat(table.lines())
                .allMatch(line -> TextPage.length(line) <= 78)
                .noneMatch(line -> line.contains("mil-"));
        assertThat(String.join("", table.lines())).contains("-and-twelve-");
    }

    @Test
    void no_character_is_lost_where_a_word_is_broken() {
        String word = "0123456789".repeat(10);

        assertThat(String.join("", TextPage.folded(word, 7))).isEqualTo(word);
        assertThat(TextPage.folded("漢字漢字", 3)).containsExactly("漢", "字", "漢", "字");
        assertThat(TextPage.folded("漢", 1)).containsExactly("漢");
    }
}
