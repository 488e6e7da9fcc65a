package rigbrief.proposal;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.search.Certificate;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.SharedTables;
import rigbrief.search.TwoStage;

/**
 * The two searches that need nothing of each other, least money and most utility, side by side.
 *
 * <p>Each has a space of its own, since an assessor belongs to one thread; the candidates, which
 * nobody changes, are the same. Neither hears of the other, so the answer is the same on one core.
 *
 * @param leastMoney the search for least money
 * @param mostUtility the search for most utility under the ceiling
 * @param aside the space that least money was searched in, for a search with two hands
 */
record FirstSearches(Certificate leastMoney, Certificate mostUtility, SearchSpace aside) {

    static FirstSearches run(Brief brief, Catalogue catalogue, SearchSpace space, TwoStage search) {
        SearchSpace aside = another(space, brief, catalogue);
        CompletableFuture<Certificate> money =
                CompletableFuture.supplyAsync(
                        () -> best(aside, brief, search, Objective.leastMoney()),
                        runnable -> {
                            Thread thread = new Thread(runnable, "least-money");
                            thread.setDaemon(true);
                            thread.start();
                        });
        // On the space that the next searches go on with: utility counts in them too, and what was
        // reckoned for it once is at hand there.
        Certificate utility = best(space, brief, search, Objective.mostUtility());
        try {
            return new FirstSearches(rebound(money.join(), space), utility, aside);
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failed;
        }
    }

    private static SearchSpace another(SearchSpace space, Brief brief, Catalogue catalogue) {
        return new SearchSpace(
                new Assessor(brief, catalogue),
                space.candidates(),
                space.rules(),
                space.goals(),
                new SharedTables());
    }

    private static Certificate best(
            SearchSpace space, Brief brief, TwoStage search, Objective objective) {
        Problem problem = space.within(brief.ceiling().minorUnits());
        return search.best(problem, objective);
    }

    /** The same build in another space over the same candidates. */
    private static Certificate rebound(Certificate certificate, SearchSpace space) {
        return certificate.best().isEmpty()
                ? certificate
                : certificate.with(space.rebound(certificate.best().get()));
    }
}
