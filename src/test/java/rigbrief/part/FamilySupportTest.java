package rigbrief.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FamilySupportTest {
    @ParameterizedTest
    @CsvSource({
        "1.20, 1.20, true",
        "1.20, 1.3, true",
        "1.3, 1.20, false",
        "2403, 2402, true",
        "1.20, 1.20.0, true",
        "1.20, 1.20.1, false",
        "1.20.1, 1.20, true",
        "07, 7, true"
    })
    void versions_compare_number_by_number(String version, String needed, boolean atLeast) {
        assertThat(FamilySupport.atLeast(version, needed)).isEqualTo(atLeast);
    }
}
