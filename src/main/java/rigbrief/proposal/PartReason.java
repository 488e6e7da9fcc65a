package rigbrief.proposal;

import rigbrief.part.Slot;

/**
 * Why a part is in a proposal.
 *
 * @param slot the slot
 * @param text what the part does for this brief, and what it was chosen over
 */
public record PartReason(Slot slot, String text) {}
