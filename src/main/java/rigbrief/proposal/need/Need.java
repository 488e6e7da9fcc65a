package rigbrief.proposal.need;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.wording.Phrase;

/**
 * One need of a brief, with the briefs in which it is left out or asked for otherwise.
 *
 * @param id stable id: the workload, or the key of the brief
 * @param phrase the need as a client would say it, with its value
 * @param kind what sort of need it is
 * @param asked its value alone, as a must
 * @param dropped the brief without it; a workload goes with its must
 * @param freed the brief in which nobody insists on it: as without it, but a workload stays
 * @param looser its looser values, the nearest first; empty when it can only be kept or dropped
 * @param softer one usual step softer
 * @param harder one usual step harder
 * @param reached what a build reaches, in the words of the value
 */
public record Need(
        String id,
        Phrase phrase,
        Kind kind,
        Level asked,
        UnaryOperator<Brief> dropped,
        UnaryOperator<Brief> freed,
        List<Level> looser,
        Optional<Level> softer,
        Optional<Level> harder,
        Function<Assessment, Phrase> reached) {
    /** What sort of need it is. */
    public enum Kind {
        /** It has to be met. */
        MUST,
        /** It would be nice; as a must it is only tried. */
        WISH,
        /**
         * That a workload of which no speed is asked for runs at all, which asks for memory and
         * storage.
         */
        PRESENCE,
        /**
         * A part of the client's own. It is free of charge, so doing without it can cost more, and
         * it stays at hand where nobody insists on it.
         */
        OWN,
        /** What the job is: how many machines, what picture. It is never left out of a price. */
        TERM,
        /** The ceiling. */
        CEILING
    }

    public Need {
        looser = List.copyOf(looser);
    }

    /** The need in English. */
    public String name() {
        return phrase.toString();
    }

    /** A need that has steps between being kept and being dropped. */
    static Need stepped(
            String id,
            Phrase phrase,
            Kind kind,
            Level asked,
            UnaryOperator<Brief> dropped,
            List<Level> looser,
            Optional<Level> softer,
            Optional<Level> harder,
            Function<Assessment, Phrase> reached) {
        return new Need(id, phrase, kind, asked, dropped, dropped, looser, softer, harder, reached);
    }

    /** A need that is kept or dropped, with no steps between. */
    static Need whole(
            String id, Phrase phrase, Kind kind, Level asked, UnaryOperator<Brief> dropped) {
        return new Need(
                id,
                phrase,
                kind,
                asked,
                dropped,
                dropped,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                it -> Phrase.of("need.not-kept"));
    }
}
