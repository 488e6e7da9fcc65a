package rigbrief.intake;

/**
 * One of the answers offered to a question.
 *
 * @param word what may be typed for it, and how it is kept; lower case
 * @param label what it is called
 * @param meaning what it means in everyday words; may be empty
 */
public record Choice(String word, String label, String meaning) {}
