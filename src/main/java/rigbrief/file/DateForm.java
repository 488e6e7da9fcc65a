package rigbrief.file;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import rigbrief.part.Cells.Malformed;
import rigbrief.part.Word;

/** How a price list writes dates. */
enum DateForm implements Word {
    /** As ISO 8601 has it. */
    YEAR_FIRST("yyyy-mm-dd", "uuuu-MM-dd"),
    /** With full stops. */
    DAY_FIRST("dd.mm.yyyy", "d.M.uuuu"),
    /** With strokes, the day in front. */
    DAY_FIRST_STROKES("dd/mm/yyyy", "d/M/uuuu"),
    /** With strokes, the month in front. */
    MONTH_FIRST("mm/dd/yyyy", "M/d/uuuu");

    private final String word;
    private final DateTimeFormatter format;

    DateForm(String word, String pattern) {
        this.word = word;
        this.format = DateTimeFormatter.ofPattern(pattern).withResolverStyle(ResolverStyle.STRICT);
    }

    @Override
    public String word() {
        return word;
    }

    LocalDate date(String entry) throws Malformed {
        try {
            return LocalDate.parse(entry, format);
        } catch (DateTimeParseException noDate) {
            throw new Malformed(
                    "a date written like " + word, "correct it, or say in the map date-form");
        }
    }
}
