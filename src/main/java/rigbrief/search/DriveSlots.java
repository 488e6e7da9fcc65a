package rigbrief.search;

import java.nio.LongBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Slot;

/**
 * Both drives while they are open: what they cost and gain together, and where they find a place.
 */
final class DriveSlots {
    /** Stands for no board yet among the numbers of places. */
    private static final int NO_PLACES = -1;

    /** Most pairs of processor and card whose drives are remembered. */
    private static final int MOST_KNOWN = 200;

    private final OpenSlots slots;
    private final Outlook outlook;
    private final List<Slot> order;
    private final int firstDrive;
    private final int secondDrive;
    private final int[] bothDrives;
    private final SlotTable firsts;
    private final DrivePairs.Bounds driveBounds;
    private final DriveRoom driveRoom;
    private final Bounder.AliveSets all;
    private final DrivePairs[] drives;
    private final Map<Outlook.Pair, Map<DrivesKey, DrivePairs>> drivesKnown =
            new IdentityHashMap<>();

    DriveSlots(OpenSlots slots, Problem problem, List<Slot> order) {
        this.slots = slots;
        this.outlook = problem.tables().outlook(problem);
        this.order = order;
        this.firstDrive = order.indexOf(Slot.DRIVE);
        this.secondDrive = order.indexOf(Slot.SECOND_DRIVE);
        this.bothDrives = new int[] {firstDrive, secondDrive};
        this.firsts = slots.table(firstDrive);
        SlotTable seconds = slots.table(secondDrive);
        this.driveRoom = new DriveRoom(problem, firsts, seconds);
        this.driveBounds =
                new DrivePairs.Bounds(
                        firsts,
                        seconds,
                        byPair() ? outlook.losses().driveClasses() : new int[firsts.size()],
                        slots.pairs(),
                        slots.worth(),
                        slots.sets());
        this.all = new Bounder.AliveSets(slots.sets()).fill();
        this.drives = new DrivePairs[order.size() + 1];
        Arrays.fill(drives, drives(0, DrivePairs.NO_LOSS, null));
    }

    /** Levels of both slots. */
    int[] slots() {
        return bothDrives;
    }

    /** What is known of both at a level; null once one is decided. */
    Couple couple(int level) {
        return bothOpen(level) ? drives[level] : null;
    }

    /** Slots without a choice come early, so the second one may be decided first. */
    private boolean bothOpen(int level) {
        return level <= firstDrive && firstDrive < secondDrive;
    }

    /** The level behind this one knows as much, for now. */
    void pass(int level) {
        drives[level + 1] = drives[level];
    }

    /** Forgets what is known beside a processor and a card. */
    void forgetPair() {
        drives[OpenSlots.PAIR] = drives[0];
    }

    /** Learns what can be known at a level. */
    void know(int level, Unfinished unfinished) {
        drives[level] = drives(level, unfinished);
    }

    /** Reckons with what is left now that a level's slot is decided; false when nothing is. */
    boolean reckon(int level, Unfinished unfinished) {
        if (!bothOpen(level + 1)) {
            return true;
        }
        if (!placeDrives(level, unfinished)) {
            return false;
        }
        know(level + 1, unfinished);
        return true;
    }

    /** Takes out drives that find no place beside any other, once board and case are decided. */
    private boolean placeDrives(int level, Unfinished unfinished) {
        boolean now = order.get(level) == Slot.BOARD || order.get(level) == Slot.CASE;
        if (!now || !DriveRoom.decided(unfinished)) {
            return true;
        }
        DriveRoom.Beside beside = driveRoom.beside(unfinished);
        long[] seconds = slots.domain(level + 1, secondDrive);
        long[] reached = new long[seconds.length];
        boolean left =
                slots.keep(
                        level + 1,
                        firstDrive,
                        i -> {
                            long[] row = slots.pairs().row(firsts.candidate(i), Slot.SECOND_DRIVE);
                            long[] place = beside.of(i);
                            boolean any = false;
                            for (int k = 0; k < seconds.length; k++) {
                                long with = seconds[k] & place[k] & (row == null ? -1 : row[k]);
                                reached[k] |= with;
                                any |= with != 0;
                            }
                            return any;
                        });
        return left && slots.keep(level + 1, secondDrive, j -> SlotTable.has(reached, j));
    }

    /** What is known of both drives depends on what is left of them, and on places on the board. */
    private record DrivesKey(
            LongBuffer firstLeft, LongBuffer secondLeft, int places, DriveRoom.Beside beside) {}

    /** Both drives as far as a level knows. */
    private DrivePairs drives(int level, Unfinished unfinished) {
        DriveRoom.Beside beside =
                DriveRoom.decided(unfinished) ? driveRoom.beside(unfinished) : null;
        boolean placed = slots.points() && unfinished.has(Slot.BOARD);
        int places = placed ? outlook.room().m2Places(unfinished) : NO_PLACES;
        return drivesKnown(unfinished)
                .computeIfAbsent(
                        new DrivesKey(
                                left(level, firstDrive), left(level, secondDrive), places, beside),
                        any ->
                                drives(
                                        level,
                                        placed
                                                ? (first, second) ->
                                                        outlook.losses()
                                                                .drivesRoom(
                                                                        unfinished, first, second)
                                                : DrivePairs.NO_LOSS,
                                        beside));
    }

    private LongBuffer left(int level, int slot) {
        return LongBuffer.wrap(slots.domain(level, slot).clone());
    }

    /** Whether what drives lose depends on processor and card. */
    private boolean byPair() {
        return slots.points() && outlook.drivesMatter();
    }

    /** What is known of both drives beside a pair. */
    private Map<DrivesKey, DrivePairs> drivesKnown(Unfinished unfinished) {
        if (drivesKnown.size() > MOST_KNOWN) {
            drivesKnown.clear();
        }
        return drivesKnown.computeIfAbsent(
                slots.points() && outlook.drivesMatter() ? unfinished.pair() : null,
                any -> new HashMap<>());
    }

    private DrivePairs drives(int level, DrivePairs.PlacesLoss places, DriveRoom.Beside beside) {
        return driveBounds.of(
                byPair() && level >= OpenSlots.PAIR ? slots.kept(OpenSlots.PAIR) : all,
                slots.domain(level, firstDrive),
                slots.domain(level, secondDrive),
                slots.besidePair(firstDrive),
                places,
                beside);
    }
}
