package rigbrief.proposal.need;

import java.util.function.UnaryOperator;
import rigbrief.brief.Brief;
import rigbrief.wording.Phrase;

/**
 * A need at some other value.
 *
 * @param phrase the value as a client would say it, with its unit
 * @param put a brief with the need at this value, as a must
 */
public record Level(Phrase phrase, UnaryOperator<Brief> put) {
    /** The value in English. */
    public String words() {
        return phrase.toString();
    }
}
