package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rigbrief.assess.Assessment;
import rigbrief.part.Board;
import rigbrief.part.Drive;
import rigbrief.part.DriveForm;
import rigbrief.part.Share;
import rigbrief.part.Slot;

/**
 * Where a drive goes, and what that takes away.
 *
 * @param slot slot of the build
 * @param drive the drive
 * @param place sort of place
 * @param m2 number of the M.2 slot; empty for a drive in a bay
 * @param sataPort SATA port its data cable goes to; empty for an M.2 drive, or when no port is left
 * @param lostSataPorts SATA ports that stop working because of it
 * @param lostPositions expansion slots that stop working because of it
 */
public record DriveHome(
        Slot slot,
        Drive drive,
        Place place,
        OptionalInt m2,
        OptionalInt sataPort,
        List<Integer> lostSataPorts,
        List<Integer> lostPositions) {
    public DriveHome {
        lostSataPorts = List.copyOf(lostSataPorts);
        lostPositions = List.copyOf(lostPositions);
    }

    /** Sorts of places. */
    public enum Place {
        M2,
        BAY_25,
        BAY_35,
        /** A 2.5-inch drive on an adapter in a 3.5-inch bay. */
        BAY_35_ON_ADAPTER,
        /** No place is left, which the rules tell. */
        NONE
    }

    /** The homes of a build's drives, first drive first; the same as the layout's. */
    public static List<DriveHome> of(Assessment it) {
        Board board = it.build().board();
        List<Integer> m2Slots = it.layout().driveM2();
        List<Integer> freePorts = freePorts(board, m2Slots);
        List<DriveHome> homes = new ArrayList<>();
        int bays25 = it.build().pcCase().bays25();
        List<Drive> drives = it.build().drives();
        for (int i = 0; i < drives.size(); i++) {
            Slot slot = i == 0 ? Slot.DRIVE : Slot.SECOND_DRIVE;
            if (drives.get(i).form().m2()) {
                homes.add(inM2(slot, drives.get(i), m2Slots.get(i), board));
            } else {
                boolean small = drives.get(i).form() == DriveForm.BAY_25;
                Place place =
                        small
                                ? (bays25 > 0 ? Place.BAY_25 : Place.BAY_35_ON_ADAPTER)
                                : Place.BAY_35;
                bays25 -= place == Place.BAY_25 ? 1 : 0;
                homes.add(inBay(slot, drives.get(i), place, freePorts));
            }
        }
        return List.copyOf(homes);
    }

    /** Whether it is held by screws in a bay and has two cables. */
    public boolean cabled() {
        return !drive.form().m2();
    }

    private static List<Integer> freePorts(Board board, List<Integer> m2Slots) {
        List<Integer> free = new ArrayList<>();
        for (int port = 1; port <= board.sataPorts(); port++) {
            free.add(port);
        }
        for (Share share : board.shares()) {
            if (m2Slots.contains(share.m2())) {
                free.removeAll(share.sataPorts());
            }
        }
        return free;
    }

    private static DriveHome inM2(Slot slot, Drive drive, int number, Board board) {
        List<Integer> ports = new ArrayList<>();
        List<Integer> positions = new ArrayList<>();
        for (Share share : board.shares()) {
            if (share.m2() == number) {
                ports.addAll(share.sataPorts());
                positions.addAll(share.slotPositions());
            }
        }
        boolean placed = number > 0;
        return new DriveHome(
                slot,
                drive,
                placed ? Place.M2 : Place.NONE,
                placed ? OptionalInt.of(number) : OptionalInt.empty(),
                OptionalInt.empty(),
                ports,
                positions);
    }

    private static DriveHome inBay(Slot slot, Drive drive, Place place, List<Integer> freePorts) {
        OptionalInt port =
                freePorts.isEmpty() ? OptionalInt.empty() : OptionalInt.of(freePorts.remove(0));
        return new DriveHome(slot, drive, place, OptionalInt.empty(), port, List.of(), List.of());
    }
}
