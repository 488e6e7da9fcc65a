package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AcceptanceTextTest {

    @Test
    void a_machine_that_does_all_it_should_is_accepted() {
        String text = text(AcceptanceJsonTest.answer(1));

        assertThat(text).startsWith("ACCEPTED").contains("As expected", "Passed");
        assertThat(text).doesNotContain("Likeliest causes", "Broken promises");
    }

    @Test
    void a_broken_promise_comes_first_with_its_likeliest_causes() {
        String text = text(AcceptanceJsonTest.answer(0.4));

        assertThat(text).startsWith("NOT ACCEPTED").contains("Broken promises");
        assertThat(text.indexOf("Broken promises")).isLessThan(text.indexOf("As expected"));
        assertThat(text).contains("Likeliest causes", "what to do");
    }

    @Test
    void better_than_expected_is_suspect_and_blames_nothing() {
        String text = text(AcceptanceJsonTest.answer(1.4));

        assertThat(text).startsWith("PROMISES KEPT, LOOK AGAIN");
        assertThat(text).contains("Better than expected is suspect too");
        assertThat(text).doesNotContain("Likeliest causes");
    }

    @Test
    void nothing_measured_is_nothing_accepted() {
        assertThat(text(AcceptanceJsonTest.unmeasured())).startsWith("NOTHING MEASURED");
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(text(AcceptanceJsonTest.answer(0.4)).lines())
                .allMatch(line -> TextPage.length(line) <= TextPage.WIDTH);
    }

    private static String text(AcceptanceAnswer answer) {
        return new AcceptanceText().write(answer, Style.PLAIN);
    }
}
