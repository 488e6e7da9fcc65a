package rigbrief.report;

import rigbrief.part.PcCase;

/**
 * From millimetres of a case to units of its drawing.
 *
 * @param perMm units a millimetre takes
 * @param left the case's rear edge
 * @param top its upper edge
 * @param width its depth, in units
 * @param height its height, in units
 */
record CaseScale(double perMm, int left, int top, int width, int height) {
    /** The longer side of the case takes as many units. */
    private static final int SPAN = 420;

    /** Beside the case, for arrows and the words at them. */
    private static final int BESIDE = 152;

    private static final int ABOVE = 96;

    static CaseScale of(PcCase pcCase) {
        double perMm = (double) SPAN / Math.max(pcCase.depthMm(), pcCase.heightMm());
        return new CaseScale(
                perMm,
                BESIDE,
                ABOVE,
                (int) Math.round(pcCase.depthMm() * perMm),
                (int) Math.round(pcCase.heightMm() * perMm));
    }

    int units(double mm) {
        return (int) Math.round(mm * perMm);
    }

    int right() {
        return left + width;
    }

    int bottom() {
        return top + height;
    }

    int wholeWidth() {
        return width + 2 * BESIDE;
    }

    int beside() {
        return BESIDE;
    }

    int above() {
        return ABOVE;
    }
}
