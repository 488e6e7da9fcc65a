package rigbrief.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same question gives the same bytes, wherever the machine stands and however it counts. */
class SameBytesIT {
    private static final String[] QUESTION = {"propose", "scenarios/tight-600.yaml"};

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-Duser.language=de -Duser.country=DE -Duser.timezone=Europe/Berlin",
                "-Duser.language=tr -Duser.country=TR -Duser.timezone=Pacific/Auckland",
                "-Duser.language=ar -Duser.country=EG -Duser.timezone=America/Caracas",
                "-XX:ActiveProcessorCount=1",
                "-XX:-TieredCompilation"
            })
    void another_locale_time_zone_or_core_count_changes_no_byte(String options) throws Exception {
        var plain = new Packaged().run(QUESTION);

        var elsewhere = new Packaged().with("RIGBRIEF_JAVA_OPTIONS", options).run(QUESTION);

        assertThat(plain.status()).isZero();
        assertThat(elsewhere.out()).isEqualTo(plain.out());
    }
}
