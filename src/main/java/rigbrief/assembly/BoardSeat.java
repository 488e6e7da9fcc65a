package rigbrief.assembly;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rigbrief.model.form.BoardFormat;
import rigbrief.model.form.BoardFormat.Hole;
import rigbrief.model.form.BoardPlacement;
import rigbrief.part.BoardForm;

/**
 * Sizes of boards, and the stand-offs they need in a case.
 *
 * <p>Source: the specifications named by {@link BoardFormat}.
 */
public final class BoardSeat {
    private BoardSeat() {}

    /** Extent along the rear edge of the case, in mm. */
    public static int widthMm(BoardForm form) {
        return format(form).widthMm();
    }

    /** Extent from the rear edge towards the front, in mm. */
    public static int depthMm(BoardForm form) {
        return format(form).depthMm();
    }

    /** The holes by their letters; empty for boards whose holes no standard fixes. */
    static List<Hole> holes(BoardForm form) {
        return form == BoardForm.E_ATX ? List.of() : List.copyOf(format(form).holes());
    }

    /**
     * Holes that lack a stand-off where the case is set up for its largest board; empty where none
     * lacks, and for boards whose holes no standard fixes.
     */
    static List<Hole> lacking(BoardForm form, List<BoardForm> caseTakes) {
        Optional<BoardForm> largest =
                caseTakes.stream()
                        .filter(other -> other.compareTo(form) > 0)
                        .max(Comparator.naturalOrder());
        if (form == BoardForm.E_ATX || largest.isEmpty()) {
            return List.of();
        }
        return List.copyOf(
                BoardPlacement.judge(format(form), List.of(format(largest.get()))).missing());
    }

    private static BoardFormat format(BoardForm form) {
        return switch (form) {
            case MINI_ITX -> BoardFormat.MINI_ITX;
            case MICRO_ATX -> BoardFormat.MICRO_ATX;
            case ATX -> BoardFormat.ATX;
            case E_ATX -> BoardFormat.E_ATX;
        };
    }
}
