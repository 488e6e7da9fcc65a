package rigbrief.proposal;

import java.util.Optional;

/** What a part was chosen over. */
public sealed interface Choice {
    /** The client's own: nothing else was looked at. */
    record Own() implements Choice {}

    /**
     * Nothing else keeps every rule in this place.
     *
     * @param cheaper how many cheaper ones there are
     * @param rule id of the rule that turns most of them away; empty when none is cheaper
     * @param turnedAway how many it turns away
     */
    record Only(int cheaper, Optional<String> rule, int turnedAway) implements Choice {}

    /**
     * The best of the others.
     *
     * @param other its name, with the number of packs where there are several; empty for leaving
     *     the place empty
     * @param dearerMinor by how much the whole order is dearer with the chosen part, in minor
     *     units; negative when it is cheaper
     * @param goal id of the goal that differs most; empty when none differs
     * @param tenThousandths utility of that goal with the chosen part
     * @param otherTenThousandths its utility with the other
     */
    record Over(
            Optional<String> other,
            long dearerMinor,
            Optional<String> goal,
            int tenThousandths,
            int otherTenThousandths)
            implements Choice {}
}
