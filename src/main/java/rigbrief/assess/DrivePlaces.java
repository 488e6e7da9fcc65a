package rigbrief.assess;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.part.Board;
import rigbrief.part.Bus;
import rigbrief.part.Drive;
import rigbrief.part.DriveForm;
import rigbrief.part.M2Slot;
import rigbrief.part.Share;

/**
 * Which slot or bay each drive goes to.
 *
 * @param m2Slots for each drive the number of its M.2 slot from 1; 0 for a bay, -1 when no slot
 *     takes it
 * @param sataPortsLeft SATA ports left; negative when drives want more
 * @param bays35Left 3.5-inch bays left; negative when drives want more
 * @param bays25Left 2.5-inch bays left
 * @param cageInUse whether a 3.5-inch drive sits in the cage
 * @param lostPositions positions of expansion slots that M.2 slots in use switch off
 */
record DrivePlaces(
        List<Integer> m2Slots,
        int sataPortsLeft,
        int bays35Left,
        int bays25Left,
        boolean cageInUse,
        List<Integer> lostPositions) {

    static DrivePlaces of(Build build) {
        List<Drive> drives = build.drives();
        DrivePlaces best = null;
        // Either drive may choose first; the order that places more, then keeps more ports, wins.
        for (int first = 0; first < Math.max(1, drives.size()); first++) {
            DrivePlaces places = place(build, drives, first);
            if (best == null || places.betterThan(best)) {
                best = places;
            }
        }
        return best;
    }

    private boolean betterThan(DrivePlaces other) {
        if (homeless() != other.homeless()) {
            return homeless() < other.homeless();
        }
        return sataPortsLeft > other.sataPortsLeft;
    }

    private int homeless() {
        int homeless = 0;
        for (int slot : m2Slots) {
            if (slot < 0) {
                homeless++;
            }
        }
        return homeless;
    }

    private static DrivePlaces place(Build build, List<Drive> drives, int first) {
        Board board = build.board();
        int[] slots = new int[drives.size()];
        boolean[] used = new boolean[board.m2().size()];
        for (int step = 0; step < drives.size(); step++) {
            int i = (first + step) % drives.size();
            slots[i] = drives.get(i).form().m2() ? slotFor(board, drives.get(i), used) : 0;
        }
        return counted(build, drives, slots, used);
    }

    /**
     * The slot that loses least: fewest shared ports first, then the fastest bus, then the lowest
     * number.
     */
    private static int slotFor(Board board, Drive drive, boolean[] used) {
        int best = -1;
        int bestRank = Integer.MAX_VALUE;
        for (int i = 0; i < board.m2().size(); i++) {
            M2Slot slot = board.m2().get(i);
            if (!used[i] && takes(slot, drive)) {
                int rank = lost(board, i + 1) * 100 + slower(slot, drive);
                if (rank < bestRank) {
                    bestRank = rank;
                    best = i;
                }
            }
        }
        if (best >= 0) {
            used[best] = true;
            return best + 1;
        }
        return -1;
    }

    private static boolean takes(M2Slot slot, Drive drive) {
        if (slot.forWireless() || drive.form().lengthMm() > slot.longestMm()) {
            return false;
        }
        for (Bus bus : slot.buses()) {
            if ((bus == Bus.SATA) == (drive.bus() == Bus.SATA)) {
                return true;
            }
        }
        return false;
    }

    private static int slower(M2Slot slot, Drive drive) {
        int fastest = 0;
        for (Bus bus : slot.buses()) {
            fastest = Math.max(fastest, bus.generation() * bus.lanes());
        }
        return Math.max(0, drive.bus().generation() * drive.bus().lanes() - fastest);
    }

    private static int lost(Board board, int m2) {
        int lost = 0;
        for (Share share : board.shares()) {
            if (share.m2() == m2) {
                lost += share.sataPorts().size() + share.slotPositions().size();
            }
        }
        return lost;
    }

    private static DrivePlaces counted(
            Build build, List<Drive> drives, int[] slots, boolean[] used) {
        Board board = build.board();
        int sata = board.sataPorts();
        List<Integer> lostPositions = new ArrayList<>(2);
        for (Share share : board.shares()) {
            if (share.m2() <= used.length && used[share.m2() - 1]) {
                sata -= share.sataPorts().size();
                lostPositions.addAll(share.slotPositions());
            }
        }
        int bays35 = build.pcCase().bays35();
        int bays25 = build.pcCase().bays25();
        boolean cage = false;
        for (Drive drive : drives) {
            if (!drive.form().m2()) {
                sata--;
                // A 2.5-inch drive without a bay of its own goes into a 3.5-inch one on an adapter.
                if (drive.form() == DriveForm.BAY_25 && bays25 > 0) {
                    bays25--;
                } else {
                    bays35--;
                    cage = true;
                }
            }
        }
        List<Integer> m2Slots = new ArrayList<>(slots.length);
        for (int slot : slots) {
            m2Slots.add(slot);
        }
        return new DrivePlaces(m2Slots, sata, bays35, bays25, cage, lostPositions);
    }
}
