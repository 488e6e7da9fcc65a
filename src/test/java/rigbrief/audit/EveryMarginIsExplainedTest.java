package rigbrief.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rigbrief.explain.Explanation;
import rigbrief.explain.Redone;
import rigbrief.explain.Topic;

/**
 * What every rule leaves over, and what it lacks where it is broken, is explained: in machines that
 * keep all rules and in those that break one each.
 */
class EveryMarginIsExplainedTest {
    @Test
    void of_sound_and_of_broken_machines() {
        Set<String> explained = new HashSet<>();
        for (Mutation mutation : Mutation.all()) {
            for (ProposedMachine machine :
                    List.of(mutation.from(), mutation.change().apply(mutation.from()))) {
                if (machine.build().missing().isEmpty()) {
                    explained.addAll(checked(machine, mutation.toString()));
                }
            }
        }

        assertThat(explained)
                .contains("mass", "size", "suppliers", "cooler-height", "memory-under-cooler");
    }

    private static List<String> checked(ProposedMachine machine, String mutation) {
        Function<Topic, Explanation> made = topic -> topic.explanation().get();
        var margins =
                machine.topics().stream()
                        .filter(topic -> topic.name().startsWith("margin."))
                        .collect(Collectors.toMap(topic -> topic.name().substring(7), made));
        List<String> rules = new ArrayList<>();
        for (MarginLine line : machine.audit().margins()) {
            Explanation explanation = margins.get(line.rule());
            assertThat(explanation).as("%s of %s", line.rule(), mutation).isNotNull();
            Redone.check(explanation);
            assertThat(explanation.value().orElseThrow().unscaledValue().longValue())
                    .as("%s of %s", line.rule(), mutation)
                    .isEqualTo(line.margin().spare());
            rules.add(line.rule());
        }
        return rules;
    }
}
