package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DutyCycleTest {

    /** Source: Commission Decision (EU) 2015/1402, table 3. */
    @ParameterizedTest
    @EnumSource
    @DisplayName("TEC-03: each row of the weights sums to 100 %")
    void a_year_has_no_more_and_no_less_than_its_time(DutyCycle cycle) {
        assertThat(
                        cycle.offPercent()
                                + cycle.sleepPercent()
                                + cycle.longIdlePercent()
                                + cycle.shortIdlePercent())
                .isEqualTo(100);
    }

    /** Source: the same table; version 8 is from memory. */
    @ParameterizedTest
    @CsvSource({
        "CONVENTIONAL,45,5,15,35",
        "BASE_CAPABILITY,40,15,12,33",
        "REMOTE_WAKE,30,28,10,32",
        "SERVICE_DISCOVERY,25,36,8,31",
        "FULL_CAPABILITY,20,45,5,30",
        "VERSION_8,15,45,10,30"
    })
    void weights_are_those_of_the_programme(
            DutyCycle cycle, int off, int sleep, int longIdle, int shortIdle) {
        assertThat(cycle.offPercent()).isEqualTo(off);
        assertThat(cycle.sleepPercent()).isEqualTo(sleep);
        assertThat(cycle.longIdlePercent()).isEqualTo(longIdle);
        assertThat(cycle.shortIdlePercent()).isEqualTo(shortIdle);
    }
}
