package rigbrief.part;

/**
 * Fans that come mounted in a case, written {@code front:2x120}.
 *
 * @param place which side
 * @param fans how many, and their size
 */
public record IncludedFans(Place place, FanGroup fans) {
    static IncludedFans read(String entry) throws Cells.Malformed {
        int colon = entry.indexOf(':');
        if (colon < 1) {
            throw new Cells.Malformed("a side and its fans", "write front:2x120;rear:1x120");
        }
        return new IncludedFans(
                Words.read(entry.substring(0, colon), Place.class),
                FanGroup.read(entry.substring(colon + 1)));
    }
}
