package rigbrief.measurement.accept;

import java.util.OptionalDouble;

/**
 * A line of the sheet with what was measured.
 *
 * @param line the line, its range at the temperature of the room it was measured in
 * @param measured what was measured; empty where nothing was
 * @param verdict what follows
 */
public record JudgedLine(SheetLine line, OptionalDouble measured, Verdict verdict) {
    /** Whether it is worse than expected, be it promised or not. */
    public boolean worse() {
        if (verdict == Verdict.FAIL) {
            return true;
        }
        if (verdict != Verdict.SUSPECT) {
            return false;
        }
        boolean above = measured.orElseThrow() > line.middle().orElseThrow();
        return above != line.unit().moreIsBetter();
    }

    /** What follows from a measurement. */
    public enum Verdict {
        /** Not measured. */
        OPEN,
        /** What was promised is kept, and the figure is where it was expected. */
        PASS,
        /** What was promised is kept, but the figure is not where it was expected. */
        SUSPECT,
        /** What was promised is not kept. */
        FAIL
    }
}
