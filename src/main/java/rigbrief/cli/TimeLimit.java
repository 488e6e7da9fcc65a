package rigbrief.cli;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a ceiling on time: {@code 2s}, {@code 1.5s}, {@code 500ms}, {@code 1m}. */
final class TimeLimit implements ITypeConverter<Duration> {
    private static final Pattern FORM = Pattern.compile("([0-9]{1,6}(?:[.][0-9]{1,3})?)(ms|s|m)");

    @Override
    public Duration convert(String word) {
        Matcher matcher = FORM.matcher(word);
        if (!matcher.matches()) {
            throw new TypeConversionException(
                    "found '" + word + "', expected a number with its unit; write 2s, 500ms or 1m");
        }
        int unitMs =
                switch (matcher.group(2)) {
                    case "ms" -> 1;
                    case "s" -> 1_000;
                    default -> 60_000;
                };
        BigDecimal milliseconds =
                new BigDecimal(matcher.group(1)).multiply(BigDecimal.valueOf(unitMs));
        return Duration.ofMillis(Math.max(1, milliseconds.longValue()));
    }
}
