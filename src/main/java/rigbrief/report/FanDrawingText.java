package rigbrief.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rigbrief.assembly.FanPlan;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.part.Place;

/**
 * The fans of a case as a side view in letters: rear at the left, front at the right, panel off.
 */
final class FanDrawingText {
    private static final int LEFT = 8;
    private static final int INNER = 38;
    private static final int ROWS = 9;
    private static final int RIGHT = 9;
    private static final int FIRST_ROW = 3;
    private static final int FIRST_COLUMN = LEFT + 8;
    private static final int ROW_STEP = 2;
    private static final int COLUMN_STEP = 8;
    private static final int SIDE_ROW = 5;
    private static final int SIDE_COLUMN = LEFT + 24;
    private static final int SIDE_STEP = 4;

    private final FanPlan plan;
    private final char[][] cells = new char[ROWS + 4][LEFT + INNER + 2 + RIGHT];
    private final int[] drawn = new int[Place.values().length];

    private FanDrawingText(FanPlan plan) {
        this.plan = plan;
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
    }

    /** The drawing, one string per line. */
    static List<String> lines(FanPlan plan) {
        FanDrawingText drawing = new FanDrawingText(plan);
        drawing.frame();
        for (PlacedFan group : plan.fans()) {
            for (int i = 0; i < group.count(); i++) {
                drawing.fan(group.place(), letter(plan, group));
            }
        }
        List<String> lines = new ArrayList<>();
        for (char[] row : drawing.cells) {
            lines.add(new String(row).stripTrailing());
        }
        // Without fans below nothing is drawn under the case.
        lines.removeIf(line -> line.isEmpty());
        return lines;
    }

    /** The letter that stands for a group of fans, in the drawings and in the list below them. */
    static String letter(FanPlan plan, PlacedFan group) {
        return String.valueOf((char) ('A' + plan.fans().indexOf(group)));
    }

    private void frame() {
        String edge = "+" + "-".repeat(INNER) + "+";
        put(1, LEFT, edge);
        put(ROWS + 2, LEFT, edge);
        for (int row = 2; row < ROWS + 2; row++) {
            put(row, LEFT, "|");
            put(row, LEFT + INNER + 1, "|");
        }
        put(FIRST_ROW, LEFT + 5, "[ cooler ]");
        put(ROWS - 2, LEFT + 2, "[ card" + " ".repeat(16) + "]");
        put(0, 0, "rear");
        put(0, LEFT + INNER + 3, "front");
    }

    /** Air comes in at front, bottom and side, and goes out behind and above. */
    private void fan(Place place, String letter) {
        int index = drawn[place.ordinal()]++;
        int row = Math.min(ROWS + 1, FIRST_ROW + ROW_STEP * index);
        int column = Math.min(LEFT + INNER, FIRST_COLUMN + COLUMN_STEP * index);
        switch (place) {
            case FRONT -> put(row, LEFT + INNER + 1, letter + " <==");
            case REAR -> put(row, LEFT - "<== ".length(), "<== " + letter);
            case TOP -> {
                put(1, column, letter);
                put(0, column, "^");
            }
            case BOTTOM -> {
                put(ROWS + 2, column, letter);
                put(ROWS + 3, column, "^");
            }
            case SIDE -> put(SIDE_ROW, SIDE_COLUMN + SIDE_STEP * index, "(" + letter + ")");
        }
    }

    private void put(int row, int column, String words) {
        for (int i = 0; i < words.length() && column + i < cells[row].length; i++) {
            cells[row][column + i] = words.charAt(i);
        }
    }
}
