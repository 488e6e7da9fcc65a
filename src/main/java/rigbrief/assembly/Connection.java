package rigbrief.assembly;

/**
 * One line of the list of connections: what is plugged where, and how often.
 *
 * @param lead what sort of plug
 * @param from where the lead comes from
 * @param to where it goes
 * @param count how many such plugs; 0 when the data sheet doesn't say, or when there is nowhere to
 *     plug it
 * @param remark what to know about it; may be empty
 */
public record Connection(Lead lead, String from, String to, int count, String remark) {}
