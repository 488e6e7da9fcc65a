package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.report.ReplacementJsonTest.answer;
import static rigbrief.report.ReplacementJsonTest.boardFaulty;
import static rigbrief.report.ReplacementJsonTest.boardGone;
import static rigbrief.report.ReplacementJsonTest.processorGone;

import org.junit.jupiter.api.Test;
import rigbrief.build.PartState;
import rigbrief.proposal.replace.Trouble;

class ReplacementTextTest {

    @Test
    void the_least_change_is_told_with_its_reason_its_money_and_its_proof() {
        String text = text(answer(PartState.WANTED, boardGone())).replaceAll("\\s+", " ");

        assertThat(text)
                .contains("LEAST CHANGE")
                .contains("can't be had any more.")
                .contains("Extra: changed parts +12.00. All in EUR 938.90")
                .contains("Proven: no build that keeps every must gives up less");
    }

    @Test
    void an_exchange_of_a_fitted_part_comes_with_the_work_at_the_bench() {
        String text = text(answer(PartState.FITTED, boardFaulty()));

        assertThat(text)
                .contains("another of the same takes its place")
                .contains("Stays: processor (fitted)")
                .contains("To come back from suppliers: EUR 100.00.")
                .contains("At the bench, about 75 minutes")
                .contains("One module at a time");
    }

    @Test
    void no_way_out_says_why() {
        String text = text(answer(PartState.WANTED, processorGone()));

        assertThat(text).contains("there is no replacement").contains("slot processor");
    }

    @Test
    void a_build_that_can_stay_is_not_talked_about_at_length() {
        String text = text(answer(PartState.WANTED, Trouble.NONE));

        assertThat(text).contains("it can stay as it is").doesNotContain("LEAST CHANGE");
    }

    @Test
    void no_line_is_longer_than_the_page() {
        for (Trouble trouble : java.util.List.of(boardGone(), boardFaulty(), processorGone())) {
            assertThat(text(answer(PartState.FITTED, trouble)).lines())
                    .allMatch(line -> line.length() <= 80);
        }
    }

    private static String text(ReplacementAnswer answer) {
        return new ReplacementText().write(answer, Style.PLAIN);
    }
}
