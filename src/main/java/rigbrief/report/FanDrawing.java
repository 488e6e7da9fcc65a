package rigbrief.report;

import java.util.List;
import rigbrief.assembly.FanPlan;
import rigbrief.build.Build;
import rigbrief.report.page.Words;

/**
 * A side view of a case, to scale from its outer size: board, cooler, card, supply, radiator, and
 * every fan at its side with the way its air goes.
 *
 * <p>Rear at the left, front at the right, as a builder looks into the open side. What no data
 * sheet states, such as where exactly on a side a fan sits, is drawn where it usually is.
 *
 * @param width width of the drawing
 * @param height height of the drawing
 * @param boxes rectangles, those behind first
 * @param arrows air going through a side
 * @param labels letters and words
 * @param key what the numbers in the drawing stand for, in the order of the numbers
 */
public record FanDrawing(
        int width,
        int height,
        List<Box> boxes,
        List<Arrow> arrows,
        List<Label> labels,
        List<String> key) {
    /** What a rectangle is. */
    public enum Look {
        CASE,
        PART,
        /** A part whose place no data sheet states. */
        USUAL,
        FAN,
        BOUGHT,
        RADIATOR,
        FREE,
        IN,
        OUT
    }

    /** A rectangle in the drawing's units. */
    public record Box(int x, int y, int width, int height, Look look) {
        boolean holds(int px, int py, int margin) {
            return px > x - margin
                    && px < x + width + margin
                    && py > y - margin
                    && py < y + height + margin;
        }

        boolean meets(Box other) {
            return x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }
    }

    /**
     * An arrow.
     *
     * @param path its line and head, as an SVG path
     * @param in whether the air comes in
     */
    public record Arrow(String path, boolean in) {}

    /**
     * A word in the drawing.
     *
     * @param x where it is anchored
     * @param y its base line
     * @param text the word
     * @param anchor {@code start}, {@code middle} or {@code end}
     * @param sort {@code mark} for a fan's letter, {@code number} for a part's number in its ring,
     *     {@code note} for the rest
     */
    public record Label(int x, int y, String text, String anchor, String sort) {}

    public FanDrawing {
        boxes = List.copyOf(boxes);
        arrows = List.copyOf(arrows);
        labels = List.copyOf(labels);
        key = List.copyOf(key);
    }

    /** The drawing for a build's fans. */
    public static FanDrawing of(Build build, FanPlan plan, Words words) {
        return new CaseDrafting(build, plan, words).draw();
    }
}
