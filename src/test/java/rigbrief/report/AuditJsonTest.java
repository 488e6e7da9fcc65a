package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CaseFixture.aCase;
import static rigbrief.fixture.CoolerFixture.aCooler;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import rigbrief.build.Build;

class AuditJsonTest {
    private static final Contract CONTRACT = Contract.of("audit");

    @Test
    void an_audit_of_a_sound_build_keeps_the_contract() throws IOException {
        String json = json(Answers.audited());

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).get("verdict").asText()).isEqualTo("fits");
    }

    @Test
    void an_audit_of_an_unfinished_build_keeps_the_contract() throws IOException {
        String json = json(Answers.unfinished());

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).at("/missing/0").asText()).isEqualTo("case");
        assertThat(read(json).get("utility").isNull()).isTrue();
    }

    @Test
    void an_audit_of_an_empty_build_keeps_the_contract() {
        assertThat(CONTRACT.broken(json(Answers.audited(Build.empty())))).isEmpty();
    }

    @Test
    void a_broken_rule_has_its_excess_and_a_negative_spare() throws IOException {
        var build = aBuild().with(aCase().coolerHeightMm(165)).with(aCooler().heightMm(166)).make();

        String json = json(Answers.audited(build));

        assertThat(CONTRACT.broken(json)).isEmpty();
        JsonNode breach = read(json).at("/findings/0");
        assertThat(breach.get("rule").asText()).isEqualTo("cooler-height");
        assertThat(breach.get("level").asText()).isEqualTo("breach");
        assertThat(breach.get("excess").asInt()).isEqualTo(1);
        assertThat(breach.get("unit").asText()).isEqualTo("mm");
        assertThat(margin(read(json), "cooler-height").get("spare").asInt()).isEqualTo(-1);
    }

    /** Hand calculation: 2000.00 allowed; eight parts, a delivery and the fee make 926.90. */
    @Test
    void a_margin_in_money_is_text_with_the_currencys_code() throws IOException {
        JsonNode ceiling = margin(read(json(Answers.audited())), "ceiling");

        assertThat(ceiling.get("have").textValue()).isEqualTo("2000.00");
        assertThat(ceiling.get("need").textValue()).isEqualTo("926.90");
        assertThat(ceiling.get("spare").textValue()).isEqualTo("1073.10");
        assertThat(ceiling.get("unit").asText()).isEqualTo("EUR");
    }

    private static JsonNode margin(JsonNode audit, String rule) {
        for (JsonNode margin : audit.get("margins")) {
            if (margin.get("rule").asText().equals(rule)) {
                return margin;
            }
        }
        throw new AssertionError("no margin of " + rule);
    }

    private static JsonNode read(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }

    private static String json(AuditAnswer answer) {
        return new AuditJson().write(answer, Style.PLAIN);
    }
}
