package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class OrderJsonTest {
    private static final Contract CONTRACT = Contract.of("order");

    @Test
    void a_busy_order_keeps_the_contract() throws IOException {
        String json = new OrderJson().write(OrderAnswers.busy(), Style.PLAIN);

        assertThat(CONTRACT.broken(json)).isEmpty();
        JsonNode order = new ObjectMapper().readTree(json);
        assertThat(order.at("/money/to-come-back").asText()).isEqualTo("188.00");
        assertThat(order.at("/to-do/0/do").asText()).isEqualTo("send-back");
        assertThat(order.at("/history/1/from-part").asText()).isEqualTo("board-old");
        assertThat(order.at("/buildable-today/limits/0/part").asText()).isEqualTo("fan-a");
    }

    @Test
    void an_untouched_order_keeps_the_contract() {
        String json = new OrderJson().write(OrderAnswers.untouched(), Style.PLAIN);

        assertThat(CONTRACT.broken(json)).isEmpty();
    }
}
