package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RemainingTimeTest {
    @Test
    void a_terminal_shows_how_far_it_is_and_a_time_once_there_is_one() {
        Captured captured = new Captured().terminals("err");
        RemainingTime time = new RemainingTime(captured.console());

        time.at(1, 10);
        time.at(4, 10);

        assertThat(captured.err())
                .contains("solving: 1 of 10")
                .contains("solving: 4 of 10, about ")
                .contains(" s left");
    }

    @Test
    void a_pipe_is_told_nothing() {
        Captured captured = new Captured();

        new RemainingTime(captured.console()).at(4, 10);

        assertThat(captured.err()).isEmpty();
    }
}
