package rigbrief.report.page;

/**
 * What one build promises for one need; all of it text but the bar.
 *
 * @param promised the promise with its unit
 * @param range where a measurement will fall, or how the figure is known
 * @param verdict whether what was asked is kept
 * @param met the same as yes or no
 * @param unsure whether it is more likely than not to be kept, and still not as sure as asked
 * @param bar the same as a drawing
 */
public record NeedView(
        String promised, String range, String verdict, boolean met, boolean unsure, Bar bar) {
    /**
     * A bar on a scale of {@value #FULL} steps; all builds of a page share the scale of a need.
     *
     * @param from where the range starts
     * @param to where it ends
     * @param at where the promise stands
     * @param asked where what was asked stands
     * @param words the same in words
     */
    public record Bar(int from, int to, int at, int asked, String words) {
        /** Steps of the scale. */
        public static final int FULL = 200;
    }
}
