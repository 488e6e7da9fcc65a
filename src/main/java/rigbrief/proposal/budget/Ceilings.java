package rigbrief.proposal.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;

/** What other ceilings would change. */
final class Ceilings {
    /** Other ceilings to look at, in whole units of the currency per machine. Common practice. */
    private static final int[] UNITS = {-200, -100, -50, 50, 100, 200};

    private final Brief brief;

    Ceilings(Brief brief) {
        this.brief = brief;
    }

    /** The highest of them, in minor units. */
    long farthestMinor() {
        return brief.ceiling().minorUnits() + moreMinor(UNITS[UNITS.length - 1]);
    }

    /** The steps from the best build found under the ceiling to those under other ones. */
    List<CeilingStep> steps(FrontSteps front) {
        long ceiling = brief.ceiling().minorUnits();
        List<CeilingStep> all = new ArrayList<>();
        Optional<FrontStep> now = front.bestAt(ceiling);
        for (int units : UNITS) {
            long more = moreMinor(units);
            Optional<FrontStep> then = front.bestAt(ceiling + more);
            if (now.isPresent() && then.isPresent()) {
                all.add(new CeilingStep(more, now.get(), then.get()));
            }
        }
        return all;
    }

    private long moreMinor(int units) {
        int scale = brief.ceiling().amount().scale();
        return Math.multiplyExact(
                (long) units * brief.quantity(), (long) Math.pow(10, Math.max(0, scale)));
    }
}
