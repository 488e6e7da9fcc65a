package rigbrief.part;

import java.util.ArrayList;
import java.util.List;

/**
 * What an M.2 slot takes away when a drive sits in it, written {@code m2-2 takes sata-5,sata-6}.
 *
 * @param m2 number of the M.2 slot, from 1
 * @param sataPorts numbers of the SATA ports that stop working
 * @param slotPositions positions of the expansion slots that stop working
 */
public record Share(int m2, List<Integer> sataPorts, List<Integer> slotPositions) {
    public Share {
        sataPorts = List.copyOf(sataPorts);
        slotPositions = List.copyOf(slotPositions);
    }

    static Share read(String entry) throws Cells.Malformed {
        if (!entry.matches(
                "m2-[1-9] takes (sata|slot)-[0-9]{1,2}(?:,(?:sata|slot)-[0-9]{1,2})*+")) {
            throw new Cells.Malformed(
                    "an M.2 slot and what it takes",
                    "write m2-2 takes sata-5,sata-6, or m2-3 takes slot-4");
        }
        List<Integer> sata = new ArrayList<>();
        List<Integer> slots = new ArrayList<>();
        for (String taken : entry.substring("m2-1 takes ".length()).split(",")) {
            (taken.startsWith("sata") ? sata : slots).add(Integer.parseInt(taken.substring(5)));
        }
        return new Share(entry.charAt(3) - '0', sata, slots);
    }
}
