package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigbrief.proposal.budget.Budget;

class BudgetJsonTest {
    private static final Contract CONTRACT = Contract.of("budget");

    @Test
    void budgets_keep_the_contract() {
        assertThat(CONTRACT.broken(json(Budgets.answered()))).isEmpty();
        assertThat(CONTRACT.broken(json(Budgets.overCeiling()))).isEmpty();
        assertThat(CONTRACT.broken(json(Budgets.impossible()))).isEmpty();
    }

    @Test
    void the_contract_refuses_what_it_should() {
        String json = json(Budgets.answered());

        assertThat(CONTRACT.broken(json.replace("\"partial\" : false,", ""))).isNotEmpty();
        assertThat(
                        CONTRACT.broken(
                                json.replace("\"least-total\" : \"", "\"least-total\" : \"EUR ")))
                .isNotEmpty();
    }

    /** Hand calculation: eight parts at 100.00, one delivery at 6.90, a fee of 120.00, no tax. */
    @Test
    void the_least_total_of_all_musts_is_what_the_offers_add_up_to() throws IOException {
        JsonNode musts = read(json(Budgets.answered())).get("musts");

        assertThat(musts.get("least-total").asText()).isEqualTo("926.90");
        assertThat(musts.get("proven").asBoolean()).isTrue();
        assertThat(musts.get("at-least").asText()).isEqualTo("926.90");
    }

    @Test
    void a_brief_that_only_its_ceiling_stops_is_answered_and_its_least_total_told()
            throws IOException {
        JsonNode budget = read(json(Budgets.overCeiling()));

        assertThat(budget.get("result").asText()).isEqualTo("answered");
        assertThat(budget.at("/musts/least-total").asText()).isEqualTo("926.90");
        assertThat(budget.get("front")).isEmpty();
        assertThat(budget.get("front-proven").asBoolean()).isTrue();
    }

    @Test
    void a_brief_that_no_money_can_meet_comes_with_its_clash_and_the_ways_out() throws IOException {
        JsonNode budget = read(json(Budgets.impossible()));

        assertThat(budget.get("result").asText()).isEqualTo("impossible");
        assertThat(budget.at("/impossible/clash/0").asText()).isEqualTo("noise at most 5 dB(A)");
        assertThat(budget.at("/impossible/ways-out/0/change").asText())
                .isEqualTo("noise at most 5 dB(A)");
        assertThat(budget.at("/impossible/ways-out/0/to").asText()).endsWith("dB(A)");
    }

    @Test
    void keys_are_kebab_case_everywhere() throws IOException {
        assertKeys(read(json(Budgets.answered())));
        assertKeys(read(json(Budgets.impossible())));
    }

    @Test
    void two_answers_are_the_same_bytes() {
        assertThat(json(Budgets.answered())).isEqualTo(json(Budgets.answered()));
    }

    private static void assertKeys(JsonNode node) {
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            assertThat(field.getKey()).matches("[a-z]+(-[a-z]+)*");
            assertKeys(field.getValue());
        }
        if (node.isArray()) {
            node.forEach(BudgetJsonTest::assertKeys);
        }
    }

    private static JsonNode read(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }

    private static String json(Budget budget) {
        return new BudgetJson().write(budget, Style.PLAIN);
    }
}
