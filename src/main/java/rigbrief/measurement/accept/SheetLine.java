package rigbrief.measurement.accept;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of the acceptance sheet.
 *
 * @param id stable id, by which a filled-in sheet is read back
 * @param part which part of the test it belongs to
 * @param what what is measured or looked at
 * @param how how to do it
 * @param unit unit of all its figures
 * @param range what is expected; empty for a line to be answered with pass or fail
 * @param promise what was promised; empty where nothing was
 */
public record SheetLine(
        String id,
        Station part,
        String what,
        String how,
        LineUnit unit,
        Optional<Expected> range,
        Optional<Promised> promise) {
    /** Parts of the test, in the order in which they are done. */
    public enum Station {
        LOOK("Look it over, mains lead out"),
        MEMORY("Memory"),
        STABILITY("Stability, heat, draw and noise"),
        SPEED("Speed"),
        PORTS("Every port and slot");

        private final String title;

        Station(String title) {
            this.title = title;
        }

        /** Its title. */
        public String title() {
            return title;
        }
    }

    /** On which side of its range a figure is suspect. */
    public enum Suspect {
        BELOW,
        ABOVE,
        EITHER
    }

    /**
     * What is expected.
     *
     * @param middle most likely figure
     * @param low lower end of the range
     * @param high upper end of the range
     * @param suspect on which side a figure outside it is suspect
     */
    public record Expected(double middle, double low, double high, Suspect suspect) {
        /** The same some way up. */
        Expected movedBy(double shift) {
            return new Expected(middle + shift, low + shift, high + shift, suspect);
        }
    }

    /**
     * What was promised.
     *
     * @param figure at least that, or at most
     * @param atMost whether it is at most
     * @param must whether the brief says must; else it is a wish, which can't be broken
     */
    public record Promised(double figure, boolean atMost, boolean must) {
        private static final double HUNDREDTHS = 100;

        /** Whether a measured figure keeps it, in hundredths of the unit. */
        public boolean keptBy(double measured) {
            long had = Math.round(measured * HUNDREDTHS);
            long asked = Math.round(figure * HUNDREDTHS);
            return atMost ? had <= asked : had >= asked;
        }
    }

    /** A line to be answered with pass or fail. */
    static SheetLine check(String id, Station part, String what, String how) {
        return new SheetLine(
                id,
                part,
                what,
                how,
                LineUnit.CHECK,
                Optional.empty(),
                Optional.of(new Promised(1, false, true)));
    }

    /** The same line with what is expected some way up. */
    SheetLine movedBy(double shift) {
        return new SheetLine(
                id, part, what, how, unit, range.map(it -> it.movedBy(shift)), promise);
    }

    /** The most likely figure; empty for a line to be answered with pass or fail. */
    public OptionalDouble middle() {
        return range.isPresent() ? OptionalDouble.of(range.get().middle()) : OptionalDouble.empty();
    }
}
