package rigbrief.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.rule.Rules;

/**
 * Whatever is spoilt in a sound machine, the audit names the rule that it was spoilt for.
 *
 * <p>What is expected is known from the mutation: the rule's id, and that it breaks. A rule that
 * nobody wrote a mutation for fails.
 */
class EveryRuleIsNamedTest {
    /** Rules that never break, with the level at which they speak instead. */
    private static final Map<String, Level> NEVER_BREAK = new LinkedHashMap<>();

    static {
        // Memory that runs below its own rate still runs.
        NEVER_BREAK.put("memory-rate", Level.NOTE);
        // A heavy card sags; the machine works for all that.
        NEVER_BREAK.put("brace", Level.CAUTION);
        // A supply without a label or a long guarantee does its work until it doesn't.
        NEVER_BREAK.put("supply-quality", Level.CAUTION);
        // A part without a use is wasted money, and a builder may have a reason for it.
        NEVER_BREAK.put("idle-wireless", Level.CAUTION);
        NEVER_BREAK.put("idle-brace", Level.CAUTION);
        NEVER_BREAK.put("idle-licence", Level.CAUTION);
        NEVER_BREAK.put("idle-drive", Level.CAUTION);
    }

    static List<ProposedMachine> machines() {
        return ProposedMachine.ALL;
    }

    static List<String> rulesThatBreak() {
        return rules().stream().filter(rule -> !NEVER_BREAK.containsKey(rule)).toList();
    }

    static List<String> rulesThatNeverBreak() {
        return rules().stream().filter(NEVER_BREAK::containsKey).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void no_rule_is_broken_before_anything_is_changed(ProposedMachine machine) {
        Audit audit = machine.audit();

        assertThat(audit.findings()).noneMatch(it -> it.level() == Level.BREACH);
        assertThat(audit.fits()).isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rulesThatBreak")
    void a_broken_rule_is_named_as_a_breach(String rule) {
        List<Mutation> mutations = Mutation.of(rule);

        assertThat(mutations).as("mutations that break %s", rule).isNotEmpty();
        for (Mutation mutation : mutations) {
            assertThat(mutation.before()).as("before %s", mutation).doesNotContain(Level.BREACH);
            assertThat(mutation.after()).as("after %s", mutation).containsExactly(Level.BREACH);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rulesThatNeverBreak")
    void a_rule_that_never_breaks_is_named_at_its_own_level(String rule) {
        List<Mutation> mutations = Mutation.of(rule);
        Level level = NEVER_BREAK.get(rule);

        assertThat(mutations).as("mutations that %s remarks on", rule).isNotEmpty();
        for (Mutation mutation : mutations) {
            assertThat(mutation.before()).as("before %s", mutation).isEmpty();
            assertThat(mutation.after()).as("after %s", mutation).containsExactly(level);
        }
    }

    @Test
    void every_rule_named_here_is_registered() {
        assertThat(rules()).containsAll(NEVER_BREAK.keySet());
        assertThat(Mutation.all()).extracting(Mutation::rule).allMatch(rules()::contains);
    }

    private static List<String> rules() {
        return Rules.ALL.stream().map(rule -> rule.info().id()).toList();
    }
}
