package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.goal.Goals;
import rigbrief.part.Slot;
import rigbrief.proposal.Tier;

/** The word lists of the schemas are those of the program. */
class ContractTest {

    @ParameterizedTest
    @ValueSource(strings = {"proposals", "audit", "replacement"})
    void slots_and_goals_of_a_schema_are_all_there_are(String name) throws IOException {
        JsonNode schema = schema(name);

        assertThat(words(schema.at("/$defs/slot/enum")))
                .isEqualTo(Arrays.stream(Slot.values()).map(Slot::word).toList());
        assertThat(words(schema.at("/$defs/goal/properties/goal/enum")))
                .isEqualTo(Goals.ALL.stream().map(goal -> goal.info().id()).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"proposals"})
    void tiers_of_a_schema_are_all_there_are(String name) throws IOException {
        JsonNode tiers = schema(name).at("/properties/proposals/items/properties/tier/enum");

        assertThat(words(tiers)).isEqualTo(Arrays.stream(Tier.values()).map(Tier::word).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"proposals", "audit", "catalogue"})
    void a_schema_says_which_draft_it_is_written_in(String name) throws IOException {
        assertThat(schema(name).get("$schema").asText())
                .isEqualTo("https://json-schema.org/draft/2020-12/schema");
    }

    private static JsonNode schema(String name) throws IOException {
        return new ObjectMapper()
                .readTree(
                        ReportInfo.class.getResourceAsStream(
                                "/rigbrief/schema/" + name + ".schema.json"));
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.asText()));
        return words;
    }
}
