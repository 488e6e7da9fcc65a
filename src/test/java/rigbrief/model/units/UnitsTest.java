package rigbrief.model.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Executable;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.model.Range;
import rigbrief.quantity.Attenuation;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Money;
import rigbrief.quantity.Power;
import rigbrief.quantity.SoundLevel;

/**
 * Shows that quantities do not mix: each wrong statement is refused by the compiler, while its twin
 * that differs in nothing but the unit compiles; what the compiler cannot see is refused at run
 * time; and every raw number of a model names its unit.
 */
class UnitsTest {
    private static final Path CLASSES = placeOf(Length.class);

    /** Units that the name of a raw number may end with. */
    private static final Set<String> UNITS =
            words(
                    "W Mw A V F Ohm kwh C K Kw KgM3 Pa M3h Cfm Pressure PaPerM3h2 paPerM3h2 "
                            + "Dba Db phon sone S Ms PerS Hours ADay AYear Years Hz M Mm Inch Gb "
                            + "Tbw GbPerDay PerDay PerByte perInch perS");

    /** Shares, ratios and coefficients. */
    private static final Set<String> WITHOUT_UNIT =
            words(
                    "cardRatio caseShare confidence coolerShare dutyShare factor "
                            + "frameShares loadShare overflowFactor overlap parallelShare penalty "
                            + "percent plannedShare powerFactor ratio ratioPerAxis share sigma "
                            + "speedRatio speedShare timeShares utilisation z constant linear "
                            + "square");

    /** Counts of things. */
    private static final Set<String> COUNTS =
            words("bytes driveBytes operations parallel rays serial work");

    /** Numbers in the unit that their owner names. */
    private static final Set<String> IN_THE_OWNERS_UNIT =
            words("allowed energy high knownEnergy low middle rating required value values");

    @TempDir private Path output;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            Length | LENGTH.plus(LENGTH) | LENGTH.plus(POWER)
            Power | POWER.plus(POWER) | POWER.plus(CURRENT)
            Mass | MASS.plus(MASS) | MASS.plus(COUNT)
            int | MASS.compareTo(MASS) | MASS.compareTo(LENGTH)
            int | POWER.compareTo(POWER) | POWER.compareTo(CURRENT)
            Mass | Collections.max(List.of(MASS, MASS)) | Collections.max(List.of(MASS, LENGTH))
            Length | LENGTH | POWER
            Length | LENGTH | 165
            int | 165 | LENGTH
            Money | MONEY.plus(MONEY) | MONEY.plus(POWER)
            """)
    void quantities_of_two_kinds_do_not_mix(String type, String right, String wrong) {
        assertOnlyTheFirstCompiles(type, right, wrong);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            SoundLevel | LEVEL.behind(DAMPING) | DAMPING.behind(LEVEL)
            SoundLevel | LEVEL.behind(DAMPING) | LEVEL.behind(LEVEL)
            SoundLevel | LEVEL.behind(DAMPING) | LEVEL.plus(DAMPING)
            SoundLevel | LEVEL.behind(DAMPING) | LEVEL.plus(LEVEL)
            SoundLevel | LEVEL.behind(DAMPING) | DAMPING
            int | LEVEL.compareTo(LEVEL) | LEVEL.compareTo(DAMPING)
            """)
    void levels_and_differences_of_levels_do_not_mix(String type, String right, String wrong) {
        assertOnlyTheFirstCompiles(type, right, wrong);
    }

    /** A length in metres and a power in kilowatts have a fraction, which no quantity takes. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            Length | Length.mm(165) | Length.mm(0.165)
            Power | Power.w(750) | Power.w(0.75)
            Mass | Mass.g(1200) | Mass.g(1.2)
            Current | Current.ma(500) | Current.ma(0.5)
            Length | Length.mm(165) | Length.m(1)
            Power | Power.w(750) | Power.kw(1)
            """)
    void millimetres_and_metres_watts_and_kilowatts_do_not_mix(
            String type, String right, String wrong) {
        assertOnlyTheFirstCompiles(type, right, wrong);
    }

    private void assertOnlyTheFirstCompiles(String type, String right, String wrong) {
        assertThat(errorsOf(type, right)).as(right).isEmpty();
        assertThat(errorsOf(type, wrong)).as(wrong).hasSize(1).allSatisfy(UnitsTest::isAboutTypes);
    }

    /** A typing error in a statement would be refused too, and would show nothing. */
    private static void isAboutTypes(Diagnostic<? extends JavaFileObject> error) {
        assertThat(error.getCode())
                .isIn(
                        "compiler.err.cant.apply.symbol",
                        "compiler.err.cant.apply.symbols",
                        "compiler.err.cant.resolve.location.args",
                        "compiler.err.prob.found.req");
    }

    private List<Diagnostic<? extends JavaFileObject>> errorsOf(String type, String expression) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        assertThat(compiler).as("a compiler; run the tests with a JDK").isNotNull();
        var diagnostics = new DiagnosticCollector<JavaFileObject>();
        List<String> options =
                List.of("-proc:none", "-cp", CLASSES.toString(), "-d", output.toString());
        compiler.getTask(
                        null,
                        null,
                        diagnostics,
                        options,
                        null,
                        List.of(new Snippet(type, expression)))
                .call();
        return diagnostics.getDiagnostics().stream()
                .<Diagnostic<? extends JavaFileObject>>map(it -> it)
                .filter(it -> it.getKind() == Diagnostic.Kind.ERROR)
                .toList();
    }

    private static final class Snippet extends SimpleJavaFileObject {
        private final String type;
        private final String expression;

        Snippet(String type, String expression) {
            super(URI.create("string:///Snippet.java"), Kind.SOURCE);
            this.type = type;
            this.expression = expression;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return """
                   import java.util.*;
                   import rigbrief.quantity.*;
                   class Snippet {
                       static final Length LENGTH = Length.mm(165);
                       static final Power POWER = Power.w(750);
                       static final Current CURRENT = Current.ma(500);
                       static final Mass MASS = Mass.g(1200);
                       static final Count COUNT = Count.of(4);
                       static final SoundLevel LEVEL = SoundLevel.dba(30);
                       static final Attenuation DAMPING = Attenuation.db(3);
                       static final Money MONEY = Money.zero(Currency.getInstance("EUR"));
                       static final %s IT = %s;
                   }
                   """
                    .formatted(type, expression);
        }
    }

    @Test
    void money_of_two_currencies_is_refused() {
        var euro = Money.ofMinor(100, Currency.getInstance("EUR"));
        var franc = Money.ofMinor(100, Currency.getInstance("CHF"));

        assertThat(euro.plus(euro).minorUnits()).isEqualTo(200);
        assertThatThrownBy(() -> euro.plus(franc)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> euro.compareTo(franc))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void numbers_that_no_unit_could_mean_are_refused() {
        assertThatThrownBy(() -> Length.mm(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SoundLevel.dba(300)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Attenuation.db(-3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SoundLevel.dba(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void amounts_of_two_kinds_are_not_equal_and_print_their_units() {
        assertThat((Object) Length.mm(5)).isNotEqualTo(Mass.g(5)).hasToString("5 mm");
        assertThat((Object) Power.w(5)).isNotEqualTo(Length.mm(5)).hasToString("5 W");
        assertThat((Object) SoundLevel.dba(5)).isNotEqualTo(Attenuation.db(5));
    }

    @Test
    void every_raw_number_a_model_takes_names_its_unit() throws IOException {
        Set<String> nameless = new TreeSet<>();
        int seen = 0;
        for (Class<?> model : models()) {
            for (Parameter parameter : rawNumbersOf(model)) {
                assertThat(parameter.isNamePresent()).as("compiled with names").isTrue();
                seen++;
                if (!isUnderstood(parameter.getName())) {
                    nameless.add(model.getSimpleName() + ": " + parameter.getName());
                }
            }
        }

        assertThat(nameless).isEmpty();
        assertThat(seen).isGreaterThan(200);
    }

    private static Set<String> words(String words) {
        return Set.of(words.split(" "));
    }

    private static boolean isUnderstood(String name) {
        return endsWithUnit(name)
                || WITHOUT_UNIT.contains(name)
                || COUNTS.contains(name)
                || IN_THE_OWNERS_UNIT.contains(name);
    }

    private static boolean endsWithUnit(String name) {
        return UNITS.stream()
                .anyMatch(
                        unit ->
                                name.equals(unit)
                                        || name.endsWith(unit)
                                                && Character.isUpperCase(unit.charAt(0)));
    }

    private static List<Parameter> rawNumbersOf(Class<?> model) {
        List<Executable> all = new ArrayList<>(List.of(model.getDeclaredConstructors()));
        all.addAll(List.of(model.getDeclaredMethods()));
        return all.stream()
                .filter(it -> Modifier.isPublic(it.getModifiers()))
                .filter(it -> !it.isSynthetic())
                .flatMap(it -> Stream.of(it.getParameters()))
                .filter(it -> it.getType() == double.class || it.getType() == double[].class)
                .toList();
    }

    private static List<Class<?>> models() throws IOException {
        List<Class<?>> models = new ArrayList<>();
        Path root = placeOf(Range.class);
        try (Stream<Path> files = Files.walk(root.resolve("rigbrief/model"))) {
            List<Path> sorted =
                    files.filter(it -> it.toString().endsWith(".class")).sorted().toList();
            for (Path file : sorted) {
                String name = root.relativize(file).toString().replace('/', '.');
                models.add(load(name.replace(".class", "")));
            }
        }
        return models;
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(name + " lies among the models and cannot be loaded", e);
        }
    }

    private static Path placeOf(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException e) {
            throw new UncheckedIOException(new IOException(e));
        }
    }
}
