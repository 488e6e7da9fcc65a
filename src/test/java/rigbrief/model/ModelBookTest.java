package rigbrief.model;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.Main;

/** Walks every model: none without a test of its name, none without source and formula. */
class ModelBookTest {
    private static final Path SOURCES = Path.of("src/main/java/rigbrief/model");
    private static final Path TESTS = Path.of("src/test/java/rigbrief/model");

    /** Values which models take or give, and the checks they share: no formula, so no source. */
    private static final Set<String> WITHOUT_FORMULA =
            Set.of("CoolingCase", "DisplayTiming", "Expect", "LinkResult", "Range", "Speeds");

    /** A plain record without any code of its own. */
    private static final Set<String> WITHOUT_CODE = Set.of("Speeds");

    static List<Path> models() {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(it -> it.toString().endsWith(".java"))
                    .filter(it -> !it.endsWith("package-info.java"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void models_are_found_at_all() {
        assertThat(models()).hasSizeGreaterThan(40);
    }

    @Test
    void every_exception_above_is_still_needed() {
        var names = new TreeSet<String>();
        models().forEach(it -> names.add(name(it)));

        assertThat(names).containsAll(WITHOUT_FORMULA).containsAll(WITHOUT_CODE);
    }

    @ParameterizedTest
    @MethodSource("models")
    void every_model_has_a_test_of_its_name(Path model) {
        if (!WITHOUT_CODE.contains(name(model))) {
            Path test =
                    TESTS.resolve(SOURCES.relativize(model))
                            .resolveSibling(name(model) + "Test.java");

            assertThat(test).exists();
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void every_model_states_where_its_formula_comes_from(Path model) throws IOException {
        if (!WITHOUT_FORMULA.contains(name(model))) {
            String classDoc = Files.readString(model).split("\\*/", 2)[0];

            assertThat(classDoc).containsAnyOf("<p>Source:", "<p>Common practice:");
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void every_package_says_what_it_is_for(Path model) {
        assertThat(model.resolveSibling("package-info.java")).exists();
    }

    /**
     * Models that no answer needs, since no sheet and no brief states what they ask; they stay for
     * the published checks they keep (DEVELOPERS.md says which).
     */
    private static final Set<String> WITHOUT_INPUT =
            Set.of(
                    "AWeighting",
                    "FrameStatistics",
                    "Loudness",
                    "M2Module",
                    "MultiStream",
                    "OctaveBand",
                    "PixelDensity",
                    "RoomCriteria",
                    "SampleMoments",
                    "SlotPitch",
                    "TwelveVoltBudget");

    @Test
    void every_other_model_is_used_for_an_answer() {
        JavaClasses classes =
                new ClassFileImporter()
                        .importUrl(Main.class.getProtectionDomain().getCodeSource().getLocation());
        Set<JavaClass> used = new HashSet<>();
        Deque<JavaClass> open = new ArrayDeque<>();
        for (JavaClass each : classes) {
            if (!model(each)) {
                open.add(each);
            }
        }
        while (!open.isEmpty()) {
            for (Dependency dependency : open.pop().getDirectDependenciesFromSelf()) {
                JavaClass target = dependency.getTargetClass();
                if (model(target) && used.add(target)) {
                    open.add(target);
                }
            }
        }
        Set<String> unused = new TreeSet<>();
        models().forEach(it -> unused.add(name(it)));
        used.forEach(it -> unused.remove(outermost(it)));

        assertThat(unused).containsExactlyInAnyOrderElementsOf(WITHOUT_INPUT);
    }

    private static boolean model(JavaClass one) {
        return one.getPackageName().startsWith("rigbrief.model");
    }

    private static String outermost(JavaClass one) {
        return one.getEnclosingClass().map(ModelBookTest::outermost).orElse(one.getSimpleName());
    }

    private static String name(Path model) {
        return model.getFileName().toString().replace(".java", "");
    }
}
