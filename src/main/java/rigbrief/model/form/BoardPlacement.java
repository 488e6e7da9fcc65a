package rigbrief.model.form;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rigbrief.model.form.BoardFormat.Hole;

/**
 * How a board sits in a case that is made for other boards.
 *
 * <p>Formula: it sits where no side exceeds the largest board of the case and its holes meet
 * stand-offs; some of the holes met is support with gaps, none is no place at all.
 *
 * <p>Source: the hole sets and sizes of {@link BoardFormat}; all formats share the corner at the
 * rear opening, so that sizes compare side by side.
 */
public final class BoardPlacement {
    private BoardPlacement() {}

    /** How well a board sits. */
    public enum Verdict {
        /** Every hole has its stand-off. */
        FITS,
        /** The board goes in, but some holes have no stand-off. */
        SUPPORTED_WITH_GAPS,
        /** A side is too long. */
        TOO_LARGE,
        /** No hole has a stand-off. */
        OTHER_HOLES
    }

    /**
     * The verdict with the holes left in the air.
     *
     * @param verdict how well the board sits
     * @param missing holes without a stand-off, in the order of their letters
     */
    public record Placement(Verdict verdict, Set<Hole> missing) {}

    /**
     * Gives how a board sits.
     *
     * @param board the board's format
     * @param caseTakes the formats that the case is made for, at least one
     * @return verdict and missing stand-offs
     * @throws IllegalArgumentException for a case that takes nothing
     */
    public static Placement judge(BoardFormat board, List<BoardFormat> caseTakes) {
        if (caseTakes.isEmpty()) {
            throw new IllegalArgumentException(
                    "caseTakes: found no format, expected one or more; list the case's boards");
        }
        EnumSet<Hole> missing = EnumSet.copyOf(board.holes());
        boolean wideEnough = false;
        boolean deepEnough = false;
        for (BoardFormat format : caseTakes) {
            missing.removeAll(format.holes());
            wideEnough |= board.widthMm() <= format.widthMm();
            deepEnough |= board.depthMm() <= format.depthMm();
        }
        return new Placement(verdict(board, wideEnough && deepEnough, missing), missing);
    }

    private static Verdict verdict(BoardFormat board, boolean largeEnough, Set<Hole> missing) {
        if (!largeEnough) {
            return Verdict.TOO_LARGE;
        }
        if (missing.isEmpty()) {
            return Verdict.FITS;
        }
        return missing.size() == board.holes().size()
                ? Verdict.OTHER_HOLES
                : Verdict.SUPPORTED_WITH_GAPS;
    }
}
