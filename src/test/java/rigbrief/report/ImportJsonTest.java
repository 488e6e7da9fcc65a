package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class ImportJsonTest {
    private static final Contract CONTRACT = Contract.of("import");

    @Test
    void a_refused_list_keeps_the_contract() throws IOException {
        String json = new ImportJson().write(ImportAnswers.refused(), Style.PLAIN);

        assertThat(CONTRACT.broken(json)).isEmpty();
        JsonNode answer = new ObjectMapper().readTree(json);
        assertThat(answer.get("outcome").asText()).isEqualTo("refused");
        assertThat(answer.at("/suspicious/0/kind").asText()).isEqualTo("price-moved");
        assertThat(answer.at("/changes/0/change-percent").decimalValue())
                .isEqualByComparingTo("10");
    }

    @Test
    void a_list_that_was_taken_in_keeps_the_contract() {
        String json = new ImportJson().write(ImportAnswers.changed(), Style.PLAIN);

        assertThat(CONTRACT.broken(json)).isEmpty();
    }
}
