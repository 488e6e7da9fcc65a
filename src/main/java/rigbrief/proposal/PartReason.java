package rigbrief.proposal;

import java.util.Optional;
import rigbrief.part.Slot;

/**
 * Why a part is in a proposal.
 *
 * @param slot the slot
 * @param text what the part does for this brief, and what it was chosen over
 * @param choice what it was chosen over, to be told in other words; empty where it is not known
 */
public record PartReason(Slot slot, String text, Optional<Choice> choice) {
    /** A reason in words alone. */
    public PartReason(Slot slot, String text) {
        this(slot, text, Optional.empty());
    }
}
