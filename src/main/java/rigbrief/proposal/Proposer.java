package rigbrief.proposal;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.search.SearchSpace;
import rigbrief.search.TwoStage;
import rigbrief.wording.Phrase;

/** Answers a brief: three tiers with proof and reasons, or why there is none. */
public final class Proposer {
    private final SearchLimits limits;
    private final BooleanSupplier calledOff;

    /** A proposer that searches no harder than the limits say. */
    public Proposer(SearchLimits limits) {
        this(limits, () -> false);
    }

    /**
     * A proposer that can be called off.
     *
     * @param calledOff asked now and then; true ends the search with what is known by then
     */
    public Proposer(SearchLimits limits, BooleanSupplier calledOff) {
        this.limits = limits;
        this.calledOff = calledOff;
    }

    /** The answer to a brief. */
    public Proposals propose(Brief brief, Catalogue catalogue) {
        SearchClock clock = new SearchClock(limits, calledOff);
        SearchSpace space = SearchSpace.of(brief, catalogue);
        if (space.candidates().impossible()) {
            return impossible(brief, catalogue, space, clock);
        }
        TwoStage search = new TwoStage(limits.seed(), limits.moves(), limits.steps(), clock::over);
        FirstSearches first = FirstSearches.run(brief, catalogue, space, search);
        if (first.leastMoney().best().isEmpty() && first.mostUtility().best().isEmpty()) {
            return first.leastMoney().complete()
                    ? impossible(brief, catalogue, space, clock)
                    : notFound(brief, catalogue, first, clock);
        }
        return new Tiers(limits, brief, catalogue, space, search, first).propose(clock);
    }

    private Proposals impossible(
            Brief brief, Catalogue catalogue, SearchSpace space, SearchClock clock) {
        Clash clash = new ClashFinder(catalogue, limits.steps(), clock::over).find(brief, space);
        return without(brief, catalogue, clash, clock);
    }

    private Proposals notFound(
            Brief brief, Catalogue catalogue, FirstSearches first, SearchClock clock) {
        Phrase found =
                Phrase.of(
                        "clash.not-found",
                        first.leastMoney().steps() + first.mostUtility().steps());
        return without(brief, catalogue, new Clash(List.of(), false, List.of(found)), clock);
    }

    private Proposals without(Brief brief, Catalogue catalogue, Clash clash, SearchClock clock) {
        return new Proposals(
                brief,
                catalogue,
                limits.seed(),
                List.of(),
                List.of(),
                Optional.of(clash),
                clock.remarks(),
                new VariantProposer(limits).propose(brief, catalogue));
    }
}
