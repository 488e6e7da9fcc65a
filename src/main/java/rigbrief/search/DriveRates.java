package rigbrief.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Drive;
import rigbrief.presolve.Candidate;

/**
 * Drives in classes by how fast they read and write: what the fastest of a class loses, none of it
 * loses less. A few dozen classes tell a large catalogue's drives apart well enough.
 */
final class DriveRates {
    private static final int MOST_CLASSES = 64;

    /** Rates within such a factor fall into one class at first; widened until few are left. */
    private static final double FACTOR = 1.01;

    private final int[] classOf;
    private final List<Drive> fastest = new ArrayList<>();

    /** Classes of the drives that may be first. */
    DriveRates(List<Candidate> drives) {
        classOf = new int[drives.size()];
        int classes = classify(drives, 0);
        for (double factor = FACTOR; classes > MOST_CLASSES; factor *= factor) {
            classes = classify(drives, Math.log(factor));
        }
        int[] read = new int[classes];
        int[] write = new int[classes];
        Drive[] any = new Drive[classes];
        for (Candidate candidate : drives) {
            Drive drive = (Drive) candidate.partOrNull();
            int c = classOf[candidate.index()];
            any[c] = drive;
            read[c] = Math.max(read[c], drive.readMbs());
            write[c] = Math.max(write[c], drive.writeMbs());
        }
        for (int c = 0; c < classes; c++) {
            fastest.add(withRates(any[c], read[c], write[c]));
        }
    }

    private int classify(List<Candidate> drives, double logStep) {
        Map<List<Object>, Integer> known = new HashMap<>();
        for (Candidate candidate : drives) {
            Drive drive = (Drive) candidate.partOrNull();
            List<Object> key =
                    logStep == 0
                            ? List.of(drive.readMbs(), drive.writeMbs())
                            : List.of(
                                    step(drive.readMbs(), logStep),
                                    step(drive.writeMbs(), logStep));
            classOf[candidate.index()] = known.computeIfAbsent(key, any -> known.size());
        }
        return known.size();
    }

    private static long step(int mbs, double logStep) {
        return (long) Math.ceil(Math.log(Math.max(1, mbs)) / logStep);
    }

    /** A drive like another one but for its rates, in MB/s. */
    static Drive withRates(Drive drive, int readMbs, int writeMbs) {
        return new Drive(
                drive.listing(),
                drive.form(),
                drive.bus(),
                drive.capacityGb(),
                readMbs,
                writeMbs,
                drive.enduranceTbw(),
                drive.cache(),
                drive.dba());
    }

    /** The class of each drive, by index. */
    int[] classOf() {
        return classOf;
    }

    /** A drive as fast as the fastest reader and the fastest writer of each class. */
    List<Drive> fastest() {
        return fastest;
    }
}
