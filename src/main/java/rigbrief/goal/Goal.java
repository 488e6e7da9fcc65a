package rigbrief.goal;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;

/** A soft goal of a build. */
public interface Goal {
    /**
     * Utilities are whole ten-thousandths, so that a score can be redone by hand without rounding
     * quarrels.
     */
    int FULL = 10_000;

    /** Id, title and curve. */
    GoalInfo info();

    /** Slots whose parts the utility depends on; an {@code EnumSet}. */
    Set<Slot> reads();

    /** The utility in ten-thousandths, 0 to {@link #FULL}. */
    int utility(Assessment it);

    /** Why the utility is what it is, in a few words with numbers. */
    String because(Assessment it);

    /** Whole ten-thousandths of a share between 0 and 1, clipped. */
    static int tenThousandths(double share) {
        return (int) Math.round(Math.max(0, Math.min(1, share)) * FULL);
    }
}
