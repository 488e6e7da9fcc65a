package rigbrief;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Who may know whom. The table is the one of DEVELOPERS.md; what is not listed is forbidden.
 *
 * <p>Plain test methods on purpose: ArchUnit's annotated fields are skipped by some runners without
 * a word.
 */
class ImportDirectionTest {
    /** From where the program's own classes lie, so that no test is among them. */
    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .importUrl(Main.class.getProtectionDomain().getCodeSource().getLocation());

    private static final List<String> VALUES =
            List.of("quantity", "wording", "part", "brief", "catalogue", "build");

    /** Package by package, in the order data flows: which others it may import. */
    private static final Map<String, Set<String>> MAY_IMPORT = new LinkedHashMap<>();

    /** Libraries have one home each. */
    private static final Map<String, List<String>> LIBRARIES = new LinkedHashMap<>();

    static {
        MAY_IMPORT.put("quantity", Set.of());
        MAY_IMPORT.put("wording", Set.of("quantity"));
        MAY_IMPORT.put("diagnostic", Set.of());
        MAY_IMPORT.put("part", Set.of("quantity"));
        MAY_IMPORT.put("brief", Set.of("part", "quantity"));
        MAY_IMPORT.put("catalogue", Set.of("part", "quantity"));
        MAY_IMPORT.put("build", Set.of("brief", "catalogue", "part", "quantity"));
        MAY_IMPORT.put("model", valuesAnd());
        MAY_IMPORT.put("assess", valuesAnd("model"));
        MAY_IMPORT.put("rule", valuesAnd("model", "assess"));
        MAY_IMPORT.put("goal", valuesAnd("model", "assess"));
        MAY_IMPORT.put("presolve", valuesAnd("rule", "assess"));
        MAY_IMPORT.put("search", valuesAnd("presolve", "rule", "goal", "assess"));
        MAY_IMPORT.put("audit", valuesAnd("model", "rule", "goal", "assess"));
        MAY_IMPORT.put("explain", valuesAnd("model", "rule", "goal", "assess"));
        MAY_IMPORT.put(
                "proposal",
                valuesAnd("search", "presolve", "audit", "explain", "rule", "goal", "assess"));
        MAY_IMPORT.put("measurement", valuesAnd("model", "assess"));
        MAY_IMPORT.put(
                "assembly",
                valuesAnd("search", "presolve", "measurement", "audit", "rule", "model", "assess"));
        MAY_IMPORT.put("pricelist", Set.of("catalogue", "part", "quantity"));
        MAY_IMPORT.put("file", valuesAnd("measurement", "pricelist", "diagnostic"));
        MAY_IMPORT.put("batch", valuesAnd("proposal", "audit", "assess", "file", "diagnostic"));
        MAY_IMPORT.put("intake", valuesAnd("search", "presolve", "model", "diagnostic"));
        MAY_IMPORT.put(
                "report",
                valuesAnd(
                        "batch",
                        "proposal",
                        "intake",
                        "audit",
                        "assembly",
                        "measurement",
                        "explain",
                        "assess",
                        "rule",
                        "pricelist",
                        "diagnostic"));
        MAY_IMPORT.put("api", valuesAnd("report", "proposal", "audit", "file", "diagnostic"));
        MAY_IMPORT.put(
                "cli",
                valuesAnd(
                        "api",
                        "batch",
                        "report",
                        "proposal",
                        "intake",
                        "audit",
                        "assembly",
                        "measurement",
                        "explain",
                        "rule",
                        "file",
                        "pricelist",
                        "diagnostic"));
        LIBRARIES.put("search", List.of("ai.timefold.."));
        LIBRARIES.put("cli", List.of("picocli..", "org.jline.."));
        LIBRARIES.put("file", List.of("com.fasterxml.jackson..", "org.yaml.snakeyaml.."));
        LIBRARIES.put(
                "report",
                List.of(
                        "com.fasterxml.jackson..",
                        "freemarker..",
                        "org.jfree..",
                        "org.apache.batik..",
                        "com.openhtmltopdf..",
                        "org.apache.pdfbox..",
                        "org.apache.fontbox..",
                        "org.w3c.dom.."));
        LIBRARIES.put("measurement", List.of("org.hipparchus.."));
    }

    private static Set<String> valuesAnd(String... others) {
        Set<String> all = new LinkedHashSet<>(VALUES);
        all.addAll(List.of(others));
        return all;
    }

    static Set<String> packages() {
        return MAY_IMPORT.keySet();
    }

    @Test
    void classes_are_found_at_all() {
        assertThat(CLASSES).hasSizeGreaterThan(200);
        assertThat(CLASSES.contain(Main.class)).isTrue();
    }

    @Test
    void every_package_is_in_the_table() {
        Set<String> found = new TreeSet<>();
        for (JavaClass each : CLASSES) {
            if (!each.getPackageName().equals("rigbrief")) {
                found.add(each.getPackageName().split("[.]")[1]);
            }
        }

        assertThat(packages()).containsAll(found);
    }

    @Test
    void the_table_itself_has_no_cycle() {
        List<String> settled = new ArrayList<>();
        for (Map.Entry<String, Set<String>> row : MAY_IMPORT.entrySet()) {
            assertThat(settled).as("imports of %s", row.getKey()).containsAll(row.getValue());
            settled.add(row.getKey());
        }
    }

    @ParameterizedTest
    @MethodSource("packages")
    void a_package_knows_what_the_table_says_and_no_more(String name) {
        List<String> allowed = new ArrayList<>(List.of("java..", home(name)));
        MAY_IMPORT.get(name).forEach(other -> allowed.add(home(other)));
        allowed.addAll(LIBRARIES.getOrDefault(name, List.of()));

        classes()
                .that()
                .resideInAPackage(home(name))
                .should()
                .onlyDependOnClassesThat(resideInOneOf(allowed))
                // A package whose turn has not come is empty.
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    private static String home(String name) {
        return "rigbrief." + name + "..";
    }

    /** Arrays are judged by what they hold. */
    private static DescribedPredicate<JavaClass> resideInOneOf(List<String> homes) {
        return new DescribedPredicate<>("reside in one of " + homes) {
            @Override
            public boolean test(JavaClass found) {
                JavaClass held = found.getBaseComponentType();
                return held.isPrimitive()
                        || homes.stream().anyMatch(home -> resideInAPackage(home).test(held));
            }
        };
    }

    @Test
    void packages_have_no_cycle() {
        slices().matching("rigbrief.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void the_judge_knows_no_solver() {
        noClasses()
                .that()
                .resideInAnyPackage("rigbrief.audit..", "rigbrief.rule..", "rigbrief.goal..")
                .should()
                .transitivelyDependOnClassesThat()
                .resideInAnyPackage("ai.timefold..", "rigbrief.search..")
                .check(CLASSES);
    }

    @Test
    void only_commands_touch_the_console() {
        noClasses()
                .that()
                .resideOutsideOfPackages("rigbrief.cli..")
                .and()
                .doNotBelongToAnyOf(Main.class)
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .check(CLASSES);
    }

    @Test
    void only_main_ends_the_process() {
        noClasses()
                .that()
                .doNotBelongToAnyOf(Main.class)
                .should()
                .callMethod(System.class, "exit", int.class)
                .check(CLASSES);
    }

    @Test
    void nothing_but_the_note_of_a_day_asks_what_day_it_is() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("rigbrief.cli.Today")
                .should()
                .callMethod(LocalDate.class, "now")
                .orShould()
                .callMethod(LocalDate.class, "now", Clock.class)
                .orShould()
                .callMethod(Clock.class, "systemDefaultZone")
                .orShould()
                .callMethod(Clock.class, "systemUTC")
                .orShould()
                .callMethod(LocalDateTime.class, "now")
                .orShould()
                .callMethod(Instant.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .check(CLASSES);
    }
}
