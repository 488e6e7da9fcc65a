package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assembly.FanPlan;
import rigbrief.assembly.FanPlan.Direction;
import rigbrief.assembly.FanPlan.FreePosition;
import rigbrief.assembly.FanPlan.Origin;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.build.Build;
import rigbrief.part.Place;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;
import rigbrief.report.FanDrawing.Arrow;
import rigbrief.report.FanDrawing.Box;
import rigbrief.report.FanDrawing.Label;
import rigbrief.report.FanDrawing.Look;
import rigbrief.report.page.Words;

/** Draws a case from its outline inwards, then its fans, then the words around it. */
final class CaseDrafting {
    /** Usual depth of a fan's frame, in mm. */
    private static final int FAN_MM = 25;

    private static final int RADIATOR_MM = 27;
    private static final int FROM_EDGE_MM = 14;
    private static final int ARROW = 40;
    private static final int HEAD = 8;
    private static final int GAP = 6;
    private static final int LINE = 17;
    private static final int RING = 12;
    private static final int STEP = 6;
    private static final int BALANCE = 128;
    private static final int BAR = 14;

    private final Build build;
    private final FanPlan plan;
    private final Words words;
    private final CaseScale scale;
    private final CaseParts parts;
    private final List<Box> fans = new ArrayList<>();
    private final List<Arrow> arrows = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();

    CaseDrafting(Build build, FanPlan plan, Words words) {
        this.build = build;
        this.plan = plan;
        this.words = words;
        this.scale = CaseScale.of(build.pcCase());
        this.parts = new CaseParts(build, scale, words);
    }

    FanDrawing draw() {
        for (Place place : Place.values()) {
            side(place);
        }
        numbers();
        note(scale.left(), scale.top() - GAP, words.text("place.rear"), "start");
        note(scale.right(), scale.top() - GAP, words.text("place.front"), "end");
        int below = plan.fans().stream().anyMatch(fan -> fan.place() == Place.BOTTOM) ? 1 : 0;
        int foot = scale.bottom() + (below == 1 ? scale.above() : 2 * GAP);
        size(foot);
        int bottom = balance(foot + 2 * LINE);
        List<Box> boxes = new ArrayList<>();
        boxes.add(new Box(scale.left(), scale.top(), scale.width(), scale.height(), Look.CASE));
        boxes.addAll(parts.boxes());
        boxes.addAll(fans);
        return new FanDrawing(scale.wholeWidth(), bottom, boxes, arrows, labels, parts.key());
    }

    /** All that is on one side, in a row from the end where the processor sits. */
    private void side(Place place) {
        List<PlacedFan> here = plan.fans().stream().filter(fan -> fan.place() == place).toList();
        int wholeMm = here.stream().mapToInt(fan -> fan.count() * fan.sizeMm()).sum();
        for (FreePosition free : plan.free()) {
            if (free.place() == place) {
                wholeMm += free.room().count() * free.room().sizeMm();
            }
        }
        int along = scale.units(start(place, wholeMm));
        for (PlacedFan group : here) {
            int from = along;
            for (int i = 0; i < group.count(); i++) {
                fan(place, along, group.sizeMm(), group);
                along += scale.units(group.sizeMm());
            }
            told(place, (from + along) / 2, group);
        }
        for (FreePosition free : plan.free()) {
            for (int i = 0; free.place() == place && i < free.room().count(); i++) {
                fans.add(box(place, along, free.room().sizeMm(), 0, FAN_MM, Look.FREE));
                along += scale.units(free.room().sizeMm());
            }
        }
    }

    /** In the middle where they fill the side, else near the processor. */
    private double start(Place place, int wholeMm) {
        int sideMm =
                place == Place.FRONT || place == Place.REAR || place == Place.SIDE
                        ? build.pcCase().heightMm()
                        : build.pcCase().depthMm();
        boolean middle = place == Place.FRONT || place == Place.BOTTOM || place == Place.SIDE;
        double room = Math.max(0, (sideMm - wholeMm) / 2.0);
        double most = Math.max(0, sideMm - wholeMm);
        return middle
                ? room
                : Math.min(most, place == Place.REAR ? 2.5 * FROM_EDGE_MM : 2 * FROM_EDGE_MM);
    }

    private void fan(Place place, int along, int sizeMm, PlacedFan group) {
        Look look =
                switch (group.origin()) {
                    case CASE -> Look.FAN;
                    case ADDED -> Look.BOUGHT;
                    case RADIATOR -> Look.RADIATOR;
                };
        fans.add(box(place, along, sizeMm, 0, FAN_MM, look));
        if (group.origin() == Origin.RADIATOR) {
            int thickMm = build.cooler().thickness().map(Length::millimetres).or(RADIATOR_MM);
            fans.add(box(place, along, sizeMm, FAN_MM, thickMm, Look.PART));
        }
        arrow(place, along + scale.units(sizeMm) / 2, group.direction());
    }

    /** A box along a side, so many millimetres inside of it. */
    private Box box(Place place, int along, int sizeMm, int inMm, int deepMm, Look look) {
        int size = scale.units(sizeMm) - 1;
        int in = scale.units(inMm);
        int deep = scale.units(deepMm);
        int x = scale.left() + along;
        int y = scale.top() + along;
        return switch (place) {
            case FRONT -> new Box(scale.right() - in - deep, y, deep, size, look);
            case REAR -> new Box(scale.left() + in, y, deep, size, look);
            case TOP -> new Box(x, scale.top() + in, size, deep, look);
            case BOTTOM -> new Box(x, scale.bottom() - in - deep, size, deep, look);
            case SIDE ->
                    new Box(
                            scale.right() - size - 3 * Math.max(deep, scale.units(FAN_MM)),
                            y,
                            size,
                            size,
                            look);
        };
    }

    private void arrow(Place place, int along, Direction direction) {
        boolean in = direction == Direction.IN;
        int x = scale.left() + along;
        int y = scale.top() + along;
        switch (place) {
            case FRONT -> flat(scale.right() + GAP, scale.right() + GAP + ARROW, y, in);
            case REAR -> flat(scale.left() - GAP, scale.left() - GAP - ARROW, y, in);
            case TOP -> upright(scale.top() - GAP, scale.top() - GAP - ARROW, x, in);
            case BOTTOM -> upright(scale.bottom() + GAP, scale.bottom() + GAP + ARROW, x, in);
            case SIDE -> {
                // Towards or from the reader: the square itself stands for it.
            }
        }
    }

    private void flat(int near, int far, int y, boolean in) {
        int tip = in ? near : far;
        int back = tip < (in ? far : near) ? tip + HEAD : tip - HEAD;
        arrows.add(
                new Arrow(
                        "M%d %dH%dM%d %dL%d %dL%d %d"
                                .formatted(
                                        in ? far : near,
                                        y,
                                        tip,
                                        back,
                                        y - HEAD,
                                        tip,
                                        y,
                                        back,
                                        y + HEAD),
                        in));
    }

    private void upright(int near, int far, int x, boolean in) {
        int tip = in ? near : far;
        int back = tip < (in ? far : near) ? tip + HEAD : tip - HEAD;
        arrows.add(
                new Arrow(
                        "M%d %dV%dM%d %dL%d %dL%d %d"
                                .formatted(
                                        x,
                                        in ? far : near,
                                        tip,
                                        x - HEAD,
                                        back,
                                        x,
                                        tip,
                                        x + HEAD,
                                        back),
                        in));
    }

    /** A group's letter, what it is, and what it moves, beyond its arrows. */
    private void told(Place place, int along, PlacedFan group) {
        List<String> lines = new ArrayList<>();
        lines.add(FanDrawingText.letter(plan, group));
        lines.add(group.count() + " \u00d7 " + group.sizeMm() + " mm");
        lines.add(
                group.origin() == Origin.RADIATOR
                        ? words.text("draw.radiator")
                        : FanWords.flow(group, words));
        speed(group).ifPresent(lines::add);
        int beyond = GAP + ARROW + GAP;
        int x = scale.left() + along;
        int y = scale.top() + along;
        int half = lines.size() * LINE / 2;
        switch (place) {
            case FRONT -> lines(scale.right() + beyond, y - half, lines, "start");
            case REAR -> lines(scale.left() - beyond, y - half, lines, "end");
            case TOP -> row(x, scale.top() - beyond - LINE / 2, lines);
            case BOTTOM -> row(x, scale.bottom() + beyond + 2 * LINE, lines);
            case SIDE -> {
                Box side = fans.get(fans.size() - 1);
                lines(
                        side.x() + side.width() / 2,
                        side.y() + side.height() / 2 - half,
                        lines,
                        "middle");
            }
        }
    }

    /** Turns of a bought fan under load; the turns of others are not stated. */
    private Optional<String> speed(PlacedFan group) {
        return group.origin() == Origin.ADDED && build.has(Slot.FANS)
                ? Optional.of(
                        Math.round(plan.speedShare() * build.fan().maxRpm() / 10) * 10
                                + " "
                                + words.text("draw.rpm"))
                : Optional.empty();
    }

    private void lines(int x, int y, List<String> lines, String anchor) {
        for (int i = 0; i < lines.size(); i++) {
            String sort = i == 0 ? "mark" : "note";
            labels.add(new Label(x, y + (i + 1) * LINE, lines.get(i), anchor, sort));
        }
    }

    /** Above and below there is room for a letter and two short lines. */
    private void row(int x, int y, List<String> lines) {
        labels.add(new Label(x, y - LINE, lines.get(0), "middle", "mark"));
        note(x, y, String.join(", ", lines.subList(1, Math.min(3, lines.size()))), "middle");
    }

    private void note(int x, int y, String text, String anchor) {
        labels.add(new Label(x, y, text, anchor, "note"));
    }

    private void size(int y) {
        note(
                scale.left() + scale.width() / 2,
                y + LINE,
                words.text("draw.size", build.pcCase().depthMm(), build.pcCase().heightMm()),
                "middle");
    }

    /** Each part's number where neither another part, nor a fan, nor another number lies. */
    private void numbers() {
        List<int[]> taken = new ArrayList<>();
        for (int i = 0; i < parts.boxes().size(); i++) {
            int[] at = free(i, taken);
            taken.add(at);
            labels.add(new Label(at[0], at[1], Integer.toString(i + 1), "middle", "number"));
        }
    }

    private int[] free(int index, List<int[]> taken) {
        Box part = parts.boxes().get(index);
        for (int y = part.y() + RING + 2; y <= part.y() + part.height() - RING; y += STEP) {
            for (int x = part.x() + part.width() - RING - 2; x >= part.x() + RING; x -= STEP) {
                if (clear(index, x, y, taken)) {
                    return new int[] {x, y};
                }
            }
        }
        return new int[] {part.x() + part.width() / 2, part.y() + part.height() / 2};
    }

    private boolean clear(int index, int x, int y, List<int[]> taken) {
        for (int i = 0; i < parts.boxes().size(); i++) {
            if (i != index && i > 0 && parts.boxes().get(i).holds(x, y, RING)) {
                return false;
            }
        }
        boolean fan = fans.stream().anyMatch(box -> box.holds(x, y, RING));
        return !fan
                && taken.stream().noneMatch(at -> Math.hypot(at[0] - x, at[1] - y) < 2.5 * RING);
    }

    /** What is blown in and drawn out, as two bars of one scale; gives the lower edge. */
    private int balance(int y) {
        double most = Math.max(plan.balance().inM3h(), plan.balance().outM3h());
        if (most <= 0) {
            return y;
        }
        int room = scale.wholeWidth() - 2 * BALANCE;
        bar(y, room, plan.balance().inM3h() / most, Look.IN, "draw.in", plan.balance().inM3h());
        bar(
                y + BAR + GAP,
                room,
                plan.balance().outM3h() / most,
                Look.OUT,
                "draw.out",
                plan.balance().outM3h());
        return y + 2 * (BAR + GAP) + GAP;
    }

    private void bar(int y, int room, double share, Look look, String key, double flowM3h) {
        int width = Math.max(1, (int) Math.round(room * share));
        fans.add(new Box(BALANCE, y, width, BAR, look));
        note(BALANCE - GAP, y + BAR - 2, words.text(key), "end");
        note(BALANCE + width + GAP, y + BAR - 2, Rounded.print(0, flowM3h, " m³/h"), "start");
    }
}
