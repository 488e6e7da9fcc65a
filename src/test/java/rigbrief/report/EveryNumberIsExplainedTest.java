package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.explain.Explainers;
import rigbrief.explain.Explanation;
import rigbrief.explain.Redone;
import rigbrief.explain.Topic;
import rigbrief.file.BriefReader;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.proposal.account.Accounts;

/**
 * Every number of an audit in JSON, and so of a proposal's assessment, which is written by the same
 * class, is either copied from a file or explained, to the last digit printed.
 */
class EveryNumberIsExplainedTest {
    /** What is no result of a computation: the name ends with it, and why. */
    private static final Map<String, String> COPIED =
            Map.of(
                    "/machines", "quantity of the brief",
                    "/wanted", "quantity of the brief",
                    "/catalogue/parts", "a count of rows",
                    "/catalogue/offers", "a count of rows",
                    "/quantity", "packs as the build file has them",
                    "/unit-price", "price of the offer named beside it",
                    "/lead-days", "lead time of the offer named beside it",
                    "/weight", "weight of the brief",
                    "/required", "what the brief asks");

    private final Map<String, Explanation> explanations = new HashMap<>();
    private int checked;

    @ParameterizedTest
    @CsvSource({
        "potter, merrowby-courante-6-n skerrowby-cove-1644m lathmere-plainbar-2x16-d5-5600-c46"
                + " garrowick-couplet-sorrel-280 slatecombe-chip-1-tb wattlemarsh-weir-650"
                + " brackenfin-frond-92 coffermere-bin-40 brackenfin-leaf-120 hobbinfold-tether-6",
        "editor, merrowby-saraband-12 quernstow-lintel-1920 lathmere-plainbar-2x32-d5-5600-c46"
                + " garrowick-couplet-sorrel-260-white murmurel-cataract-1-tb"
                + " obbleton-millstone-4-tb grindlewick-mainspring-850 hushmere-tor-white"
                + " coffermere-bin-44 pennyroyal-hearthside-7-office",
        "school-workshop, ostrel-worsted-6-g hobbinfold-plain-880m"
                + " lathmere-plainbar-2x16-d4-3200-c22 slatecombe-flint-500-gb wattlemarsh-fen-500"
                + " hobbinfold-deskmate-m brackenfin-leaf-120 glimmerhythe-pane-24"
    })
    void numbers_of_an_audit(String scenario, String ids) throws Exception {
        Catalogue parts = CatalogueReader.read(Path.of("catalog-sample"));
        Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), parts);
        byte[] list = ids.replace(' ', '\n').getBytes(StandardCharsets.UTF_8);
        Build build = BuildReader.read(new ByteArrayInputStream(list), scenario, parts).build();
        for (Topic topic : Explainers.topics(brief, parts, build)) {
            explanations.put(topic.name(), topic.explanation().get());
        }
        String json =
                new AuditJson()
                        .write(
                                new AuditAnswer(
                                        scenario,
                                        brief,
                                        parts,
                                        new Auditor(brief, parts).audit(build)),
                                Style.PLAIN);

        walk(new ObjectMapper().readTree(json), "");

        assertThat(checked).isGreaterThan(60);
    }

    /**
     * Stopped after a few steps, so that no proof is finished and every gap has a size; and as far
     * as it takes to prove.
     */
    @ParameterizedTest
    @CsvSource({"potter, 400", "tight-600, 60000"})
    void numbers_of_a_proof(String scenario, long steps) throws Exception {
        Catalogue parts = CatalogueReader.read(Path.of("catalog-sample"));
        Brief brief = BriefReader.read(Path.of("scenarios", scenario + ".yaml"), parts);
        Proposals answer =
                new Proposer(new SearchLimits(1, 100, steps, Optional.empty()))
                        .propose(brief, parts);
        JsonNode json = new ObjectMapper().readTree(new ProposalsJson().write(answer, Style.PLAIN));
        for (int i = 0; i < answer.proposals().size(); i++) {
            explanations.clear();
            for (Topic topic :
                    Accounts.topics(
                            brief, parts, answer.proposals().get(i).record(), () -> answer, null)) {
                if (topic.name().matches("(proof|buildable-today|choice)\\..*")) {
                    Explanation explanation = topic.explanation().get();
                    Redone.check(explanation);
                    explanations.put(topic.name(), explanation);
                }
            }
            checked = 0;
            walk(json.at("/proposals/" + i + "/proof"), "/proof");
            walk(json.at("/proposals/" + i + "/buildable-today"), "/buildable-today");
            assertThat(checked)
                    .as(json.at("/proposals/" + i + "/proof").toString())
                    .isGreaterThan(5);
        }
    }

    private void walk(JsonNode node, String path) {
        if (node.isObject()) {
            node.properties()
                    .forEach(
                            entry -> {
                                String name = topic(node, path, entry.getKey());
                                walk(entry.getValue(), name);
                            });
        } else if (node.isArray()) {
            node.forEach(each -> walk(each, path));
        } else if (isNumber(node)) {
            check(path, new BigDecimal(node.asText()));
        }
    }

    private static boolean isNumber(JsonNode node) {
        return node.isNumber() || node.isTextual() && node.asText().matches("-?\\d+(\\.\\d+)?");
    }

    /** A path of keys, but for lists the name of the entry, as explanations have it. */
    private static String topic(JsonNode parent, String path, String key) {
        return switch (path) {
            case "/goals" -> "/goal/" + parent.get("goal").asText() + goal(key);
            case "/needs" -> need(parent, key);
            case "/margins" -> "/margin/" + parent.get("rule").asText() + "/" + key;
            case "/findings" -> "/finding/" + parent.get("rule").asText() + "/" + key;
            default -> path + "/" + key;
        };
    }

    private static String goal(String key) {
        return key.equals("utility") ? "" : "/" + key;
    }

    private static String need(JsonNode need, String key) {
        String name = need.get("need").asText();
        if (key.equals("required")) {
            return "/needs/required";
        }
        String whole =
                switch (name) {
                    case "noise" -> "/noise/load-dba";
                    case "memory" -> "/memory/capacity-gb";
                    case "storage" -> "/storage/capacity-gb";
                    default -> "/workload/" + name.replace(": 1 % low", "/low").replace(": ", "/");
                };
        boolean exact = !name.contains(":");
        return switch (key) {
            case "low" -> exact ? whole : whole + "/range-low";
            case "high" -> exact ? whole : whole + "/range-high";
            case "chance" ->
                    exact ? "/certain" : whole + "/" + need.get("kind").asText() + "-chance";
            default -> whole;
        };
    }

    private void check(String path, BigDecimal printed) {
        if (COPIED.keySet().stream().anyMatch(path::endsWith)) {
            return;
        }
        checked++;
        if (path.equals("/certain")) {
            assertThat(printed.stripTrailingZeros())
                    .as("a capacity is there or it is not")
                    .isIn(BigDecimal.ONE, BigDecimal.ZERO);
            return;
        }
        String name = path.substring(1).replace('/', '.');
        if (name.startsWith("margin.")) {
            checkMargin(name, printed);
            return;
        }
        if (name.startsWith("finding.")) {
            Explanation left =
                    explanations.get(name.replace("finding.", "margin.").replace(".excess", ""));
            assertThat(left).as(name).isNotNull();
            assertThat(left.value().orElseThrow()).isEqualByComparingTo(printed.negate());
            return;
        }
        Explanation explanation = explanations.get(name);
        if (explanation == null) {
            fail("no explanation of " + name + ", printed as " + printed);
            return;
        }
        assertThat(explanation.value().orElseThrow()).as(name).isEqualByComparingTo(printed);
    }

    /** What is left is explained; what there is and what is needed are the inputs of that. */
    private void checkMargin(String name, BigDecimal printed) {
        String rule = name.substring(0, name.lastIndexOf('.'));
        Explanation explanation = explanations.get(rule);
        assertThat(explanation).as(rule).isNotNull();
        String step = explanation.steps().get(explanation.steps().size() - 1);
        String[] halves = step.substring(step.lastIndexOf(": ") + 2).split(" = ");
        List<String> ends = List.of(halves[0].split(" - "));
        switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "have" -> checkSide(explanation, "there is", ends.get(0), printed);
            case "need" -> checkSide(explanation, "needed", ends.get(1), printed);
            default -> assertThat(explanation.value().orElseThrow()).isEqualByComparingTo(printed);
        }
    }

    /** A side is copied from a sheet or the brief, is a number of its own, or has a step. */
    private static void checkSide(
            Explanation explanation, String side, String last, BigDecimal printed) {
        assertThat(new BigDecimal(last)).isEqualByComparingTo(printed);
        boolean copied =
                explanation.inputs().stream()
                        .anyMatch(
                                input ->
                                        input.name().equals(side)
                                                && starts(input.value(), printed));
        boolean worked =
                explanation.steps().stream()
                        .anyMatch(
                                step ->
                                        step.startsWith(side + ": ")
                                                && starts(step.split(" = ")[1], printed));
        assertThat(copied || worked).as(explanation.number() + ", " + side).isTrue();
    }

    private static boolean starts(String words, BigDecimal printed) {
        return new BigDecimal(words.split(" ")[0]).compareTo(printed) == 0;
    }
}
