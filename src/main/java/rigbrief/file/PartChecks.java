package rigbrief.file;

import rigbrief.file.cell.Row;
import rigbrief.part.Board;
import rigbrief.part.Cooler;
import rigbrief.part.CoolerType;
import rigbrief.part.ExpansionSlot;
import rigbrief.part.Part;
import rigbrief.part.Processor;
import rigbrief.part.Share;

/** What must agree between the cells of one part. */
final class PartChecks {
    private PartChecks() {}

    /** Reports cells that contradict one another. */
    static void check(Part part, Row row) {
        if (part instanceof Board board) {
            for (Share share : board.shares()) {
                check(share, board, row);
            }
        } else if (part instanceof Cooler cooler) {
            check(cooler, row);
        } else if (part instanceof Processor processor) {
            check(processor, row);
        }
    }

    private static void check(Share share, Board board, Row row) {
        if (share.m2() > board.m2().size()) {
            String slots = "an M.2 slot from 1 to " + board.m2().size();
            shareFault(row, "m2-" + share.m2(), board.m2().isEmpty() ? "no M.2 slot" : slots);
        }
        for (int port : share.sataPorts()) {
            if (port < 1 || port > board.sataPorts()) {
                String ports = "a SATA port from 1 to " + board.sataPorts();
                shareFault(row, "sata-" + port, board.sataPorts() == 0 ? "no SATA port" : ports);
            }
        }
        for (int position : share.slotPositions()) {
            if (board.slots().stream()
                    .mapToInt(ExpansionSlot::position)
                    .noneMatch(p -> p == position)) {
                shareFault(row, "slot-" + position, "the position of a slot in the slots column");
            }
        }
    }

    private static void shareFault(Row row, String found, String expected) {
        row.fault("shares", found, expected, "correct it, or the column that counts them");
    }

    private static void check(Cooler cooler, Row row) {
        boolean liquid = cooler.type() == CoolerType.LIQUID;
        if (liquid && cooler.radiatorMm() == 0) {
            row.fault(
                    "radiator_mm",
                    row.cell("radiator_mm"),
                    "the radiator's length class for a liquid cooler",
                    "write 120, 240, 280, 360 or as its maker says");
        } else if (!liquid && cooler.radiatorMm() > 0) {
            row.fault(
                    "radiator_mm",
                    row.cell("radiator_mm"),
                    "no radiator on an air cooler",
                    "empty the cell, or write liquid as its type");
        }
    }

    private static void check(Processor processor, Row row) {
        if (processor.boostGhz() < processor.baseGhz()) {
            row.fault(
                    "boost_ghz",
                    row.cell("boost_ghz"),
                    "at least base_ghz, " + row.cell("base_ghz"),
                    "look both figures up again");
        }
    }
}
