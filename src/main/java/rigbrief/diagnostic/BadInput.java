package rigbrief.diagnostic;

import java.util.List;
import java.util.stream.Collectors;

/** Input that can't be used, with all that is wrong with it. */
public final class BadInput extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;
    private final int count;

    /** Input with one fault. */
    public BadInput(Fault fault) {
        this(List.of(fault), 1);
    }

    /**
     * Input with faults.
     *
     * @param faults the faults, in the order in which they were met; at least one
     * @param count how many there are, those that were not kept included
     */
    public BadInput(List<Fault> faults, int count) {
        super(message(faults, count));
        this.faults = List.copyOf(faults);
        this.count = count;
    }

    /** The faults, in the order in which they were met. */
    public List<Fault> faults() {
        return faults;
    }

    /** How many faults there are; more than {@link #faults()} when they were too many to keep. */
    public int count() {
        return count;
    }

    private static String message(List<Fault> faults, int count) {
        String lines = faults.stream().map(Fault::text).collect(Collectors.joining("\n"));
        int more = count - faults.size();
        return more == 0 ? lines : lines + "\nand " + more + " more like these";
    }
}
