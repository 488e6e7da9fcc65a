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

    /** Most utility with the overrun; empty when the brief allows none. */
    static Optional<Certificate> search(
            SearchSpace space, Brief brief, TwoStage search, Standing full) {
        if (brief.overrunBasisPoints() == 0) {
            return Optional.empty();
        }
        long ceiling = brief.ceiling().minorUnits();
        long limit = ceiling + ceiling * brief.overrunBasisPoints() / 10_000;
        Problem stretched = space.within(limit);
        return Optional.of(
                search.bestFrom(stretched, Objective.mostUtility(), List.of(space.rebound(full))));
    }

    /** What the best build found with the overrun buys over the one without. */
    static Overrun of(
            SearchSpace space, Brief brief, Optional<Certificate> searched, Standing full) {
        Certificate over = searched.orElse(null);
        Standing found = over == null ? full : over.best().orElse(full);
        long ceiling = brief.ceiling().minorUnits();
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
