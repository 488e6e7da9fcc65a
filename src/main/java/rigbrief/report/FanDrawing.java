package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.FanPlan;
import rigbrief.assembly.FanPlan.FreePosition;
import rigbrief.assembly.FanPlan.Origin;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.build.Build;
import rigbrief.part.BoardForm;
import rigbrief.part.PcCase;
import rigbrief.part.Place;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;

/**
 * The fans of a case as a side view to scale: rear at the left, front at the right, panel off.
 *
 * <p>Case, board, card and fans have their own sizes; where the board begins is usual, not stated.
 * Shapes only: the page's template draws them.
 *
 * @param width width of the drawing in its own units
 * @param height height of the drawing
 * @param bodies case, board, cooler and card
 * @param fans the fans and the places left empty
 * @param arrows the air
 * @param labels the letters that stand for the groups
 */
public record FanDrawing(
        int width,
        int height,
        List<Body> bodies,
        List<Body> fans,
        List<Arrow> arrows,
        List<Label> labels) {
    /**
     * A rectangle.
     *
     * @param x left edge
     * @param y upper edge
     * @param width width
     * @param height height
     * @param look how it is drawn: {@code body}, {@code part}, {@code fan}, {@code bought} or
     *     {@code free}
     */
    public record Body(int x, int y, int width, int height, String look) {}

    /**
     * An arrow.
     *
     * @param path its line and head, as an SVG path
     */
    public record Arrow(String path) {}

    /**
     * A letter or a word.
     *
     * @param x where it is centred
     * @param y its base line
     * @param text the letters
     * @param small whether it names a part of the machine, not a group of fans
     */
    public record Label(int x, int y, String text, boolean small) {}

    private static final int SPAN = 300;
    private static final int MARGIN = 64;
    private static final int FAN_DEPTH = 12;
    private static final int ARROW = 30;
    private static final int HEAD = 7;
    private static final int GAP = 4;

    /** Where the board's upper corner behind lies inside the case, in mm. Usual, not stated. */
    private static final int BOARD_FROM_REAR_MM = 12;

    private static final int BOARD_FROM_TOP_MM = 32;

    /** From the board's upper edge to the first opening for cards, in mm: the ATX hole pattern. */
    private static final int FIRST_OPENING_MM = 163;

    private static final double OPENING_MM = 20.32;
    private static final int LONG_SLOT_LANES = 16;
    private static final int COOLER_FROM_REAR_MM = 55;
    private static final int COOLER_FROM_TOP_MM = 30;
    private static final int COOLER_MM = 92;
    private static final int BOARD_LABEL = 22;
    private static final int BOARD_LABEL_MM = 150;
    private static final int FOOT = 16;

    /** The drawing for a build's fans. */
    static FanDrawing of(Build build, FanPlan plan) {
        return new Drafting(build.pcCase()).draw(build, plan);
    }

    /** Draws, from the case outwards. */
    private static final class Drafting {
        private final double scale;
        private final int caseWidth;
        private final int caseHeight;
        private final int[] along = new int[Place.values().length];
        private final List<Body> bodies = new ArrayList<>();
        private final List<Body> fans = new ArrayList<>();
        private final List<Arrow> arrows = new ArrayList<>();
        private final List<Label> labels = new ArrayList<>();

        Drafting(PcCase pcCase) {
            scale = (double) SPAN / Math.max(pcCase.depthMm(), pcCase.heightMm());
            caseWidth = scaled(pcCase.depthMm());
            caseHeight = scaled(pcCase.heightMm());
        }

        FanDrawing draw(Build build, FanPlan plan) {
            bodies.add(new Body(MARGIN, MARGIN, caseWidth, caseHeight, "body"));
            inside(build);
            for (PlacedFan group : plan.fans()) {
                group(group, FanDrawingText.letter(plan, group));
            }
            plan.free().forEach(this::free);
            boolean below = along[Place.BOTTOM.ordinal()] > 0;
            int bottom = MARGIN + caseHeight + (below ? MARGIN : FOOT);
            labels.add(new Label(MARGIN / 2, MARGIN - GAP, "rear", true));
            labels.add(new Label(MARGIN + caseWidth + MARGIN / 2, MARGIN - GAP, "front", true));
            return new FanDrawing(2 * MARGIN + caseWidth, bottom, bodies, fans, arrows, labels);
        }

        private int scaled(double mm) {
            return (int) Math.round(mm * scale);
        }

        private void inside(Build build) {
            int left = MARGIN + scaled(BOARD_FROM_REAR_MM);
            int top = MARGIN + scaled(BOARD_FROM_TOP_MM);
            BoardForm form = build.board().form();
            part(left, top, depthMm(form), heightMm(form), "board");
            part(
                    left + scaled(COOLER_FROM_REAR_MM),
                    top + scaled(COOLER_FROM_TOP_MM),
                    COOLER_MM,
                    COOLER_MM,
                    "cooler");
            if (build.has(Slot.GRAPHICS)) {
                int lengthMm = build.graphics().length().map(Length::millimetres).or(COOLER_MM);
                part(
                        left,
                        top + scaled(FIRST_OPENING_MM + (opening(build) - 1) * OPENING_MM),
                        lengthMm,
                        build.graphics().wholeSlots() * OPENING_MM,
                        "card");
            }
        }

        /** The opening of the first long slot, where the card goes. */
        private static int opening(Build build) {
            return build.board().slots().stream()
                    .filter(slot -> slot.lanes() == LONG_SLOT_LANES)
                    .mapToInt(slot -> slot.position())
                    .min()
                    .orElse(1);
        }

        private void part(int x, int y, double widthMm, double heightMm, String name) {
            int width = scaled(widthMm);
            int height = scaled(heightMm);
            bodies.add(new Body(x, y, width, height, "part"));
            // The board's name stands in the strip that neither cooler nor card covers.
            boolean board = name.equals("board");
            labels.add(
                    new Label(
                            x + (board ? width - BOARD_LABEL : width / 2),
                            y + (board ? scaled(BOARD_LABEL_MM) : height / 2 + GAP),
                            name,
                            true));
        }

        /** Extent along the rear edge of the case. Published board sizes. */
        private static int heightMm(BoardForm form) {
            return switch (form) {
                case MINI_ITX -> 170;
                case MICRO_ATX -> 244;
                case ATX, E_ATX -> 305;
            };
        }

        private static int depthMm(BoardForm form) {
            return switch (form) {
                case MINI_ITX -> 170;
                case MICRO_ATX, ATX -> 244;
                case E_ATX -> 277;
            };
        }

        private void group(PlacedFan group, String letter) {
            if (group.origin() == Origin.RADIATOR) {
                radiator(group);
            }
            for (int i = 0; i < group.count(); i++) {
                int from = take(group.place(), group.sizeMm());
                String look = group.origin() == Origin.CASE ? "fan" : "bought";
                boolean radiator = group.origin() == Origin.RADIATOR;
                fan(group.place(), from, scaled(group.sizeMm()), look, letter, radiator);
            }
        }

        /** The radiator lies behind its fans, as long as all of them. */
        private void radiator(PlacedFan group) {
            int from = along[group.place().ordinal()] + 2 * GAP;
            int length = group.count() * (scaled(group.sizeMm()) + GAP) - GAP;
            int right = MARGIN + caseWidth - 2 * FAN_DEPTH - 2;
            int bottom = MARGIN + caseHeight - 2 * FAN_DEPTH - 2;
            int inner = MARGIN + FAN_DEPTH + 2;
            bodies.add(
                    switch (group.place()) {
                        case FRONT, SIDE ->
                                new Body(right, MARGIN + from, FAN_DEPTH, length, "part");
                        case REAR -> new Body(inner, MARGIN + from, FAN_DEPTH, length, "part");
                        case TOP -> new Body(MARGIN + from, inner, length, FAN_DEPTH, "part");
                        case BOTTOM -> new Body(MARGIN + from, bottom, length, FAN_DEPTH, "part");
                    });
        }

        private void free(FreePosition free) {
            for (int i = 0; i < free.room().count(); i++) {
                int from = take(free.place(), free.room().sizeMm());
                fan(free.place(), from, scaled(free.room().sizeMm()), "free", "", false);
            }
        }

        /** Reserves room for a fan along a side; gives where it begins. */
        private int take(Place place, int sizeMm) {
            int from = along[place.ordinal()];
            along[place.ordinal()] = from + scaled(sizeMm) + GAP;
            return from + 2 * GAP;
        }

        /** Air comes in at front, bottom and side, and goes out behind and above. */
        private void fan(
                Place place, int from, int size, String look, String letter, boolean radiator) {
            int depth = radiator ? 2 * FAN_DEPTH + 2 : FAN_DEPTH;
            int right = MARGIN + caseWidth;
            int bottom = MARGIN + caseHeight;
            int middle = from + size / 2;
            switch (place) {
                case FRONT -> {
                    fans.add(new Body(right - FAN_DEPTH, MARGIN + from, FAN_DEPTH, size, look));
                    mark(letter, right - depth - 12, MARGIN + middle + 6);
                    flat(letter, right + ARROW + GAP, MARGIN + middle);
                }
                case REAR -> {
                    fans.add(new Body(MARGIN, MARGIN + from, FAN_DEPTH, size, look));
                    mark(letter, MARGIN + depth + 12, MARGIN + middle + 6);
                    flat(letter, MARGIN - GAP, MARGIN + middle);
                }
                case TOP -> {
                    fans.add(new Body(MARGIN + from, MARGIN, size, FAN_DEPTH, look));
                    mark(letter, MARGIN + middle, MARGIN + depth + 16);
                    upright(letter, MARGIN + middle, MARGIN - GAP);
                }
                case BOTTOM -> {
                    fans.add(new Body(MARGIN + from, bottom - FAN_DEPTH, size, FAN_DEPTH, look));
                    mark(letter, MARGIN + middle, bottom - depth - 6);
                    upright(letter, MARGIN + middle, bottom + ARROW + GAP);
                }
                case SIDE -> {
                    int x = right - 2 * FAN_DEPTH - size;
                    fans.add(new Body(x, MARGIN + from + 2 * FAN_DEPTH, size, size, look));
                    mark(letter, x + size / 2, MARGIN + middle + 2 * FAN_DEPTH + 6);
                }
            }
        }

        private void mark(String letter, int x, int y) {
            if (!letter.isEmpty()) {
                labels.add(new Label(x, y, letter, false));
            }
        }

        /** An arrow to the left that begins at x. */
        private void flat(String letter, int x, int y) {
            if (!letter.isEmpty()) {
                int tip = x - ARROW;
                arrows.add(
                        new Arrow(
                                "M%d %dH%dM%d %dL%d %dL%d %d"
                                        .formatted(
                                                x,
                                                y,
                                                tip,
                                                tip + HEAD,
                                                y - HEAD,
                                                tip,
                                                y,
                                                tip + HEAD,
                                                y + HEAD)));
            }
        }

        /** An arrow upwards that begins at y. */
        private void upright(String letter, int x, int y) {
            if (!letter.isEmpty()) {
                int tip = y - ARROW;
                arrows.add(
                        new Arrow(
                                "M%d %dV%dM%d %dL%d %dL%d %d"
                                        .formatted(
                                                x,
                                                y,
                                                tip,
                                                x - HEAD,
                                                tip + HEAD,
                                                x,
                                                tip,
                                                x + HEAD,
                                                tip + HEAD)));
            }
        }
    }
}
