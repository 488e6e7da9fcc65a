package rigbrief.rule.fit;

import java.util.List;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.part.Bus;
import rigbrief.part.Drive;
import rigbrief.part.Slot;
import rigbrief.quantity.Unit;
import rigbrief.rule.Finding;
import rigbrief.rule.Reads;
import rigbrief.rule.Rule;
import rigbrief.rule.RuleInfo;
import rigbrief.rule.Source;
import rigbrief.wording.Phrase;

/**
 * Every drive has an M.2 slot of its length and bus, or a bay and a SATA port.
 *
 * <p>The excess counts what lacks: M.2 slots, bays, ports. Ports lost to M.2 slots in use are told
 * by {@code drive-shares}. A drive on a slower slot is a note.
 */
public final class DrivePlaceRule implements Rule {
    private static final RuleInfo INFO =
            new RuleInfo(
                    "drive-place",
                    "Every drive has a place and a port",
                    Unit.PIECE,
                    Source.makersSheet("board, M.2 slots and SATA ports; case, bays"));
    private static final Set<Slot> READS =
            Reads.of(Slot.BOARD, Slot.DRIVE, Slot.SECOND_DRIVE, Slot.CASE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    @Override
    public Finding check(Assessment it) {
        int excess =
                homeless(it)
                        + bays(it)
                        + Math.max(0, sataDrives(it.build()) - it.build().board().sataPorts());
        if (excess > 0) {
            return Finding.breach(excess, () -> words(it));
        }
        int slow = slow(it);
        return slow < 0 ? Finding.MET : Finding.note(() -> slowWords(it, slow));
    }

    /** Drives in bays, each wanting a SATA port. */
    public static int sataDrives(Build build) {
        int count = 0;
        for (Drive drive : build.drives()) {
            count += drive.form().m2() ? 0 : 1;
        }
        return count;
    }

    private static int homeless(Assessment it) {
        int count = 0;
        for (int slot : it.layout().driveM2()) {
            count += slot < 0 ? 1 : 0;
        }
        return count;
    }

    private static int bays(Assessment it) {
        // A 2.5-inch drive without a bay of its own takes a 3.5-inch one, so only those run out.
        return Math.max(0, -it.layout().bays35Left());
    }

    /** Index of the first drive that is faster than its M.2 slot; -1 when none is. */
    private static int slow(Assessment it) {
        List<Drive> drives = it.build().drives();
        for (int i = 0; i < drives.size(); i++) {
            int slot = it.layout().driveM2().get(i);
            if (slot > 0 && throughput(it, slot) < throughput(drives.get(i).bus())) {
                return i;
            }
        }
        return -1;
    }

    private static int throughput(Assessment it, int slot) {
        int most = 0;
        for (Bus bus : it.build().board().m2().get(slot - 1).buses()) {
            most = Math.max(most, throughput(bus));
        }
        return most;
    }

    /**
     * Each generation moves twice what the one before moves on a lane (PCI Express Base
     * Specification).
     */
    private static int throughput(Bus bus) {
        return bus.lanes() << bus.generation();
    }

    private static Phrase words(Assessment it) {
        return Phrase.of(
                "finding.drive-place",
                homeless(it),
                bays(it),
                sataDrives(it.build()),
                it.build().board().sataPorts());
    }

    private static Phrase slowWords(Assessment it, int index) {
        return Phrase.of(
                "finding.drive-place.slow",
                it.build().drives().get(index).name(),
                it.layout().driveM2().get(index));
    }
}
