package rigbrief.report.page;

/**
 * A figure as a client reads it and as a builder does.
 *
 * @param name what it is
 * @param words in words
 * @param numbers in numbers with units
 */
public record Figure(String name, String words, String numbers) {}
