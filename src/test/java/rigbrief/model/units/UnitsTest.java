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
            Set.of(
                    "W", "Mw", "A", "V", "F", "Ohm", "kwh", "C", "K", "Kw", "KgM3", "Pa", "M3h",
                    "Cfm", "Pressure", "PaPerM3h2", "Dba", "Db", "phon", "sone", "S", "Ms", "PerS",
                    "Hours", "ADay", "AYear", "Years", "Hz", "M", "Mm", "Inch", "Gb", "Tbw",
                    "GbPerDay", "PerDay", "PerByte", "paPerM3h2");

    /** Numbers without a unit: shares, ratios, counts, and values in the unit of their owner. */
    private static final Set<String> PLAIN =
            Set.of(
                    // Shares, ratios and coefficients.
                    "cardRatio", "caseShare", "confidence", "coolerShare", "dutyShare", "factor",
                    "frameShares", "loadShare", "overflowFactor", "overlap", "parallelShare",
                    "penalty", "percent", "plannedShare", "powerFactor", "ratio", "ratioPerAxis",
                    "share", "sigma", "speedRatio", "speedShare", "timeShares", "utilisation", "z",
                    "constant", "linear", "square",
                    // Counts of things.
                    "bytes", "driveBytes", "operations", "parallel", "rays", "serial", "work",
                    // In the unit that their owner names.
                    "allowed", "energy", "high", "low", "middle", "rating", "required", "value",
                    "values",
                    // A unit by their own name alone.
                    "perInch", "perS");

    @TempDir private Path output;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            Length it = Length.mm(3).plus(Length.mm(4));       | Length it = Length.mm(3).plus(Power.w(4));
            Power it = Power.w(3).plus(Power.w(4));            | Power it = Power.w(3).plus(Current.ma(4));
            Mass it = Mass.g(3).plus(Mass.g(4));               | Mass it = Mass.g(3).plus(Count.of(4));
            int it = Mass.g(1).compareTo(Mass.g(2));           | int it = Mass.g(1).compareTo(Length.mm(2));
            int it = Power.w(1).compareTo(Power.w(2));         | int it = Power.w(1).compareTo(Current.ma(2));
            Mass it = Collections.max(List.of(Mass.g(1), Mass.g(2))); | Mass it = Collections.max(List.of(Mass.g(1), Length.mm(2)));
            Length it = Length.mm(165);                        | Length it = Power.w(165);
            Length it = Length.mm(165);                        | Length it = 165;
            int it = 165;                                      | int it = Length.mm(165);
            Money it = Money.zero(EURO).plus(Money.zero(EURO)); | Money it = Money.zero(EURO).plus(Power.w(1));
            """)
    void quantities_of_two_kinds_do_not_mix(String right, String wrong) {
        assertOnlyTheFirstCompiles(right, wrong);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            SoundLevel it = SoundLevel.dba(30).behind(Attenuation.db(3)); | SoundLevel it = Attenuation.db(3).behind(SoundLevel.dba(30));
            SoundLevel it = SoundLevel.dba(30).behind(Attenuation.db(3)); | SoundLevel it = SoundLevel.dba(30).behind(SoundLevel.dba(3));
            SoundLevel it = SoundLevel.dba(30).behind(Attenuation.db(3)); | Attenuation it = SoundLevel.dba(30).behind(Attenuation.db(3));
            SoundLevel it = SoundLevel.dba(30).behind(Attenuation.db(3)); | SoundLevel it = SoundLevel.dba(30).plus(Attenuation.db(3));
            int it = SoundLevel.dba(30).compareTo(SoundLevel.dba(30));    | SoundLevel it = SoundLevel.dba(30).plus(SoundLevel.dba(30));
            int it = SoundLevel.dba(30).compareTo(SoundLevel.dba(30));    | int it = SoundLevel.dba(30).compareTo(Attenuation.db(30));
            """)
    void levels_and_differences_of_levels_do_not_mix(String right, String wrong) {
        assertOnlyTheFirstCompiles(right, wrong);
    }

    /** A length in metres and a power in kilowatts have a fraction, which no quantity takes. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            Length it = Length.mm(165); | Length it = Length.mm(0.165);
            Power it = Power.w(750);    | Power it = Power.w(0.75);
            Mass it = Mass.g(1200);     | Mass it = Mass.g(1.2);
            Current it = Current.ma(500); | Current it = Current.ma(0.5);
            Length it = Length.mm(165); | Length it = Length.m(1);
            Power it = Power.w(750);    | Power it = Power.kw(1);
            """)
    void millimetres_and_metres_watts_and_kilowatts_do_not_mix(String right, String wrong) {
        assertOnlyTheFirstCompiles(right, wrong);
    }

    private void assertOnlyTheFirstCompiles(String right, String wrong) {
        assertThat(errorsOf(right)).as(right).isEmpty();
        assertThat(errorsOf(wrong)).as(wrong).hasSize(1).allSatisfy(UnitsTest::isAboutTypes);
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

    private List<Diagnostic<? extends JavaFileObject>> errorsOf(String statement) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        assertThat(compiler).as("a compiler; run the tests with a JDK").isNotNull();
        var diagnostics = new DiagnosticCollector<JavaFileObject>();
        List<String> options =
                List.of("-proc:none", "-cp", CLASSES.toString(), "-d", output.toString());
        compiler.getTask(null, null, diagnostics, options, null, List.of(new Snippet(statement)))
                .call();
        return diagnostics.getDiagnostics().stream()
                .<Diagnostic<? extends JavaFileObject>>map(it -> it)
                .filter(it -> it.getKind() == Diagnostic.Kind.ERROR)
                .toList();
    }

    private static final class Snippet extends SimpleJavaFileObject {
        private final String statement;

        Snippet(String statement) {
            super(URI.create("string:///Snippet.java"), Kind.SOURCE);
            this.statement = statement;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return """
                   import java.util.*;
                   import rigbrief.quantity.*;
                   class Snippet {
                       static final Currency EURO = Currency.getInstance("EUR");
                       void statement() { %s }
                   }
                   """
                    .formatted(statement);
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
                if (!PLAIN.contains(parameter.getName()) && !endsWithUnit(parameter.getName())) {
                    nameless.add(model.getSimpleName() + ": " + parameter.getName());
                }
            }
        }

        assertThat(nameless).isEmpty();
        assertThat(seen).isGreaterThan(200);
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
            List<Path> sorted = files.filter(it -> it.toString().endsWith(".class")).sorted().toList();
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
