package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.part.Cells.Malformed;

/** Expected values are what the notations mean. */
class FigureFormTest {
    private static final Currency EURO = Currency.getInstance("EUR");
    private static final FigureForm CONTINENTAL = new FigureForm(',', Optional.of('.'), EURO);
    private static final FigureForm ENGLISH = new FigureForm('.', Optional.of(','), EURO);
    private static final FigureForm SWISS = new FigureForm('.', Optional.of('\''), EURO);
    private static final FigureForm PLAIN = new FigureForm('.', Optional.empty(), EURO);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "1.234,50|1234.50", "1234,5|1234.5", "-4|-4", "EUR 1.234|1234",
                "12,00 €|12.00", "€ 12,00|12.00", "1.234.567,89 EUR|1234567.89", "0,99|0.99"
            })
    void a_continental_amount_is_read(String text, BigDecimal amount) throws Malformed {
        assertThat(CONTINENTAL.amount(text)).isEqualByComparingTo(amount);
    }

    @Test
    void other_notations_are_read_too() throws Malformed {
        assertThat(ENGLISH.amount("1,234.50")).isEqualByComparingTo("1234.50");
        assertThat(SWISS.amount("1’234.50")).isEqualByComparingTo("1234.50");
        assertThat(PLAIN.amount("1234.50")).isEqualByComparingTo("1234.50");
        assertThat(new FigureForm(',', Optional.of(' '), EURO).amount("1\u00A0234,50"))
                .isEqualByComparingTo("1234.50");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12.34",
                "1.23,50",
                "1,234.50",
                "1.2345,00",
                "",
                "12,",
                ",5",
                "1e3",
                "USD 5"
            })
    void what_the_notation_does_not_allow_is_refused(String text) {
        assertThatThrownBy(() -> CONTINENTAL.amount(text)).isInstanceOf(Malformed.class);
    }

    @Test
    void groups_are_refused_where_the_map_names_none() {
        assertThatThrownBy(() -> PLAIN.amount("1,234.50")).isInstanceOf(Malformed.class);
    }
}
