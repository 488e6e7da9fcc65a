package rigbrief.pricelist;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.CatalogueReader;
import rigbrief.part.Part;
import rigbrief.quantity.Money;

class PartSuggesterTest {
    private static Catalogue sample;
    private static PartSuggester suggester;

    @BeforeAll
    static void read() throws BadInput {
        sample = CatalogueReader.read(Path.of("catalog-sample"));
        suggester = new PartSuggester(sample);
    }

    @ParameterizedTest
    @CsvSource({
        "'boxed, OSTREL Worsted 6 G', ostrel-worsted-6-g",
        "'Wattlemarsch Fen 500 W ATX', wattlemarsh-fen-500",
        "'fen wattlemarsh 500', wattlemarsh-fen-500"
    })
    void words_in_any_order_with_one_letter_wrong_still_mean_the_part(String words, String part) {
        assertThat(of(words).get(0).part().id()).isEqualTo(part);
    }

    @Test
    void another_number_is_another_part() {
        assertThat(of("Wattlemarsh Fen 501")).noneMatch(it -> it.part().id().contains("fen-500"));
    }

    @Test
    void strange_things_are_like_nothing() {
        assertThat(of("Tallowmere desk lamp, brass")).isEmpty();
    }

    /**
     * Every part of the sample, its words shuffled and in capitals with trade words around them, is
     * among its own suggestions, and no other part is put above it with a lower score.
     */
    @Test
    void every_part_is_found_again_by_its_own_shuffled_name() {
        Random random = new Random(5);
        int first = 0;
        for (Part part : PartFinder.all(sample)) {
            List<String> words = new java.util.ArrayList<>(List.of(part.name().split(" ")));
            java.util.Collections.shuffle(words, random);
            var suggestions = of("retail " + String.join(" ", words).toUpperCase() + " boxed");

            assertThat(suggestions)
                    .as(part.name())
                    .anyMatch(it -> it.part().name().equals(part.name()) && it.percent() == 100);
            first += suggestions.get(0).part().name().equals(part.name()) ? 1 : 0;
        }
        // A longer name wins a tie, so hardly any part is second to another.
        assertThat(first).isGreaterThanOrEqualTo(sample.partCount() * 99 / 100);
    }

    private static List<Suggestion> of(String words) {
        Money price = Money.ofMinor(100, Currency.getInstance("EUR"));
        return suggester.of(
                new PriceRow(2, "", "", "", "", words, price, 1, 1, LocalDate.of(2026, 12, 1)));
    }
}
