package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rigbrief.explain.Explainers;
import rigbrief.explain.Topic;

class ExplanationJsonTest {
    private static final Contract CONTRACT = Contract.of("explanation");
    private static final AuditAnswer AUDITED = Answers.audited();
    private static final List<Topic> TOPICS =
            Explainers.topics(AUDITED.brief(), AUDITED.catalogue(), AUDITED.audit().build());

    static ExplanationAnswer answer(Topic topic) {
        return new ExplanationAnswer(
                AUDITED.name(),
                AUDITED.brief().name(),
                TOPICS,
                Optional.of(topic.explanation().get()));
    }

    static ExplanationAnswer names() {
        return new ExplanationAnswer(
                AUDITED.name(), AUDITED.brief().name(), TOPICS, Optional.empty());
    }

    static Topic topic(String name) {
        return TOPICS.stream().filter(it -> it.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void every_explanation_keeps_the_contract() {
        for (Topic topic : TOPICS) {
            assertThat(CONTRACT.broken(json(answer(topic)))).as(topic.name()).isEmpty();
        }
    }

    @Test
    void the_names_alone_keep_the_contract() throws IOException {
        String json = json(names());

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).get("explanation").isNull()).isTrue();
        assertThat(read(json).get("numbers")).hasSize(TOPICS.size());
    }

    @Test
    void every_number_an_audit_prints_is_explained_with_the_same_value() throws IOException {
        Map<String, JsonNode> printed = printed(read(new AuditJson().write(AUDITED, Style.PLAIN)));

        assertThat(TOPICS).extracting(Topic::name).containsAll(printed.keySet());
        for (Map.Entry<String, JsonNode> number : printed.entrySet()) {
            JsonNode explained =
                    read(json(answer(topic(number.getKey())))).at("/explanation/value");
            assertThat(explained.asText())
                    .as(number.getKey())
                    .isEqualTo(number.getValue().asText());
        }
    }

    /** Numbers of an audit under their names: keys with dots, goals and workloads by their ids. */
    private static Map<String, JsonNode> printed(JsonNode audit) {
        Map<String, JsonNode> printed = new LinkedHashMap<>();
        for (String family : List.of("cost", "power", "heat", "noise")) {
            audit.get(family)
                    .properties()
                    .forEach(
                            field -> {
                                if (field.getValue().isValueNode()) {
                                    printed.put(family + "." + field.getKey(), field.getValue());
                                }
                            });
        }
        printed.put("utility", audit.get("utility"));
        for (JsonNode goal : audit.get("goals")) {
            printed.put("goal." + goal.get("goal").asText(), goal.get("utility"));
        }
        for (JsonNode need : audit.get("needs")) {
            String[] words = need.get("need").asText().split(": ");
            if (words.length == 2) {
                String measure = words[1].equals("1 % low") ? "low" : words[1];
                printed.put("workload." + words[0] + "." + measure, need.get("promised"));
            }
        }
        return printed;
    }

    private static String json(ExplanationAnswer answer) {
        return new ExplanationJson().write(answer, Style.PLAIN);
    }

    private static JsonNode read(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }
}
