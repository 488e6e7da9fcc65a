package rigbrief.rule;

import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.part.Part;
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

    /**
     * Whether the search must not propose a build with such a finding. Every breach forbids; a rule
     * may forbid more, where a builder's own choice is only worth a caution but the search's would
     * be a waste.
     */
    default boolean forbids(Finding finding) {
        return finding instanceof Finding.Breach;
    }

    /**
     * Slots among {@link #reads()} whose filling can only make the finding worse, so that a breach
     * found while they are still empty stands however they are filled. The check must stand their
     * emptiness.
     */
    default Set<Slot> onlyWorsenedBy() {
        return NONE;
    }

    /**
     * What the check asks a part for in one of the slots it reads, so that like parts need to be
     * asked about only once: parts with equal answers, as many pieces, kept or bought alike, are
     * forbidden beside the same others. At worst the part itself.
     *
     * @param slot one of {@link #reads()}
     * @param part the part in the slot; never null
     */
    default Object asks(Slot slot, Part part) {
        return part.id();
    }

    /** The answer of {@link #asks} where it is only asked whether there is a part. */
    Object NOTHING = "";

    /** No slot. */
    Set<Slot> NONE = java.util.Collections.unmodifiableSet(java.util.EnumSet.noneOf(Slot.class));
}
