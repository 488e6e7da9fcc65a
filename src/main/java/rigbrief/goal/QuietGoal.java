package rigbrief.goal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.part.Slot;

/**
 * How quiet the machine is under the brief's heaviest workload.
 *
 * <p>Formula: u = (top - level) / (top - bottom), clipped to 0..1, in dB. Top is the must, or 45
 * dB(A); bottom is the wish, or 22 dB(A), and always below top.
 *
 * <p>Common practice: 45 dB(A) is a machine one talks over, 22 dB(A) is lost in a quiet room.
 */
public final class QuietGoal implements Goal {
    private static final GoalInfo INFO =
            new GoalInfo(
                    "quiet",
                    "The machine is quiet at the seat",
                    "level at the seat under the heaviest workload, straight from the most allowed down to the wish or the floor, in dB");
    private static final Set<Slot> READS = Collections.unmodifiableSet(EnumSet.allOf(Slot.class));

    @Override
    public GoalInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    /** A level one talks over, in dB(A). Common practice. */
    public static final int LOUD_DBA = 45;

    /** A level that is lost in a quiet room, in dB(A). Common practice. */
    public static final int SILENT_DBA = 22;

    @Override
    public int utility(Assessment it) {
        return Goal.tenThousandths(share(it.load().levelDba(), it.valued()));
    }

    /** The utility of a level, 0 to 1; falls as the level rises. */
    public static double share(double levelDba, Brief brief) {
        int top = brief.noise().mustDba().orElse(LOUD_DBA);
        int bottom = Math.min(brief.noise().wishDba().orElse(SILENT_DBA), top - 1);
        return (top - levelDba) / (top - bottom);
    }

    @Override
    public String because(Assessment it) {
        return String.format(
                Locale.ROOT, "%.1f dB(A) at the seat under load", it.load().levelDba());
    }
}
