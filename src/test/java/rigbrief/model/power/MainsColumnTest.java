package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MainsColumnTest {

    /** Common practice: nominal mains is 100 to 127 V or 220 to 240 V. */
    @ParameterizedTest
    @CsvSource({
        "100,V115_INTERNAL",
        "120,V115_INTERNAL",
        "127,V115_INTERNAL",
        "179,V115_INTERNAL",
        "180,V230_EU_INTERNAL",
        "220,V230_EU_INTERNAL",
        "230,V230_EU_INTERNAL",
        "240,V230_EU_INTERNAL"
    })
    void a_desktop_s_column_follows_its_mains(double mainsV, MainsColumn column) {
        assertThat(MainsColumn.forMains(mainsV)).isEqualTo(column);
    }

    @Test
    void nonsense_is_refused() {
        refused("mainsV", () -> MainsColumn.forMains(0));
    }
}
