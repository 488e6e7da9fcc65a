package rigbrief.brief;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MainsByCountryTest {
    /** World Plugs, International Electrotechnical Commission, from memory. */
    @ParameterizedTest
    @CsvSource({
        "DE,230", "GB,230", "FR,230", "AU,230", "IN,230", "CN,230", "KR,230", "AR,230", "US,115",
        "CA,115", "JP,115", "TW,115", "MX,115", "CO,115", "BR,115"
    })
    void a_country_has_the_mains_that_the_commission_lists(String country, int volts) {
        assertThat(MainsByCountry.volts(country)).isEqualTo(volts);
    }

    @Test
    void a_country_that_is_not_named_has_230() {
        assertThat(MainsByCountry.volts("")).isEqualTo(230);
    }
}
