package rigbrief.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.assess.Cost;
import rigbrief.audit.Audit;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.proposal.PartReason;

/**
 * A part of a build as it is listed.
 *
 * @param slot where it goes
 * @param part the part
 * @param pieces packs per machine
 * @param bought the order line; empty for a part that is kept or that nobody offers
 * @param kept whether it is the client's own
 * @param reason why it is there; empty where nobody gave a reason
 */
public record PartRow(
        Slot slot, Part part, int pieces, Optional<Cost.Line> bought, boolean kept, String reason) {

    /** One row per filled slot, in slot order. */
    public static List<PartRow> of(Audit audit, List<PartReason> reasons) {
        Map<Slot, Cost.Line> lines = new HashMap<>();
        audit.cost().lines().forEach(line -> lines.put(line.slot(), line));
        Map<Slot, String> texts = new HashMap<>();
        reasons.forEach(reason -> texts.put(reason.slot(), reason.text()));
        List<PartRow> rows = new ArrayList<>();
        for (Map.Entry<Slot, Part> filled : audit.build().filled().entrySet()) {
            Slot slot = filled.getKey();
            Optional<Cost.Line> line = Optional.ofNullable(lines.get(slot));
            rows.add(
                    new PartRow(
                            slot,
                            filled.getValue(),
                            audit.build().pieces(slot),
                            line,
                            line.isEmpty() && !audit.cost().unavailable().contains(slot),
                            texts.getOrDefault(slot, "")));
        }
        return rows;
    }

    /** Name with the number of packs, where there are several. */
    String name() {
        return pieces > 1 ? pieces + " x " + part.name() : part.name();
    }
}
