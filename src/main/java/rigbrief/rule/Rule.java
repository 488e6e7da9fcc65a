package rigbrief.rule;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Slot;

/**
 * A hard check of a build.
 *
 * <p>The same object serves the search, the audit, explanations and the assembly plan.
 */
public interface Rule {
    /** Id, title, unit and source. */
    RuleInfo info();

    /** Slots whose parts the check reads; an {@code EnumSet}. */
    Set<Slot> reads();

    /**
     * The remark on a build.
     *
     * <p>Asked only when every required slot among {@link #reads()} is filled; an optional slot may
     * be empty.
     */
    Finding check(Assessment it);

    /**
     * Whether a breach on an unfinished build stays a breach however the build is finished, so that
     * the check may be asked as soon as any of the slots it reads is filled.
     */
    default boolean decidesEarly() {
        return false;
    }
}
