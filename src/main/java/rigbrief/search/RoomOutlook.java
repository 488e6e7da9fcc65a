package rigbrief.search;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.part.Board;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.Memory;
import rigbrief.part.PcCase;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;

/** Upper bounds on the room to grow: its five parts, as far as they are decided. */
final class RoomOutlook {
    private final Brief brief;
    private final int mostSupplyW;
    private final int leastModules;
    private final boolean onlyM2Drives;

    RoomOutlook(Problem problem) {
        this.brief = problem.assessor().brief();
        int watts = 0;
        for (Candidate candidate : problem.candidates().of(Slot.SUPPLY)) {
            watts = Math.max(watts, ((Supply) candidate.partOrNull()).watts());
        }
        this.mostSupplyW = watts;
        int modules = Integer.MAX_VALUE;
        for (Candidate candidate : problem.candidates().of(Slot.MEMORY)) {
            modules =
                    Math.min(
                            modules,
                            ((Memory) candidate.partOrNull()).modules() * candidate.pieces());
        }
        this.leastModules = modules;
        this.onlyM2Drives =
                problem.candidates().of(Slot.DRIVE).stream()
                        .allMatch(c -> ((Drive) c.partOrNull()).form().m2());
    }

    int mostSupplyW() {
        return mostSupplyW;
    }

    int leastModules() {
        return leastModules;
    }

    boolean onlyM2Drives() {
        return onlyM2Drives;
    }

    /** Parts of the room to grow, each counting alike. */
    static final int ROOM_PARTS = 5;

    /** Those of them that are the board's. */
    static final int BOARD_ROOM_PARTS = 3;

    private static final double SPARE_W = 300;
    private static final double STRONGER_W = 80;

    /** The most of the room to grow that any completion has, 0 to 1. */
    double share(Unfinished it, Outlook.Pair pair) {
        double sum =
                it.has(Slot.BOARD) ? boardRoom(it, (Board) it.part(Slot.BOARD)) : BOARD_ROOM_PARTS;
        if (pair == null) {
            return (sum + ROOM_PARTS - BOARD_ROOM_PARTS) / ROOM_PARTS;
        }
        int watts = it.has(Slot.SUPPLY) ? ((Supply) it.part(Slot.SUPPLY)).watts() : mostSupplyW;
        double sustainedW = Math.max(pair.sustainedW(), it.assessment().sustainedW());
        sum += spareShare(watts, sustainedW);
        sum += feedsNext(watts, sustainedW) && roomForNext(it) ? 1 : 0;
        return sum / ROOM_PARTS;
    }

    private double boardRoom(Unfinished it, Board board) {
        int modules =
                it.has(Slot.MEMORY)
                        ? ((Memory) it.part(Slot.MEMORY)).modules() * it.pieces(Slot.MEMORY)
                        : leastModules;
        boolean taken =
                it.has(Slot.DRIVE) ? ((Drive) it.part(Slot.DRIVE)).form().m2() : onlyM2Drives;
        return boardRoom((Processor) it.part(Slot.PROCESSOR), board, modules, taken);
    }

    /** The most that a board can have of its parts of the room to grow. */
    double boardRoom(Processor processor, Board board) {
        return boardRoom(processor, board, leastModules, onlyM2Drives);
    }

    private static double boardRoom(
            Processor processor, Board board, int modules, boolean m2Taken) {
        return Outlook.clip((board.memorySlots() - modules) / 2.0)
                + Outlook.clip((m2Places(board) - (m2Taken ? 1 : 0)) / 2.0)
                + (otherFamily(processor, board) ? 1 : 0);
    }

    int m2Places(Unfinished it) {
        return m2Places((Board) it.part(Slot.BOARD));
    }

    static int m2Places(Board board) {
        int places = 0;
        for (var slot : board.m2()) {
            places += slot.forWireless() ? 0 : 1;
        }
        return places;
    }

    /** Utility of the watts that a supply has to spare. */
    double spareShare(int supplyW, double sustainedW) {
        return Outlook.clip(spareW(supplyW, sustainedW) / SPARE_W);
    }

    /** Whether a supply could feed the next card class too. */
    boolean feedsNext(int supplyW, double sustainedW) {
        double share = brief.headroom().supplySharePercent() / 100.0;
        return spareW(supplyW, sustainedW) - STRONGER_W / share >= 0;
    }

    /** Whether the supply that is decided could feed the next card class too, at best. */
    boolean supplyFeedsNext(Unfinished it) {
        return feedsNext(((Supply) it.part(Slot.SUPPLY)).watts(), it.pair().sustainedW());
    }

    private double spareW(int supplyW, double sustainedW) {
        return supplyW - sustainedW / (brief.headroom().supplySharePercent() / 100.0);
    }

    private static boolean otherFamily(Processor processor, Board board) {
        for (var support : board.families().or(List.of())) {
            if (!support.family().equals(processor.family())) {
                return true;
            }
        }
        return false;
    }

    private static boolean roomForNext(Unfinished it) {
        return !it.has(Slot.CASE)
                || takesNext((PcCase) it.part(Slot.CASE), (Graphics) it.part(Slot.GRAPHICS));
    }

    /** Whether a case leaves room for a card of the next class, at best. */
    static boolean takesNext(PcCase pcCase, Graphics card) {
        int have = pcCase.graphicsLength().map(l -> l.millimetres()).or(0);
        int length = card == null ? 240 : card.length().map(l -> l.millimetres()).or(1 << 20);
        return length + 30 <= have;
    }
}
