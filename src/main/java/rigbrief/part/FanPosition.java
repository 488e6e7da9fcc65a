package rigbrief.part;

import java.util.ArrayList;
import java.util.List;

/**
 * A side of the case that takes fans, written {@code front:3x120|2x140}.
 *
 * @param place which side
 * @param choices alternatives, each a number of fans of one size
 */
public record FanPosition(Place place, List<FanGroup> choices) {
    public FanPosition {
        choices = List.copyOf(choices);
    }

    /** How many fans of a size fit; 0 when that size does not. */
    public int room(int sizeMm) {
        int most = 0;
        for (FanGroup choice : choices) {
            if (choice.sizeMm() == sizeMm) {
                most = Math.max(most, choice.count());
            }
        }
        return most;
    }

    static FanPosition read(String entry) throws Cells.Malformed {
        int colon = entry.indexOf(':');
        if (colon < 1) {
            throw new Cells.Malformed("a side and fan sizes", "write front:3x120|2x140;rear:1x120");
        }
        List<FanGroup> choices = new ArrayList<>();
        for (String choice : entry.substring(colon + 1).split("[|]")) {
            choices.add(FanGroup.read(choice));
        }
        return new FanPosition(Words.read(entry.substring(0, colon), Place.class), choices);
    }
}
