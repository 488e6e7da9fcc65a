package rigbrief.goal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.model.memory.DriveEndurance;
import rigbrief.part.Drive;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.wording.Counted;

/**
 * How long the parts are guaranteed.
 *
 * <p>Formula: mean over processor, board, memory, card, first drive, supply, cooler, case and fans
 * of guarantee / 10 years, clipped to 1, an unknown one counting 0 and an absent part 1; and of the
 * first drive's endurance over ten years of 20 GB a day, clipped to 1, an unknown one counting 0.
 *
 * <p>Common practice: 10 years is the longest guarantee usual on desktop parts, 20 GB a day an
 * ordinary household's writing.
 */
public final class LifetimeGoal implements Goal {
    private static final GoalInfo INFO =
            new GoalInfo(
                    "lifetime",
                    "It is made to last",
                    "mean of the guarantees over 10 years and the first drive's endurance over ten years of 20 GB a day");
    private static final Set<Slot> READS =
            Collections.unmodifiableSet(
                    EnumSet.of(
                            Slot.PROCESSOR,
                            Slot.BOARD,
                            Slot.MEMORY,
                            Slot.GRAPHICS,
                            Slot.DRIVE,
                            Slot.SUPPLY,
                            Slot.COOLER,
                            Slot.CASE,
                            Slot.FANS));

    @Override
    public GoalInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    private static final double YEARS = 10;
    private static final double WRITTEN_GB_PER_DAY = 20;

    @Override
    public int utility(Assessment it) {
        double sum = 0;
        for (Slot slot : READS) {
            sum += share(slot, it.build().has(slot) ? it.build().part(slot) : null);
        }
        return Goal.tenThousandths(sum);
    }

    /** What one slot adds to the utility, whatever the others hold; null for an empty slot. */
    public static double share(Slot slot, Part part) {
        if (!READS.contains(slot)) {
            return 0;
        }
        double own = part == null ? 1 : guarantee(part);
        if (slot == Slot.DRIVE && part instanceof Drive drive) {
            own += endurance(drive);
        }
        return own / (READS.size() + 1);
    }

    @Override
    public String because(Assessment it) {
        int shortest = Integer.MAX_VALUE;
        for (Slot slot : READS) {
            if (it.build().has(slot)) {
                int years = it.build().part(slot).listing().warrantyYears().orElse(0);
                shortest = Math.min(shortest, years);
            }
        }
        return "shortest guarantee " + Counted.of(shortest, "year");
    }

    private static double guarantee(Part part) {
        return Math.min(1, part.listing().warrantyYears().orElse(0) / YEARS);
    }

    private static double endurance(Drive drive) {
        int ratingTbw = drive.enduranceTbw().or(0);
        return ratingTbw == 0
                ? 0
                : Math.min(1, DriveEndurance.yearsByWrites(ratingTbw, WRITTEN_GB_PER_DAY) / YEARS);
    }
}
