package rigbrief.model.form;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * Board sizes and mounting holes.
 *
 * <p>Source: microATX Motherboard Interface Specification 1.2, tables 3 and 4 and figure 2 (sizes
 * and holes of ATX and microATX); Mini-ITX Addendum 1.1 (size); SSI CEB and EEB sizes from
 * restatements. The four holes of Mini-ITX, and E-ATX as a deep board on ATX holes, are from
 * memory.
 */
public enum BoardFormat {
    /** ATX. */
    ATX(305, 244, 7, atxHoles()),
    /** microATX at its greatest. */
    MICRO_ATX(244, 244, 4, microAtxHoles()),
    /** Mini-ITX. */
    MINI_ITX(170, 170, 1, EnumSet.of(Hole.C, Hole.F, Hole.H, Hole.J)),
    /** Deep boards sold as E-ATX, which no standard fixes. */
    E_ATX(305, 277, 7, atxHoles()),
    /** SSI CEB. */
    SSI_CEB(305, 267, 7, atxHoles()),
    /** SSI EEB, with holes of its own. */
    SSI_EEB(305, 330, 7, EnumSet.of(Hole.EEB_SET));

    /** Hole positions by the letters of the specification. */
    public enum Hole {
        /** A. */
        A,
        /** B, from the older full-size pattern. */
        B,
        /** C. */
        C,
        /** F. */
        F,
        /** G. */
        G,
        /** H. */
        H,
        /** J. */
        J,
        /** K. */
        K,
        /** L. */
        L,
        /** M. */
        M,
        /** R. */
        R,
        /** S. */
        S,
        /** The whole set of SSI EEB, which shares too little to be told apart by letters. */
        EEB_SET
    }

    private final int widthMm;
    private final int depthMm;
    private final int mostSlots;
    private final Set<Hole> holes;

    BoardFormat(int widthMm, int depthMm, int mostSlots, Set<Hole> holes) {
        this.widthMm = widthMm;
        this.depthMm = depthMm;
        this.mostSlots = mostSlots;
        this.holes = Collections.unmodifiableSet(holes);
    }

    private static EnumSet<Hole> atxHoles() {
        return EnumSet.of(Hole.A, Hole.C, Hole.F, Hole.G, Hole.H, Hole.J, Hole.K, Hole.L, Hole.M);
    }

    private static EnumSet<Hole> microAtxHoles() {
        return EnumSet.of(Hole.B, Hole.C, Hole.F, Hole.H, Hole.J, Hole.L, Hole.M, Hole.R, Hole.S);
    }

    /**
     * Gives the size along the case's rear edge.
     *
     * @return mm
     */
    public int widthMm() {
        return widthMm;
    }

    /**
     * Gives the size from the rear edge to the front.
     *
     * @return mm
     */
    public int depthMm() {
        return depthMm;
    }

    /**
     * Gives the most expansion slots a board of this size has.
     *
     * @return slots
     */
    public int mostSlots() {
        return mostSlots;
    }

    /**
     * Gives the mounting holes.
     *
     * @return holes in the order of their letters, unmodifiable
     */
    public Set<Hole> holes() {
        return holes;
    }
}
