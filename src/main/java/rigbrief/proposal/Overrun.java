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
import rigbrief.search.SearchSpace;
import rigbrief.search.Standing;
import rigbrief.search.TwoStage;
import rigbrief.wording.Phrase;

/**
 * A build just over the ceiling, offered only inside the brief's overrun and only if it meets a
 * wish that no build found under the ceiling meets.
 *
 * @param certificate the build over the ceiling; empty when it buys no wish
 * @param remarks how far over it is, and what that buys
 */
record Overrun(Optional<Certificate> certificate, List<Phrase> remarks) {
    private static final Overrun NONE = new Overrun(Optional.empty(), List.of());

    static Overrun find(
            SearchSpace space, SearchSpace aside, Brief brief, TwoStage search, Standing full) {
        if (brief.overrunBasisPoints() == 0 || nothingToBuy(space, full)) {
            return NONE;
        }
        long ceiling = brief.ceiling().minorUnits();
        long limit = ceiling + ceiling * brief.overrunBasisPoints() / 10_000;
        Certificate over =
                search.bestFrom(
                        space.within(limit),
                        aside.within(limit),
                        Objective.mostUtility(),
                        List.of(full));
        Standing found = over.best().orElse(full);
        List<Phrase> bought = new ArrayList<>(wishes(space, found));
        bought.removeAll(wishes(space, full));
        if (found.totalMinor() <= ceiling || bought.isEmpty()) {
            return NONE;
        }
        return new Overrun(
                Optional.of(over),
                List.of(
                        Phrase.of(
                                "remark.overrun",
                                Money.ofMinor(found.totalMinor() - ceiling, brief.currency()),
                                Phrase.joined(", ", bought))));
    }

    /** Whether a build meets every wish as it is. */
    private static boolean nothingToBuy(SearchSpace space, Standing standing) {
        Assessment it = space.assessor().assess(standing.build());
        int wishes = it.brief().noise().wishDba().isPresent() ? 1 : 0;
        for (Prediction prediction : it.predictions()) {
            for (Promise promise : prediction.promises()) {
                wishes += promise.must() ? 0 : 1;
            }
        }
        return wishes(space, standing).size() == wishes;
    }

    /** The wishes a build meets, in words. */
    private static List<Phrase> wishes(SearchSpace space, Standing standing) {
        Assessment it = space.assessor().assess(standing.build());
        List<Phrase> met = new ArrayList<>();
        for (Prediction prediction : it.predictions()) {
            for (Promise promise : prediction.promises()) {
                if (!promise.must() && promise.met()) {
                    met.add(
                            Phrase.of(
                                    "remark.bought",
                                    prediction.workload().title(),
                                    Phrase.of(
                                            "measure.word."
                                                    + promise.measure()
                                                            .name()
                                                            .toLowerCase(Locale.ROOT)),
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
                                met.add(Phrase.of("remark.noise", wish));
                            }
                        });
        return met;
    }
}
