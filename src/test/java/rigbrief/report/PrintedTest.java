package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.quantity.Unit;
import rigbrief.rule.Margin;

class PrintedTest {
    private static final Currency EURO = Currency.getInstance("EUR");

    @Test
    void money_has_the_currencys_digits_and_code() {
        assertThat(Printed.amount(184_250, Unit.MINOR_MONEY, EURO)).isEqualTo("EUR 1,842.50");
        assertThat(Printed.amount(184_250, Unit.MINOR_MONEY, Currency.getInstance("JPY")))
                .isEqualTo("JPY 184,250");
    }

    @Test
    void a_bare_condition_has_no_unit() {
        assertThat(Printed.amount(1, Unit.CONDITION, EURO)).isEqualTo("1");
    }

    @ParameterizedTest
    @CsvSource({
        "MILLIMETRE, 330, 320, false",
        "MILLIMETRE, 330, 321, true",
        "MILLIMETRE, 330, 331, false",
        "WATT, 100, 90, false",
        "WATT, 100, 91, true",
        "WATT, 100, 100, true",
        "PIECE, 4, 4, false",
        "DAY, 10, 10, false",
    })
    void little_to_spare_is_tight_unless_it_is_counted_or_broken(
            Unit unit, long have, long need, boolean tight) {
        assertThat(Printed.tight(new Margin(have, need, unit))).isEqualTo(tight);
    }
}
