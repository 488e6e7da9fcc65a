package rigbrief.report.page;

/**
 * A need as all builds of a page are held against it.
 *
 * @param title what is needed
 * @param measure which figure of it; may be empty
 * @param term word of the term that explains the measure; may be empty
 * @param asked what was asked, with its unit, in words
 * @param must whether it is a must
 */
public record NeedRow(String title, String measure, String term, String asked, boolean must) {}
