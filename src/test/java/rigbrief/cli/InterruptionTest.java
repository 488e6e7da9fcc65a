package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class InterruptionTest {
    @Test
    void nothing_is_called_off_by_itself_and_listening_can_end() {
        Interruption interruption = Interruption.listening();

        interruption.close();

        assertThat(interruption.calledOff()).isFalse();
    }
}
