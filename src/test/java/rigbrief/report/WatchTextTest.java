package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WatchTextTest {

    @Test
    void what_to_order_first_comes_with_its_reasons() {
        assertThat(text(WatchJsonTest.scarce()).replaceAll("\\s+", " "))
                .contains("Order first")
                .contains("no supplier has more than 2, 1 wanted, only one supplier has it")
                .contains("it takes 12 days");
    }

    @Test
    void a_fallback_is_told_in_one_line() {
        assertThat(text(WatchJsonTest.scarce()))
                .containsPattern("board: .+, [+]12.00, nothing else changes[.]\n");
    }

    @Test
    void what_is_gone_is_told_before_everything_else() {
        assertThat(text(WatchJsonTest.gone())).contains("Has to change already\n  - board: ");
        assertThat(text(WatchJsonTest.hopeless()).replaceAll("\\s+", " "))
                .contains("today it can't be had")
                .contains("No build of today's offers keeps every must");
    }

    @Test
    void no_line_is_longer_than_the_page() {
        assertThat(text(WatchJsonTest.scarce()).lines()).allMatch(line -> line.length() <= 80);
        assertThat(text(WatchJsonTest.gone()).lines()).allMatch(line -> line.length() <= 80);
    }

    private static String text(WatchAnswer answer) {
        return new WatchText().write(answer, Style.PLAIN);
    }
}
