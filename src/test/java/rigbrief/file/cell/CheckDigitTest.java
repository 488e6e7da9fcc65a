package rigbrief.file.cell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** GS1 General Specifications, section 7.9: weights 3, 1, 3, ... from the right. */
class CheckDigitTest {
    @ParameterizedTest
    @CsvSource({
        // The example on the standard body's own page about check digits: from memory, and by hand
        // 6+6+9+3+0+12+1+15+0+0+2+3 = 57.
        "6291041500213, 3",
        // By hand: 3*1+2+3*3+4+3*5+6+3*7 = 60.
        "12345670, 0",
        // By hand: 3*1+2+3*3+4+3*5+6+3*7+8+3*9+0+3*1 = 98.
        "123456789012, 2",
        // By hand: 3*1+2+3*3+4+3*5+6+3*7+8+3*9+0+3*1+2+3*3 = 109.
        "12345678901231, 1"
    })
    void the_check_digit_fills_the_weighted_sum_up_to_a_multiple_of_ten(String number, int digit) {
        assertThat(CheckDigit.of(number)).isEqualTo(digit);
        assertThat(CheckDigit.wellFormed(number)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1234567", "123456789", "1234567890", "12345678901", "1234567x"})
    void other_lengths_and_other_characters_are_no_item_number(String number) {
        assertThat(CheckDigit.wellFormed(number)).isFalse();
    }
}
