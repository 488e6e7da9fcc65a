package rigbrief.file.cell;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The units that end a column's name, with the ways in which people write them in a cell. */
enum UnitName {
    MM("millimetres", Map.of("mm", "1", "cm", "10", "m", "1000", "in", "25.4", "\"", "25.4")),
    G("grams", Map.of("g", "1", "kg", "1000")),
    KG("kilograms", Map.of("kg", "1", "g", "0.001")),
    W("watts", Map.of("w", "1", "kw", "1000")),
    WATTS("watts", Map.of("w", "1", "kw", "1000")),
    MA("milliamperes", Map.of("ma", "1", "a", "1000")),
    GB("GB", Map.of("gb", "1", "tb", "1000", "mb", "0.001")),
    TBW("terabytes written", Map.of("tb", "1", "tbw", "1", "pb", "1000")),
    GHZ("gigahertz", Map.of("ghz", "1", "mhz", "0.001")),
    HZ("hertz", Map.of("hz", "1", "khz", "1000")),
    MTS("megatransfers per second", Map.of("mt/s", "1", "mts", "1", "gt/s", "1000")),
    MBS("megabytes per second", Map.of("mb/s", "1", "gb/s", "1000")),
    GBS("GB per second", Map.of("gb/s", "1", "tb/s", "1000", "mb/s", "0.001")),
    GBPS("gigabits per second", Map.of("gbit/s", "1", "gbps", "1", "mbit/s", "0.001")),
    TFLOPS("teraflops", Map.of("tflop/s", "1", "tflops", "1", "gflops", "0.001")),
    KW("kelvin per watt", Map.of("k/w", "1")),
    C("degrees Celsius", Map.of("c", "1", "°c", "1")),
    K("kelvin", Map.of("k", "1")),
    M("metres", Map.of("m", "1", "cm", "0.01", "mm", "0.001")),
    V("volts", Map.of("v", "1", "kv", "1000")),
    DBA("dB(A)", Map.of("db", "1", "dba", "1", "db(a)", "1")),
    DB("decibels", Map.of("db", "1")),
    RPM("revolutions per minute", Map.of("rpm", "1")),
    M3H("cubic metres per hour", Map.of("m3/h", "1", "m³/h", "1", "cfm", "1.699011")),
    PA("pascals", Map.of("pa", "1", "mmh2o", "9.80665")),
    LITRES("litres", Map.of("l", "1", "litres", "1")),
    DAYS("days", Map.of("d", "1", "days", "1", "weeks", "7")),
    YEARS("years", Map.of("y", "1", "years", "1"));

    private final String plural;
    private final Map<String, String> factors;

    UnitName(String plural, Map<String, String> factors) {
        this.plural = plural;
        this.factors = factors;
    }

    /** The unit a column's name ends with; none where it ends with another word. */
    static Optional<UnitName> of(String column) {
        int end = Math.max(column.lastIndexOf('_'), column.lastIndexOf('-'));
        String last = column.substring(end + 1).toUpperCase(Locale.ROOT);
        for (UnitName unit : values()) {
            if (unit.name().equals(last)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** The unit's name as it follows a number. */
    String plural() {
        return plural;
    }

    /** How many of this unit one of a written unit is; none where the two do not go together. */
    Optional<BigDecimal> factor(String written) {
        return Optional.ofNullable(factors.get(written.toLowerCase(Locale.ROOT)))
                .map(BigDecimal::new);
    }
}
