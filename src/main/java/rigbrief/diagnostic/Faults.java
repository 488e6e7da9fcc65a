package rigbrief.diagnostic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Gathers what is wrong, in the order in which it is met, so that all of it is reported at once.
 *
 * <p>The first two thousand faults are kept and the rest counted: a file that is no catalogue at
 * all would otherwise fill the memory with remarks about itself.
 */
public final class Faults {
    private static final int MOST = 2_000;

    private final List<Fault> faults = new ArrayList<>();
    private final List<Fault> notes = new ArrayList<>();
    private int count;

    /** Adds a fault; the input is refused. */
    public void add(Fault fault) {
        keep(faults, fault);
        count++;
    }

    /** Adds all that is wrong with some other input. */
    public void addAll(BadInput bad) {
        bad.faults().forEach(fault -> keep(faults, fault));
        count += bad.count();
    }

    /** Adds a remark that does not refuse the input. */
    public void note(Fault fault) {
        keep(notes, fault);
    }

    /** The faults kept, in the order in which they were met. */
    public List<Fault> all() {
        return Collections.unmodifiableList(faults);
    }

    /** The remarks kept, in the order in which they were met. */
    public List<Fault> notes() {
        return Collections.unmodifiableList(notes);
    }

    /** How many faults there are, kept or not. */
    public int count() {
        return count;
    }

    /** Ends the reading when there is any fault. */
    public void throwIfAny() throws BadInput {
        if (count > 0) {
            throw new BadInput(faults, count);
        }
    }

    private static void keep(List<Fault> list, Fault fault) {
        if (list.size() < MOST) {
            list.add(fault);
        }
    }
}
