package rigbrief.rule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.quantity.Unit;

class MarginTest {
    @Test
    void what_is_left_over_is_what_there_is_less_what_is_needed() {
        Margin loose = new Margin(345, 322, Unit.MILLIMETRE);
        Margin broken = new Margin(300, 322, Unit.MILLIMETRE);

        assertThat(loose.spare()).isEqualTo(23);
        assertThat(broken.spare()).isEqualTo(-22);
    }
}
