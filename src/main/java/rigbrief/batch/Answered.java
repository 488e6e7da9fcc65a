package rigbrief.batch;

import java.util.List;

/**
 * What a summary tells of an answer.
 *
 * @param ending {@link Ending#PROPOSED} or {@link Ending#IMPOSSIBLE}
 * @param currency code of the currency
 * @param totals one per proposal, least money first
 */
public record Answered(Ending ending, String currency, List<TierTotal> totals) {
    /** Copies the totals. */
    public Answered {
        totals = List.copyOf(totals);
    }
}
