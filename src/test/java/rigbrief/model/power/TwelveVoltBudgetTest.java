package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.model.power.TwelveVoltBudget.ProcessorClass;

class TwelveVoltBudgetTest {

    /** Source: design guide addendum 621484 revision 004. */
    @Test
    @DisplayName("PSU-01: a processor of 23 A and 4 A for the rest need 27 A at 12 V")
    void a_build_without_a_card() {
        assertThat(TwelveVoltBudget.totalA(23, 0, 4)).isEqualTo(27);
    }

    /** Source: the same addendum; 300 W at 12 V are 25 A. */
    @Test
    @DisplayName("PSU-02: a processor of 26 A, a 300 W card and 8 A for the rest need 59 A")
    void a_build_with_a_card() {
        assertThat(TwelveVoltBudget.totalA(26, 300, 8)).isEqualTo(59);
    }

    /** Source: ATX guide 336521 revision 2.0, table 2-1, and its 11.2 V from section 3.1.1. */
    @ParameterizedTest
    @CsvSource({"W165,37.5,40,420.0", "W125,26,39,291.2", "W65,23,34,257.6", "W35,11,19,123.2"})
    void processor_currents_are_those_of_the_table(
            ProcessorClass processor, double continuousA, double peakA, double continuousW) {
        assertThat(processor.continuousA()).isEqualTo(continuousA);
        assertThat(processor.peakA()).isEqualTo(peakA);
        assertThat(processor.continuousW()).isCloseTo(continuousW, within(1e-9));
    }

    @Test
    void nonsense_is_refused() {
        refused("processorA", () -> TwelveVoltBudget.totalA(-1, 0, 0));
        refused("cardsW", () -> TwelveVoltBudget.totalA(0, -1, 0));
        refused("restA", () -> TwelveVoltBudget.totalA(0, 0, -1));
    }
}
