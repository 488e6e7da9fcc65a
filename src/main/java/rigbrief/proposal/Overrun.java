package rigbrief.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.brief.Brief;
import rigbrief.quantity.Money;
import rigbrief.search.Certificate;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;

/**
 * A build just over the ceiling, offered only inside the brief's overrun and only if it meets a
 * wish that no build found under the ceiling meets.
 *
 * @param certificate the build over the ceiling; empty when it buys no wish
 * @param remarks how far over it is, and what that buys
 */
record Overrun(Optional<Certificate> certificate, List<String> remarks) {
    private static final Overrun NONE = new Overrun(Optional.empty(), List.of());

    static Overrun find(SearchSpace space, Brief brief, TwoStage search, Standing full) {
        if (brief.overrunBasisPoints() == 0) {
            return NONE;
        }
        long ceiling = brief.ceiling().minorUnits();
        long limit = ceiling + ceiling * brief.overrunBasisPoints() / 10_000;
        Problem stretched = space.within(limit);
        Certificate over = search.bestFrom(stretched, Objective.mostUtility(), List.of(full));
        Standing found = over.best().orElse(full);
        List<String> bought = new ArrayList<>(wishes(space, found));
        bought.removeAll(wishes(space, full));
        if (found.totalMinor() <= ceiling || bought.isEmpty()) {
            return NONE;
        }
        return new Overrun(
                Optional.of(over),
                List.of(
                        "%s over the ceiling, inside the overrun the brief allows; it buys: %s."
                                .formatted(
                                        Money.ofMinor(
                                                found.totalMinor() - ceiling, brief.currency()),
                                        String.join(", ", bought))));
    }

    /** The wishes a build meets, in words. */
    private static List<String> wishes(SearchSpace space, Standing standing) {
        Assessment it = space.assessor().assess(standing.build());
        List<String> met = new ArrayList<>();
        for (Prediction prediction : it.predictions()) {
            for (Promise promise : prediction.promises()) {
                if (!promise.must() && promise.met()) {
                    met.add(
                            String.format(
                                    Locale.ROOT,
                                    "%s %s %.0f",
                                    prediction.workload().title(),
                                    promise.measure().word(),
                                    promise.required()));
                }
            }
        }
        it.brief()
                .noise()
                .wishDba()
                .ifPresent(
                        wish -> {
                            if (Math.round(it.load().levelDba() * 100) <= wish * 100L) {
                                met.add("noise of at most %d dB(A)".formatted(wish));
                            }
                        });
        return met;
    }
}
