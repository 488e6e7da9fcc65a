package rigbrief.goal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Board;
import rigbrief.part.Fact;
import rigbrief.part.FamilySupport;
import rigbrief.part.M2Slot;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;

/**
 * What can be added later without replacing anything else.
 *
 * <p>Formula: mean of five shares: free memory slots over 2, free M.2 drive slots over 2, spare
 * supply watts over 300 (rating less sustained load over the planned share), 1 when the board
 * supports another processor family, 1 when a card 30 mm longer that draws 80 W more would fit;
 * each clipped to 0..1.
 *
 * <p>Common practice: two modules, two drives, 300 W, and a step of 30 mm and 80 W between card
 * classes.
 */
public final class UpgradeRoomGoal implements Goal {
    private static final GoalInfo INFO =
            new GoalInfo(
                    "upgrade-room",
                    "There is room to grow",
                    "mean of five: free memory slots, free drive places, spare watts, another processor family, room for the next card class");
    private static final Set<Slot> READS =
            Collections.unmodifiableSet(
                    EnumSet.of(
                            Slot.PROCESSOR,
                            Slot.BOARD,
                            Slot.MEMORY,
                            Slot.GRAPHICS,
                            Slot.DRIVE,
                            Slot.SECOND_DRIVE,
                            Slot.SUPPLY,
                            Slot.COOLER,
                            Slot.CASE,
                            Slot.FANS,
                            Slot.WIRELESS));

    @Override
    public GoalInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** Free memory slots that are plenty. Common practice. */
    public static final double MODULES = 2;

    /** Free drive places that are plenty. Common practice. */
    public static final double DRIVES = 2;

    /** Spare watts that are plenty. Common practice. */
    public static final double SPARE_W = 300;

    /** How much longer the next card class is, in mm. Common practice. */
    public static final int LONGER_MM = 30;

    /** How much more it draws, in W. Common practice. */
    public static final double STRONGER_W = 80;

    /** Length of an ordinary card, for a machine that has none yet, in mm. Common practice. */
    private static final int ORDINARY_CARD_MM = 270;

    private static final int SHARES = 5;

    @Override
    public int utility(Assessment it) {
        double sum =
                memory(it.build())
                        + drives(it)
                        + supply(it, 0)
                        + (otherFamily(it.build()) ? 1 : 0)
                        + (nextCard(it) ? 1 : 0);
        return Goal.tenThousandths(sum / SHARES);
    }

    @Override
    public String because(Assessment it) {
        return "free memory slots: %d, free M.2 slots: %d, %s, %s"
                .formatted(
                        Math.max(0, it.build().board().memorySlots() - it.build().memoryModules()),
                        freeM2(it),
                        otherFamily(it.build())
                                ? "the board takes other processor families"
                                : "no other processor family",
                        nextCard(it)
                                ? "the next card class fits"
                                : "no room for the next card class");
    }

    /**
     * The amounts that the shares are made of.
     *
     * @param freeMemorySlots memory slots without a module
     * @param freeM2 M.2 places for drives without one
     * @param spareW watts of the supply beyond the planned share
     * @param spareStrongerW the same with the next card class
     * @param otherFamily whether the board takes another processor family
     * @param cardRoomMm length there is for a card, what stands in its way taken off
     * @param cardMm length of the card there is, or of one a step below an ordinary one
     * @param nextCard whether the next card class would fit
     */
    public record Room(
            int freeMemorySlots,
            int freeM2,
            double spareW,
            double spareStrongerW,
            boolean otherFamily,
            int cardRoomMm,
            int cardMm,
            boolean nextCard) {}

    /** The amounts for a build. */
    public static Room room(Assessment it) {
        Build build = it.build();
        return new Room(
                build.board().memorySlots() - build.memoryModules(),
                freeM2(it),
                spareW(it, 0),
                spareW(it, STRONGER_W),
                otherFamily(build),
                cardRoomMm(it),
                cardMm(build),
                nextCard(it));
    }

    private static double memory(Build build) {
        return clip((build.board().memorySlots() - build.memoryModules()) / MODULES);
    }

    private static double drives(Assessment it) {
        return clip(freeM2(it) / DRIVES);
    }

    private static int freeM2(Assessment it) {
        int free = 0;
        for (M2Slot slot : it.build().board().m2()) {
            free += slot.forWireless() ? 0 : 1;
        }
        for (int used : it.layout().driveM2()) {
            free -= used > 0 ? 1 : 0;
        }
        return free;
    }

    private static double supply(Assessment it, double moreW) {
        return clip(spareW(it, moreW) / SPARE_W);
    }

    private static double spareW(Assessment it, double moreW) {
        double share = it.brief().headroom().supplySharePercent() / 100.0;
        return it.build().supply().watts() - (it.power().sustainedW() + moreW) / share;
    }

    private static boolean otherFamily(Build build) {
        Board board = build.board();
        for (FamilySupport support : board.families().or(List.of())) {
            if (!support.family().equals(build.processor().family())) {
                return true;
            }
        }
        return false;
    }

    private static boolean nextCard(Assessment it) {
        return cardMm(it.build()) + LONGER_MM <= cardRoomMm(it) && spareW(it, STRONGER_W) >= 0;
    }

    private static int cardRoomMm(Assessment it) {
        Fact<Length> room = it.build().pcCase().graphicsLength();
        return room.map(Length::millimetres).or(0) - it.layout().cardLengthTakenMm();
    }

    private static int cardMm(Build build) {
        return build.has(Slot.GRAPHICS)
                ? build.graphics().length().map(Length::millimetres).or(Integer.MAX_VALUE / 2)
                : ORDINARY_CARD_MM - LONGER_MM;
    }

    private static double clip(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
