package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.BoardSeat;
import rigbrief.build.Build;
import rigbrief.part.BoardForm;
import rigbrief.part.CoolerType;
import rigbrief.part.Fact;
import rigbrief.part.Slot;
import rigbrief.part.SupplyForm;
import rigbrief.quantity.Length;
import rigbrief.report.FanDrawing.Box;
import rigbrief.report.FanDrawing.Look;
import rigbrief.report.page.Words;

/** The parts inside a case as they are seen from its open side, each with its line of the key. */
final class CaseParts {
    /** Where the board's upper corner behind lies inside the case, in mm. Usual, not stated. */
    private static final int BOARD_FROM_REAR_MM = 12;

    private static final int BOARD_FROM_TOP_MM = 34;

    /** From the board's upper edge to the first opening for cards, in mm: the ATX hole pattern. */
    private static final int FIRST_OPENING_MM = 163;

    private static final double OPENING_MM = 20.32;
    private static final int LONG_SLOT_LANES = 16;
    private static final int COOLER_FROM_REAR_MM = 55;
    private static final int COOLER_FROM_TOP_MM = 25;
    private static final int SMALL_COOLER_MM = 92;

    /** Bodies of supplies as the ATX and SFX design guides have them, in mm. */
    private static final int ATX_SUPPLY_MM = 86;

    private static final int ATX_SUPPLY_LENGTH_MM = 140;
    private static final double SFX_SUPPLY_MM = 63.5;
    private static final int SFX_SUPPLY_LENGTH_MM = 100;
    private static final int FROM_WALL_MM = 8;

    private final Build build;
    private final CaseScale scale;
    private final Words words;
    private final List<Box> boxes = new ArrayList<>();
    private final List<String> key = new ArrayList<>();

    CaseParts(Build build, CaseScale scale, Words words) {
        this.build = build;
        this.scale = scale;
        this.words = words;
        board();
        cooler();
        if (build.has(Slot.GRAPHICS)) {
            card();
        }
        supply();
    }

    /** One box per part, in the order of the key. */
    List<Box> boxes() {
        return boxes;
    }

    /** One line per part. */
    List<String> key() {
        return key;
    }

    private void add(double xMm, double yMm, double widthMm, double heightMm, Look look) {
        boxes.add(
                new Box(
                        scale.left() + scale.units(xMm),
                        scale.top() + scale.units(yMm),
                        scale.units(widthMm),
                        scale.units(heightMm),
                        look));
    }

    /** Higher up where the supply would not fit below the board otherwise. */
    private int boardTopMm() {
        int left =
                build.pcCase().heightMm()
                        - BoardSeat.widthMm(build.board().form())
                        - ATX_SUPPLY_MM
                        - 2 * FROM_WALL_MM;
        return Math.max(FROM_WALL_MM, Math.min(BOARD_FROM_TOP_MM, left));
    }

    private void board() {
        BoardForm form = build.board().form();
        add(
                BOARD_FROM_REAR_MM,
                boardTopMm(),
                BoardSeat.depthMm(form),
                BoardSeat.widthMm(form),
                Look.PART);
        key.add(
                words.text(
                        "draw.board",
                        build.board().name(),
                        BoardSeat.depthMm(form),
                        BoardSeat.widthMm(form)));
    }

    private void cooler() {
        int sizeMm = build.has(Slot.COOLER) ? build.cooler().fanSizeMm() : SMALL_COOLER_MM;
        boolean liquid = build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID;
        int shownMm = liquid || sizeMm == 0 ? SMALL_COOLER_MM : sizeMm;
        add(
                BOARD_FROM_REAR_MM + COOLER_FROM_REAR_MM,
                boardTopMm() + COOLER_FROM_TOP_MM,
                shownMm,
                shownMm,
                Look.PART);
        if (!build.has(Slot.COOLER)) {
            key.add(words.text("draw.boxed"));
        } else if (liquid) {
            key.add(words.text("draw.block", build.cooler().name(), build.cooler().radiatorMm()));
        } else {
            key.add(
                    words.text(
                            "draw.cooler",
                            build.cooler().name(),
                            length(build.cooler().height()),
                            length(build.pcCase().coolerHeight())));
        }
    }

    private void card() {
        int slots = build.graphics().wholeSlots();
        add(
                BOARD_FROM_REAR_MM,
                boardTopMm() + FIRST_OPENING_MM + (opening() - 1) * OPENING_MM,
                build.graphics().length().map(Length::millimetres).or(SMALL_COOLER_MM),
                slots * OPENING_MM,
                Look.PART);
        key.add(
                words.text(
                        "draw.card",
                        build.graphics().name(),
                        length(build.graphics().length()),
                        length(build.pcCase().graphicsLength()),
                        slots));
    }

    /** The opening of the first long slot, where the card goes. */
    private int opening() {
        return build.board().slots().stream()
                .filter(slot -> slot.lanes() == LONG_SLOT_LANES)
                .mapToInt(slot -> slot.position())
                .min()
                .orElse(1);
    }

    /** No data sheet says where it goes: below and behind, or where nothing else is. */
    private void supply() {
        double lengthMm =
                build.supply()
                        .length()
                        .map(Length::millimetres)
                        .or(
                                build.supply().form() == SupplyForm.ATX
                                        ? ATX_SUPPLY_LENGTH_MM
                                        : SFX_SUPPLY_LENGTH_MM);
        double heightMm = build.supply().form() == SupplyForm.ATX ? ATX_SUPPLY_MM : SFX_SUPPLY_MM;
        double below = build.pcCase().heightMm() - heightMm - FROM_WALL_MM;
        double before = build.pcCase().depthMm() - lengthMm - 4 * FROM_WALL_MM;
        List<Box> places = new ArrayList<>();
        for (double[] corner :
                List.of(
                        new double[] {FROM_WALL_MM, below},
                        new double[] {before, below},
                        new double[] {before, FROM_WALL_MM})) {
            places.add(
                    new Box(
                            scale.left() + scale.units(corner[0]),
                            scale.top() + scale.units(corner[1]),
                            scale.units(lengthMm),
                            scale.units(heightMm),
                            Look.USUAL));
        }
        boxes.add(
                places.stream()
                        .filter(place -> boxes.stream().noneMatch(place::meets))
                        .findFirst()
                        .orElse(places.get(0)));
        key.add(words.text("draw.supply", build.supply().name(), length(build.supply().length())));
    }

    private String length(Fact<Length> length) {
        return length.map(Length::toString).or(words.text("header.not-stated"));
    }
}
