package rigbrief.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.part.BoardForm;
import rigbrief.part.CardPlace;
import rigbrief.part.Efficiency;
import rigbrief.part.FrontPort;
import rigbrief.part.Guide;
import rigbrief.part.MemoryType;
import rigbrief.part.ModuleForm;
import rigbrief.part.SupplyForm;
import rigbrief.part.WirelessStandard;
import rigbrief.part.Word;

/** Every word of the catalogue that findings and pages name has a name to be told by. */
class StandardNamesTest {
    static List<String> keys() {
        return Stream.of(
                        names("standard.", BoardForm.values()),
                        names("standard.", SupplyForm.values()),
                        names("standard.", Guide.values()),
                        names("standard.", MemoryType.values()),
                        names("standard.", ModuleForm.values()),
                        names("standard.", CardPlace.values()),
                        names("standard.", WirelessStandard.values())
                                .filter(key -> !key.endsWith(".none")),
                        names("port.name.", FrontPort.values()),
                        names("efficiency.", Efficiency.values()))
                .flatMap(all -> all)
                .distinct()
                .toList();
    }

    private static Stream<String> names(String prefix, Word... words) {
        return Stream.of(words).map(word -> prefix + word.word());
    }

    @ParameterizedTest
    @MethodSource("keys")
    void it_is_told_in_every_language(String key) {
        for (Locale language : Texts.LANGUAGES) {
            assertThat(Texts.of(language).has(key)).as(key + " in " + language).isTrue();
        }
    }
}
