package rigbrief.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.wording.Phrase;

class EntriesTest {
    private static final Currency EURO = Currency.getInstance("EUR");
    private static final Currency YEN = Currency.getInstance("JPY");
    private static final List<Choice> CHOICES =
            List.of(
                    new Choice("kiln-drafting", Phrase.data("Kiln Drafting"), Phrase.NONE),
                    new Choice("kelp", Phrase.data("Kelp and Kin"), Phrase.NONE),
                    new Choice("60", Phrase.data("60 times"), Phrase.NONE));

    @ParameterizedTest
    @CsvSource({
        "1, kiln-drafting",
        "KILN-DRAFTING, kiln-drafting",
        "kiln drafting, kiln-drafting",
        "ki, kiln-drafting",
        "Kelp, kelp",
        "3, 60",
        "60, 60",
    })
    void a_choice_is_named_by_number_word_label_or_a_beginning_of_its_own(String typed, String word)
            throws NotUnderstood {
        assertThat(Entries.choice(CHOICES, typed).word()).isEqualTo(word);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "4", "k", "", "kiln-draughting plus", "6"})
    void what_names_no_choice_alone_is_refused(String typed) {
        assertThatThrownBy(() -> Entries.choice(CHOICES, typed)).isInstanceOf(NotUnderstood.class);
    }

    @Test
    void a_misspelt_choice_is_met_with_the_one_that_was_meant() {
        assertThatThrownBy(() -> Entries.choice(CHOICES, "kiln drafing"))
                .hasMessageContaining("did you mean kiln drafting?");
    }

    @Test
    void several_choices_come_in_the_order_of_the_choices_and_once_each() throws NotUnderstood {
        assertThat(Entries.words(Entries.choices(CHOICES, "3, kelp ,3"))).isEqualTo("kelp, 60");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "none", "None", "-", "no", "keine", "Nein"})
    void nothing_of_a_list_can_be_said_in_several_ways(String typed) throws NotUnderstood {
        assertThat(Entries.choices(CHOICES, typed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1250|1250.00",
                "1250,5|1250.50",
                "EUR 900|900.00",
                "900 EUR|900.00",
                "EUR 1,250.50|1250.50",
                "1.250,50\u00a0€|1250.50",
                "1,000,000.00|1000000.00",
                "0.01|0.01"
            })
    void an_amount_may_have_a_point_or_a_comma_and_its_currency(String typed, String amount)
            throws NotUnderstood {
        assertThat(Entries.money(typed, EURO, false).plain()).isEqualTo(amount);
    }

    /** 1.250 is a thousand to some readers and one and a quarter to others. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.250",
                "1,250",
                "1'250",
                "-5",
                "0",
                "12.345",
                "1,250,000",
                "12.50,00",
                "1,2500.00",
                "ten",
                "",
                "200000000"
            })
    void an_amount_that_could_mean_two_things_or_none_is_refused(String typed) {
        assertThatThrownBy(() -> Entries.money(typed, EURO, false))
                .isInstanceOf(NotUnderstood.class);
    }

    @Test
    void a_currency_without_minor_units_takes_none() throws NotUnderstood {
        assertThat(Entries.money("150000", YEN, false).plain()).isEqualTo("150000");
        assertThatThrownBy(() -> Entries.money("1500.5", YEN, false))
                .isInstanceOf(NotUnderstood.class);
    }

    @Test
    void a_name_may_have_any_letters_and_nothing_that_prints_nothing() throws NotUnderstood {
        assertThat(Entries.text(" Søren 漢字 O’Hara ", Phrase.data("a name")))
                .isEqualTo("Søren 漢字 O’Hara");
        assertThatThrownBy(() -> Entries.text("a\u202eb", Phrase.data("a name")))
                .hasMessageContaining("\\u202E");
    }
}
