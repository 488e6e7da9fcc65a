package rigbrief.model.memory;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigbrief.model.Expect;

/**
 * The outline of an M.2 module, and how it meets a socket.
 *
 * <p>Formula: a code is the width and then the length in millimetres; a module fits where a
 * stand-off has its length; a module notched for keys B and M works with at most two lanes, one
 * notched for M alone with four.
 *
 * <p>Source: a drive maker's M.2 overview booklet (module codes and key table).
 *
 * @param widthMm 12, 16, 22 or 30
 * @param lengthMm 16, 26, 30, 38, 42, 60, 80 or 110
 */
public record M2Module(int widthMm, int lengthMm) {
    private static final Pattern CODE = Pattern.compile("(\\d{2})(\\d{2,3})");
    private static final Set<Integer> WIDTHS_MM = Set.of(12, 16, 22, 30);
    private static final Set<Integer> LENGTHS_MM = Set.of(16, 26, 30, 38, 42, 60, 80, 110);
    private static final int LANES_OF_TWO_NOTCHES = 2;
    private static final int LANES_OF_ONE_NOTCH = 4;

    /** The notches of a module. */
    public enum Notches {
        /** For sockets of key M only. */
        M,
        /** For sockets of key B and of key M. */
        B_AND_M
    }

    /** Refuses a size that the standard does not have. */
    public M2Module {
        if (!WIDTHS_MM.contains(widthMm) || !LENGTHS_MM.contains(lengthMm)) {
            throw new IllegalArgumentException(
                    "M.2 size: found %d x %d mm, expected a standard size; write 2280 for 22 x 80"
                            .formatted(widthMm, lengthMm));
        }
    }

    /**
     * Reads a module code.
     *
     * @param code for example {@code 2280}
     * @return the outline
     * @throws IllegalArgumentException for anything that is no code
     */
    public static M2Module of(String code) {
        Matcher matcher = CODE.matcher(code);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "M.2 size: found \"%s\", expected width and length; write 2280 for 22 x 80 mm"
                            .formatted(code));
        }
        return new M2Module(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    /**
     * Tells whether a place has a stand-off at this module's length.
     *
     * @param standOffs lengths of the place's stand-offs, mm
     * @return true when one of them is the module's own
     */
    public boolean fits(List<Integer> standOffs) {
        return standOffs.contains(lengthMm);
    }

    /**
     * Gives the lanes on which a drive works in a socket of key M.
     *
     * @param notches the drive's notches
     * @param socketLanes lanes wired to the socket
     * @return lanes
     * @throws IllegalArgumentException for a socket without lanes
     */
    public static int lanes(Notches notches, int socketLanes) {
        int most = notches == Notches.M ? LANES_OF_ONE_NOTCH : LANES_OF_TWO_NOTCHES;
        return Math.min(most, Expect.atLeastOne(socketLanes, "socketLanes"));
    }
}
