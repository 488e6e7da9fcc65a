package rigbrief.rule.fit;

import rigbrief.build.Build;
import rigbrief.part.CoolerType;
import rigbrief.part.Fact;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;

/** How far tall memory pushes up the front fan of an air cooler. */
final class FanRaise {
    private FanRaise() {}

    /**
     * Whether an air cooler was bought; boxed coolers are low and end short of the memory (common
     * practice).
     */
    static boolean airCooler(Build build) {
        return build.has(Slot.COOLER) && build.cooler().type() == CoolerType.AIR;
    }

    /**
     * By how many millimetres the modules are taller than the room for them; 0 when they are not,
     * or nothing is stated.
     */
    static int overMm(Build build) {
        if (build.memory().height() instanceof Fact.Stated<Length> height
                && build.cooler().memoryClearance() instanceof Fact.Stated<Length> room) {
            return Math.max(0, height.value().millimetres() - room.value().millimetres());
        }
        return 0;
    }

    /**
     * How far the fan is raised, in mm: as far as the modules need where the cooler allows that
     * much, else 0.
     */
    static int raisedMm(Build build) {
        int over = overMm(build);
        return over <= build.cooler().fanRaiseMm() ? over : 0;
    }
}
