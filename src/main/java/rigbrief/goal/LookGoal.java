package rigbrief.goal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.build.Build;
import rigbrief.part.Colour;
import rigbrief.part.Lighting;
import rigbrief.part.Listing;
import rigbrief.part.Slot;

/**
 * Whether what shows is in one colour and unlit.
 *
 * <p>Formula: mean over case, board, cooler, memory, card, fans and cables. A part in the colour
 * counts 1, half of it when it is lit though the brief asks for no light; in another colour 0. What
 * is absent or has no stated colour does not disturb and counts 1; a machine without a cable set
 * counts half for its cables. The colour is the brief's, else the case's.
 *
 * <p>Common practice throughout: taste has no standard.
 */
public final class LookGoal implements Goal {
    private static final GoalInfo INFO =
            new GoalInfo(
                    "look",
                    "It looks of a piece",
                    "share of what shows that is unlit and in one colour: the brief's, else the case's");
    private static final Set<Slot> READS =
            Collections.unmodifiableSet(
                    EnumSet.of(
                            Slot.CASE,
                            Slot.BOARD,
                            Slot.COOLER,
                            Slot.MEMORY,
                            Slot.GRAPHICS,
                            Slot.FANS,
                            Slot.CABLES));

    @Override
    public GoalInfo info() {
        return INFO;
    }

    @Override
    public Set<Slot> reads() {
        return READS;
    }

    private static final double HALF = 0.5;

    @Override
    public int utility(Assessment it) {
        double sum = 0;
        for (Slot slot : READS) {
            sum += share(it.build(), slot, it.valued());
        }
        return Goal.tenThousandths(sum / READS.size());
    }

    @Override
    public String because(Assessment it) {
        Optional<Colour> colour = colour(it.build(), it.valued());
        int matching = 0;
        for (Slot slot : READS) {
            matching += share(it.build(), slot, it.valued()) == 1 ? 1 : 0;
        }
        return "%d of %d visible places %s"
                .formatted(
                        matching,
                        READS.size(),
                        colour.map(value -> "are plain or " + value.word()).orElse("are plain"));
    }

    /** What the place of the cables counts in a machine without a cable set, 0 to 1. */
    public static double withoutCables() {
        return HALF;
    }

    /**
     * What one place of an unfinished build counts, 0 to 1; needs the case unless the brief names
     * the colour.
     */
    public static double share(Build build, Slot slot, Brief brief) {
        if (!build.has(slot)) {
            return slot == Slot.CABLES ? HALF : 1;
        }
        Listing listing = build.part(slot).listing();
        Optional<Colour> wanted = colour(build, brief);
        boolean matches =
                listing.colour().isEmpty() || wanted.isEmpty() || listing.colour().equals(wanted);
        boolean disturbs =
                brief.looks().lighting() == LightingNeed.NONE
                        && listing.lighting() != Lighting.NONE;
        return !matches ? 0 : disturbs ? HALF : 1;
    }

    private static Optional<Colour> colour(Build build, Brief brief) {
        return brief.looks().colour().or(() -> build.pcCase().listing().colour());
    }
}
