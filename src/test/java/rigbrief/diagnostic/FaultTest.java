package rigbrief.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FaultTest {
    @Test
    void a_fault_says_where_what_was_found_what_was_expected_and_what_to_do() {
        Fault fault = new Fault("a.csv", 14, 23, "height_mm", "16,5 cm", "165 or so", "write 165");

        assertThat(fault.text())
                .isEqualTo(
                        "a.csv:14:23: height_mm: found \"16,5 cm\", expected 165 or so; write 165");
    }

    @Test
    void nothing_at_all_is_found_without_quotes() {
        assertThat(found("")).isEqualTo("nothing");
    }

    @Test
    void quotes_and_backslashes_are_escaped() {
        assertThat(found("say \"a\\b\"")).isEqualTo("\"say \\\"a\\\\b\\\"\"");
    }

    @Test
    void what_could_move_a_cursor_or_turn_the_text_is_spelt_out() {
        // U+001B begins a terminal's escape, U+202E turns the writing direction, U+0085 and U+2028
        // break lines: general categories Cc, Cf and Zl of the Unicode Character Database.
        assertThat(found("a\u001b[2Jb\u202ec\u0085d\u2028e\nf"))
                .isEqualTo("\"a\\u001B[2Jb\\u202Ec\\u0085d\\u2028e\\u000Af\"");
    }

    @Test
    void letters_of_every_script_stay_as_they_are() {
        assertThat(found("Grün 木 Ω \uD83D\uDE00")).isEqualTo("\"Grün 木 Ω \uD83D\uDE00\"");
    }

    @Test
    void eighty_characters_are_shown_and_more_are_cut() {
        assertThat(found("x".repeat(80))).isEqualTo("\"" + "x".repeat(80) + "\"");
        assertThat(found("x".repeat(81))).isEqualTo("\"" + "x".repeat(77) + "...\"");
    }

    @Test
    void no_character_is_cut_in_half() {
        String pair = "\uD83D\uDE00";

        assertThat(found(pair.repeat(81))).isEqualTo("\"" + pair.repeat(77) + "...\"");
    }

    @Test
    void subject_file_and_advice_are_made_harmless_too() {
        Fault fault = new Fault("a\u001b", 1, 1, "b\u001b", "", "c\u001b", "d\u001b");

        assertThat(fault.text())
                .isEqualTo("a\\u001B:1:1: b\\u001B: found nothing, expected c\\u001B; d\\u001B");
    }

    private static String found(String found) {
        String text = new Fault("f", 1, 1, "s", found, "e", "a").text();
        return text.substring(
                "f:1:1: s: found ".length(), text.length() - ", expected e; a".length());
    }
}
