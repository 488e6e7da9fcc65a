package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigbrief.proposal.Proposals;

class ProposalsJsonTest {
    private static final Contract CONTRACT = Contract.of("proposals");

    @Test
    void proposals_keep_the_contract() {
        assertThat(CONTRACT.broken(json(Answers.proposed()))).isEmpty();
    }

    @Test
    void an_impossible_brief_keeps_the_contract() throws IOException {
        String json = json(Answers.impossible());

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).at("/result").asText()).isEqualTo("impossible");
        assertThat(read(json).at("/impossible/clash")).hasSize(2);
    }

    @Test
    void the_contract_refuses_what_it_should() {
        String json = json(Answers.proposed());

        assertThat(CONTRACT.broken(json.replace("\"seed\" : 7", "\"seed\" : \"7\""))).isNotEmpty();
        assertThat(
                        CONTRACT.broken(
                                json.replace("\"result\" : \"proposed\"", "\"result\" : \"no\"")))
                .isNotEmpty();
        assertThat(CONTRACT.broken(json.replace("\"total\" : \"", "\"total\" : \"EUR ")))
                .isNotEmpty();
        assertThat(CONTRACT.broken(json.replace("\"tier\" : \"lean\",", ""))).isNotEmpty();
    }

    @Test
    void money_is_a_text_and_the_four_sums_make_the_total() throws IOException {
        for (JsonNode proposal : read(json(Answers.proposed())).at("/proposals")) {
            JsonNode cost = proposal.get("cost");

            BigDecimal sum =
                    money(cost, "parts")
                            .add(money(cost, "delivery"))
                            .add(money(cost, "fees"))
                            .add(money(cost, "tax"));

            assertThat(sum).isEqualTo(money(cost, "total"));
        }
    }

    /** Hand calculation: eight parts at 100.00, one delivery at 6.90, a fee of 120.00, no tax. */
    @Test
    void the_lean_total_is_what_the_offers_add_up_to() throws IOException {
        JsonNode cost = read(json(Answers.proposed())).at("/proposals/0/cost");

        assertThat(cost.get("parts").asText()).isEqualTo("800.00");
        assertThat(cost.get("delivery").asText()).isEqualTo("6.90");
        assertThat(cost.get("fees").asText()).isEqualTo("120.00");
        assertThat(cost.get("total").asText()).isEqualTo("926.90");
    }

    @Test
    void the_utility_can_be_added_up_from_the_goals() throws IOException {
        for (JsonNode proposal : read(json(Answers.proposed())).at("/proposals")) {
            BigDecimal sum = BigDecimal.ZERO;
            for (JsonNode goal : proposal.get("goals")) {
                sum = sum.add(goal.get("contribution").decimalValue());
            }

            assertThat(sum).isEqualByComparingTo(proposal.get("utility").decimalValue());
        }
    }

    @Test
    void a_proven_total_is_its_own_best_as_money() throws IOException {
        JsonNode proof = read(json(Answers.proposed())).at("/proposals/0/proof");

        assertThat(proof.get("proven").asBoolean()).isTrue();
        assertThat(proof.get("gap-percent").asDouble()).isZero();
        assertThat(proof.get("best-possible").asText()).isEqualTo("926.90");
        assertThat(proof.get("reached").asText()).isEqualTo("926.90");
    }

    /** Hand calculation: 61,000.4 points of 9 weights times 10,000 are 0.6778; 1.234 is 1.24. */
    @Test
    void an_unproven_score_is_a_utility_with_its_gap_rounded_up() throws IOException {
        JsonNode proof = read(json(Answers.proposed())).at("/proposals/1/proof");

        assertThat(proof.get("proven").asBoolean()).isFalse();
        assertThat(proof.get("best-possible").asDouble()).isEqualTo(0.6778);
        assertThat(proof.get("gap-percent").asDouble()).isEqualTo(1.24);
    }

    @Test
    void a_need_has_its_range_and_chance() throws IOException {
        JsonNode needs = read(json(Answers.proposed())).at("/proposals/0/needs");

        assertThat(texts(needs, "need"))
                .containsExactly(
                        "lantern-marsh: average",
                        "lantern-marsh: average",
                        "kiln-drafting: finish-within",
                        "noise",
                        "memory");
        assertThat(texts(needs, "kind")).containsExactly("must", "wish", "wish", "must", "must");
        JsonNode rate = needs.get(0);
        assertThat(rate.get("low").asDouble()).isLessThan(rate.get("promised").asDouble());
        assertThat(rate.get("high").asDouble()).isGreaterThan(rate.get("promised").asDouble());
        assertThat(rate.get("unit").asText()).isEqualTo("fps");
        assertThat(rate.get("chance").asDouble()).isBetween(0.0, 1.0);
        assertThat(needs.get(1).get("met").asBoolean()).isFalse();
        assertThat(needs.get(3).get("chance").isNull()).isTrue();
    }

    @Test
    void keys_are_kebab_case_everywhere() throws IOException {
        assertKeys(read(json(Answers.proposed())));
        assertKeys(read(json(Answers.impossible())));
    }

    @Test
    void two_writings_are_the_same_bytes() {
        assertThat(json(Answers.proposed())).isEqualTo(json(Answers.proposed()));
    }

    private static void assertKeys(JsonNode node) {
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            assertThat(field.getKey()).matches("[a-z]+(-[a-z]+)*");
            assertKeys(field.getValue());
        }
        if (node.isArray()) {
            node.forEach(ProposalsJsonTest::assertKeys);
        }
    }

    private static List<String> texts(JsonNode list, String field) {
        return list.findValuesAsText(field);
    }

    private static BigDecimal money(JsonNode cost, String field) {
        return new BigDecimal(cost.get(field).textValue());
    }

    private static JsonNode read(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }

    private static String json(Proposals answer) {
        return new ProposalsJson().write(answer, Style.PLAIN);
    }
}
