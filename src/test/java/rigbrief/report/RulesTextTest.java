package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

class RulesTextTest {

    @Test
    void every_rule_is_listed_with_the_start_of_its_source() {
        String text = new RulesText().write(Rules.ALL, Style.PLAIN);

        for (Rule rule : Rules.ALL) {
            assertThat(text).contains("\n  " + rule.info().id() + " ");
        }
        assertThat(text).contains("maker's sheet: ", "the brief: ", "common practice: ");
    }
}
