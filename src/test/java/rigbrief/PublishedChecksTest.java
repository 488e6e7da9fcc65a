package rigbrief;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every check against a published value is named by a test, or it is said why it is not. */
class PublishedChecksTest {
    private static final Path LIST = Path.of("src/test/resources/rigbrief/published-checks.txt");
    private static final String NOT = "not applicable: ";

    /** By id: why it does not apply; empty when it does. */
    private static final Map<String, String> REASONS = new LinkedHashMap<>();

    /** By id: the tests that name it. */
    private static final Map<String, Set<String>> NAMED = new TreeMap<>();

    @BeforeAll
    static void read() throws IOException {
        for (String line : Files.readAllLines(LIST)) {
            if (!line.startsWith("#")) {
                String[] halves = line.split(" ", 2);
                REASONS.put(halves[0], halves.length > 1 ? halves[1] : "");
            }
        }
        String series =
                REASONS.keySet().stream()
                        .map(id -> id.substring(0, id.indexOf('-')))
                        .distinct()
                        .collect(Collectors.joining("|"));
        Pattern id = Pattern.compile("\\b(" + series + ")-\\d{2}\\b");
        for (Path test : tests()) {
            Matcher matcher = id.matcher(Files.readString(test));
            while (matcher.find()) {
                NAMED.computeIfAbsent(matcher.group(), any -> new TreeSet<>())
                        .add(test.getFileName().toString());
            }
        }
    }

    /** Classes with test methods, this one left out. */
    private static List<Path> tests() throws IOException {
        List<Path> tests = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            for (Path file : files.filter(it -> it.toString().endsWith("Test.java")).toList()) {
                if (!file.endsWith("PublishedChecksTest.java")) {
                    tests.add(file);
                }
            }
        }
        return tests;
    }

    @Test
    void there_are_120_checks() {
        assertThat(REASONS).hasSize(120);
        assertThat(REASONS.values()).allMatch(why -> why.isEmpty() || why.startsWith(NOT));
    }

    @Test
    void a_test_names_every_check_that_applies() {
        List<String> applicable =
                REASONS.entrySet().stream()
                        .filter(check -> check.getValue().isEmpty())
                        .map(Map.Entry::getKey)
                        .toList();

        assertThat(NAMED.keySet()).containsAll(applicable);
    }

    @Test
    void no_test_names_a_check_that_is_not_listed_as_applicable() {
        for (Map.Entry<String, Set<String>> named : NAMED.entrySet()) {
            assertThat(REASONS.get(named.getKey()))
                    .as("%s, named by %s", named.getKey(), named.getValue())
                    .isNotNull()
                    .isEmpty();
        }
    }
}
