package rigbrief.part;

/**
 * A number of fans of one size, written {@code 3x120}.
 *
 * @param count number of fans
 * @param sizeMm frame size in mm
 */
public record FanGroup(int count, int sizeMm) {
    static FanGroup read(String entry) throws Cells.Malformed {
        if (!entry.matches("[1-9]x[0-9]{2,3}")) {
            throw new Cells.Malformed("a number of fans and a size in mm", "write 3x120");
        }
        return new FanGroup(entry.charAt(0) - '0', Integer.parseInt(entry.substring(2)));
    }
}
