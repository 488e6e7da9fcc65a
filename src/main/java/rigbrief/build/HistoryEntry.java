package rigbrief.build;

import java.time.LocalDate;
import java.util.Optional;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/** One thing that was done to a filed build, on a day, perhaps by somebody who is named. */
public sealed interface HistoryEntry {
    /** The day. */
    LocalDate date();

    /** Who did it; empty when nobody said. */
    Optional<String> by();

    /** The slot it was done to. */
    Slot slot();

    /** Why; empty when nobody said. */
    Optional<String> note();

    /**
     * Units of a part came from one state to another, or what is known of them was set right.
     *
     * @param date the day
     * @param by who did it
     * @param slot the slot
     * @param part id of the part
     * @param count how many units
     * @param from the state they were in
     * @param to the state they are in now; the same where only facts were set right
     * @param supplier id of the supplier, where it was told
     * @param paid what was paid for each, where it was told
     * @param refunded what came back for each, where it was told
     * @param note why
     */
    record Move(
            LocalDate date,
            Optional<String> by,
            Slot slot,
            String part,
            int count,
            PartState from,
            PartState to,
            Optional<String> supplier,
            Optional<Money> paid,
            Optional<Money> refunded,
            Optional<String> note)
            implements HistoryEntry {}

    /**
     * The part of a slot was replaced by another.
     *
     * @param date the day
     * @param by who did it
     * @param slot the slot
     * @param fromPart id of the part before; empty when the slot was empty
     * @param toPart id of the part after; empty when the slot is left empty
     * @param note why
     */
    record Swap(
            LocalDate date,
            Optional<String> by,
            Slot slot,
            Optional<String> fromPart,
            Optional<String> toPart,
            Optional<String> note)
            implements HistoryEntry {}
}
