package rigbrief.proposal.need;

import java.util.function.UnaryOperator;
import rigbrief.brief.Brief;

/**
 * A need at some other value.
 *
 * @param words the value as a client would say it, with its unit
 * @param put a brief with the need at this value, as a must
 */
public record Level(String words, UnaryOperator<Brief> put) {}
