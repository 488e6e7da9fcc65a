package rigbrief.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rigbrief.diagnostic.Quotation;

/** Reads a day of the calendar: {@code 2026-11-20}. */
final class DateOf implements ITypeConverter<LocalDate> {
    private static final int LENGTH = 10;

    @Override
    public LocalDate convert(String word) {
        try {
            if (word.length() == LENGTH) {
                return LocalDate.parse(word);
            }
        } catch (DateTimeParseException noDate) {
            throw wrong(word);
        }
        throw wrong(word);
    }

    private static TypeConversionException wrong(String word) {
        return new TypeConversionException(
                "found %s, expected a date of the calendar; write year, month, day: 2026-11-20"
                        .formatted(Quotation.of(word)));
    }
}
