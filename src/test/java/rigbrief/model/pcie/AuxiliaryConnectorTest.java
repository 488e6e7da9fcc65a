package rigbrief.model.pcie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AuxiliaryConnectorTest {

    /** Source: ATX 3.0 design guide 336521, page 26. */
    @ParameterizedTest
    @CsvSource({"6pin,75,6.75", "8pin,150,13.5", "12v2x6,600,55"})
    void power_and_current_are_those_of_the_guide(String id, int sustainedW, double maxRmsA) {
        var connector = AuxiliaryConnector.find(id).orElseThrow();

        assertThat(connector.id()).isEqualTo(id);
        assertThat(connector.sustainedW()).isEqualTo(sustainedW);
        assertThat(connector.maxRmsA()).isCloseTo(maxRmsA, within(0.0));
    }

    @Test
    void an_unknown_plug_is_not_found() {
        assertThat(AuxiliaryConnector.find("10pin")).isEmpty();
    }
}
