package rigbrief.proposal.budget;

import rigbrief.part.Slot;

/**
 * A rule that keeps a build from being cheaper.
 *
 * @param rule its id
 * @param slot the slot in which it refuses cheaper parts, all else unchanged
 * @param count how many of them
 */
public record Turned(String rule, Slot slot, int count) {
    /** All of it in words. */
    public String words() {
        return "rule %s, which turns %d cheaper %s away from slot %s"
                .formatted(rule, count, count == 1 ? "choice" : "choices", slot.word());
    }

    /** The rule and its place. */
    public String inShort() {
        return "%s at the %s".formatted(rule, slot.word());
    }
}
