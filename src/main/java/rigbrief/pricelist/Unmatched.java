package rigbrief.pricelist;

import java.util.List;

/**
 * A row that is not known to be a part.
 *
 * @param row the row
 * @param suggestions parts that it may be, the likeliest first
 */
public record Unmatched(PriceRow row, List<Suggestion> suggestions) {
    public Unmatched {
        suggestions = List.copyOf(suggestions);
    }
}
