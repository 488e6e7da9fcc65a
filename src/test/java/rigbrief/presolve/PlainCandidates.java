package rigbrief.presolve;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Assessor;
import rigbrief.part.Part;
import rigbrief.part.Slot;

/** Candidates that are one part each, with nothing left out by dominance or rules. */
public final class PlainCandidates {
    private PlainCandidates() {}

    /** The candidates of the slots that parts are named for; all others stay empty. */
    public static Candidates of(Assessor assessor, Map<Slot, List<Part>> parts) {
        Map<Slot, List<Candidate>> bySlot = new EnumMap<>(Slot.class);
        for (Slot slot : Slot.values()) {
            List<Candidate> list = new ArrayList<>();
            for (Part part : parts.getOrDefault(slot, List.of())) {
                long[] minor = assessor.pricing().minorBySet(slot, part, 1);
                list.add(new Candidate(slot, list.size(), part, 1, minor));
            }
            if (list.isEmpty()) {
                long[] minor = assessor.pricing().minorBySet(slot, null, 0);
                list.add(new Candidate(slot, 0, null, 0, minor));
            }
            bySlot.put(slot, list);
        }
        return new Candidates(bySlot, Map.of());
    }
}
