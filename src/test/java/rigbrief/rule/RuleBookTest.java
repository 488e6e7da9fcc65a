package rigbrief.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rigbrief.part.Slot;

class RuleBookTest {
    private static final Path SOURCES = Path.of("src/main/java/rigbrief/rule");

    @Test
    void every_id_is_kebab_case_and_its_own() {
        List<String> ids = Rules.ALL.stream().map(rule -> rule.info().id()).toList();

        assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z]+(-[a-z]+)*"));
    }

    @Test
    void every_class_is_named_after_its_id() {
        for (Rule rule : Rules.ALL) {
            assertThat(rule.getClass().getSimpleName()).isEqualTo(className(rule.info().id()));
        }
    }

    @Test
    void every_title_is_a_short_sentence_without_a_period() {
        for (Rule rule : Rules.ALL) {
            assertThat(rule.info().title())
                    .hasSizeBetween(10, 70)
                    .matches("[A-Z].*[a-z]")
                    .doesNotContain(":");
        }
    }

    @Test
    void every_rule_names_its_source() {
        for (Rule rule : Rules.ALL) {
            assertThat(rule.info().source().text()).hasSizeGreaterThan(10);
        }
    }

    @Test
    void every_rule_has_a_test_of_the_same_name() {
        for (Rule rule : Rules.ALL) {
            assertThatCode(() -> Class.forName(rule.getClass().getName() + "Test"))
                    .as(rule.info().id())
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void every_rule_class_is_registered() throws IOException {
        for (String folder : List.of("fit", "need")) {
            try (Stream<Path> files = Files.list(SOURCES.resolve(folder))) {
                List<String> written =
                        files.map(file -> file.getFileName().toString())
                                .filter(name -> name.endsWith("Rule.java"))
                                .map(name -> name.replace(".java", ""))
                                .toList();
                List<String> registered =
                        Rules.ALL.stream()
                                .map(Rule::getClass)
                                .filter(type -> type.getPackageName().endsWith(folder))
                                .map(Class::getSimpleName)
                                .toList();

                assertThat(registered).containsExactlyInAnyOrderElementsOf(written);
            }
        }
    }

    @Test
    void rules_about_fit_come_before_rules_about_needs() {
        List<String> packages =
                Rules.ALL.stream()
                        .map(rule -> rule.getClass().getPackageName())
                        .distinct()
                        .toList();

        assertThat(packages).containsExactly("rigbrief.rule.fit", "rigbrief.rule.need");
    }

    @Test
    void a_rule_is_found_by_its_id() {
        for (Rule rule : Rules.ALL) {
            assertThat(Rules.byId(rule.info().id())).containsSame(rule);
        }
        assertThat(Rules.byId("no-such-rule")).isEmpty();
    }

    @Test
    void what_a_rule_reads_can_not_be_changed() {
        for (Rule rule : Rules.ALL) {
            assertThatThrownBy(() -> rule.reads().add(Slot.DISPLAY))
                    .isInstanceOf(UnsupportedOperationException.class);
            assertThat(rule.reads()).isSameAs(rule.reads());
        }
    }

    private static String className(String id) {
        return Stream.of(id.split("-"))
                        .map(
                                word ->
                                        word.substring(0, 1).toUpperCase(Locale.ROOT)
                                                + word.substring(1))
                        .collect(Collectors.joining())
                + "Rule";
    }

    @Test
    void only_the_rule_about_missing_parts_reads_no_slot() {
        for (Rule rule : Rules.ALL) {
            boolean missingParts = rule.info().id().equals("complete");

            assertThat(rule.reads().isEmpty()).as(rule.info().id()).isEqualTo(missingParts);
        }
    }

    /** What one part breaks, or a sum that only grows, no later part can mend. */
    @Test
    void what_nothing_can_mend_is_decided_early() {
        for (String id :
                List.of(
                        "avoid",
                        "ceiling",
                        "colour",
                        "display-wanted",
                        "lighting",
                        "mass",
                        "system-licence")) {
            assertThat(Rules.byId(id).orElseThrow().decidesEarly()).as(id).isTrue();
        }
    }

    /** Every further part draws power and wants plugs; a drive can only take a slot away. */
    @Test
    void what_further_parts_only_worsen_is_said() {
        for (String id : List.of("slot-place", "supply-connectors", "supply-load", "supply-peak")) {
            assertThat(Rules.byId(id).orElseThrow().onlyWorsenedBy()).as(id).isNotEmpty();
        }
    }
}
