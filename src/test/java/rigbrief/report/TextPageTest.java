package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextPageTest {

    @Test
    void a_paragraph_wraps_at_the_width_of_the_page() {
        var page = new TextPage(Style.PLAIN).paragraph(4, "word ".repeat(30).strip());

        assertThat(page.toString().lines())
                .hasSize(2)
                .allMatch(line -> line.startsWith("    word"))
                .allMatch(line -> line.length() <= TextPage.WIDTH);
    }

    @Test
    void further_lines_hang_under_the_first_word() {
        var page = new TextPage(Style.PLAIN).hanging("  - ", "word ".repeat(20).strip());

        assertThat(page.toString().lines().toList().get(1)).startsWith("    word");
    }

    @Test
    void a_word_wider_than_the_page_is_kept_whole() {
        String wide = "x".repeat(100);

        assertThat(TextPage.wrapped("a " + wide + " b", 80)).containsExactly("a", wide, "b");
    }

    @Test
    void what_could_move_a_cursor_is_spelt_out() {
        var page = new TextPage(Style.PLAIN).line("red\u001b[31m\u202e").paragraph(2, "a\tb\u0007");

        assertThat(page.toString()).isEqualTo("red\\u001B[31m\\u202E\n  a\\u0009b\\u0007\n");
    }

    @Test
    void a_chapter_has_its_right_end_at_the_edge_of_the_page() {
        var page = new TextPage(Style.PLAIN).chapter("LEAN", "EUR 1.00");

        assertThat(page.toString().lines())
                .allMatch(line -> line.length() == TextPage.WIDTH)
                .first()
                .matches(line -> line.startsWith("LEAN ") && line.endsWith(" EUR 1.00"));
    }

    @Test
    void only_a_terminal_gets_letters_set_off() {
        assertThat(new TextPage(Style.PLAIN).chapter("a", "b").toString()).doesNotContain("\u001b");
        assertThat(new TextPage(Style.TERMINAL).chapter("a", "b").toString())
                .startsWith("\u001b[1ma")
                .contains("b\u001b[0m\n");
    }

    @Test
    void a_wide_page_gives_its_width_to_heads_and_tables_and_not_to_sentences() {
        var page =
                new TextPage(Style.PLAIN.wide(140))
                        .chapter("LEAN", "EUR 1.00")
                        .paragraph(0, "word ".repeat(60).strip());

        assertThat(page.toString().lines().limit(2)).allMatch(line -> line.length() == 140);
        assertThat(page.toString().lines().skip(2)).allMatch(line -> line.length() <= 100);
    }

    @ParameterizedTest
    @CsvSource({"20, 80", "80, 80", "132, 132", "500, 160"})
    void a_page_is_never_narrower_than_80_columns_nor_wider_than_160(int asked, int got) {
        assertThat(Style.PLAIN.wide(asked).width()).isEqualTo(got);
    }

    @Property
    void wrapping_keeps_every_word_and_no_line_is_wider_than_asked_unless_one_word_is(
            @ForAll @StringLength(max = 200) String words,
            @ForAll @IntRange(min = 1, max = 90) int width) {
        var lines = TextPage.wrapped(words, width);

        assertThat(String.join(" ", lines).replace(" ", ""))
                .isEqualTo(rigbrief.diagnostic.Quotation.visible(words).replace(" ", ""));
        assertThat(lines)
                .allMatch(line -> TextPage.length(line) <= width || !line.strip().contains(" "));
    }
}
