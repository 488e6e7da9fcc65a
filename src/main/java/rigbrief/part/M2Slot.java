package rigbrief.part;

import java.util.ArrayList;
import java.util.List;

/**
 * An M.2 slot of a board, written {@code 2280:gen4x4} or {@code 2280:gen3x4|sata}.
 *
 * @param longestMm longest module in millimetres
 * @param buses what the slot is wired for
 */
public record M2Slot(int longestMm, List<Bus> buses) {
    public M2Slot {
        buses = List.copyOf(buses);
    }

    /** Whether the slot takes a wireless card and no drive. */
    public boolean forWireless() {
        return buses.contains(Bus.KEY_E);
    }

    static M2Slot read(String entry) throws Cells.Malformed {
        // Possessive: a repeated group that may give back recurses once a round, and cells are
        // long.
        if (!entry.matches("22(30|42|60|80|110):[a-z0-9-]+(?:[|][a-z0-9-]+)*+")) {
            throw malformed();
        }
        int colon = entry.indexOf(':');
        List<Bus> buses = new ArrayList<>();
        for (String word : entry.substring(colon + 1).split("[|]")) {
            buses.add(bus(word));
        }
        return new M2Slot(Integer.parseInt(entry.substring(2, colon)), buses);
    }

    private static Bus bus(String word) throws Cells.Malformed {
        for (Bus bus : Bus.values()) {
            if (bus.word().equals(word)) {
                return bus;
            }
        }
        throw malformed();
    }

    private static Cells.Malformed malformed() {
        return new Cells.Malformed(
                "an M.2 length and its buses",
                "write 2280:gen4x4 or 2280:gen3x4|sata, with ; between several; 2230:key-e for a wireless card");
    }
}
