package rigbrief.model.link;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TimingRuleTest {

    /** Source: CVT 1.1 and 1.2: clock steps of 0.25 MHz and 0.001 MHz, cells of 8 and 1 pixels. */
    @Test
    void steps_are_those_of_the_standard() {
        assertThat(TimingRule.CVT.clockStepHz()).isEqualTo(250_000);
        assertThat(TimingRule.CVT_RB1.clockStepHz()).isEqualTo(250_000);
        assertThat(TimingRule.CVT_RB2.clockStepHz()).isEqualTo(1_000);
        assertThat(TimingRule.CVT.cellPx()).isEqualTo(8);
        assertThat(TimingRule.CVT_RB1.cellPx()).isEqualTo(8);
        assertThat(TimingRule.CVT_RB2.cellPx()).isEqualTo(1);
    }

    @Test
    void labels_tell_the_rules_apart() {
        assertThat(TimingRule.CVT_RB2.label()).isEqualTo("CVT-RBv2");
        assertThat(TimingRule.CVT_RB1.label()).isEqualTo("CVT-RBv1");
        assertThat(TimingRule.CVT.label()).isEqualTo("CVT");
    }
}
