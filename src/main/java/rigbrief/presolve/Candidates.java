package rigbrief.presolve;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Slot;

/**
 * What may fill each slot.
 *
 * @param bySlot candidates by slot, in the order of the catalogue; "nothing" first where a slot may
 *     stay empty
 * @param refused for each slot that nothing is left for: how many parts each rule refused, by rule
 *     id, most first
 */
public record Candidates(
        Map<Slot, List<Candidate>> bySlot, Map<Slot, Map<String, Integer>> refused) {
    public Candidates {
        bySlot = Collections.unmodifiableMap(new EnumMap<>(bySlot));
        refused =
                refused.isEmpty()
                        ? Collections.emptyMap()
                        : Collections.unmodifiableMap(new EnumMap<>(refused));
    }

    /** Candidates of a slot. */
    public List<Candidate> of(Slot slot) {
        return bySlot.get(slot);
    }

    /** Whether some slot has no candidate at all. */
    public boolean impossible() {
        return !refused.isEmpty();
    }

    /** How many candidates there are over all slots. */
    public int count() {
        int count = 0;
        for (List<Candidate> list : bySlot.values()) {
            count += list.size();
        }
        return count;
    }
}
