package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rigbrief.measurement.accept.JudgedLine.Verdict;
import rigbrief.measurement.accept.SheetLine.Expected;
import rigbrief.measurement.accept.SheetLine.Promised;
import rigbrief.measurement.accept.SheetLine.Suspect;

/** Sets each line of a sheet against what was measured. */
final class Judge {
    private static final double HUNDREDTHS = 100;

    private Judge() {}

    /** The lines judged, in the sheet's order. */
    static List<JudgedLine> judge(List<SheetLine> lines, Map<String, Double> measured) {
        double warmerK = warmerK(lines, measured);
        List<JudgedLine> judged = new ArrayList<>();
        for (SheetLine line : lines) {
            SheetLine here = inRoom(line, warmerK);
            OptionalDouble figure =
                    measured.containsKey(line.id())
                            ? OptionalDouble.of(measured.get(line.id()))
                            : OptionalDouble.empty();
            judged.add(new JudgedLine(here, figure, verdict(here, figure)));
        }
        return judged;
    }

    /** By how much the room was warmer than planned, in kelvin; 0 where nobody measured it. */
    private static double warmerK(List<SheetLine> lines, Map<String, Double> measured) {
        for (SheetLine line : lines) {
            if (line.id().equals(SheetIds.ROOM_C) && measured.containsKey(line.id())) {
                return measured.get(line.id()) - line.middle().orElseThrow();
            }
        }
        return 0;
    }

    /** The same, of lines that are judged. */
    static double warmerK(List<JudgedLine> judged) {
        Map<String, Double> measured = new LinkedHashMap<>();
        for (JudgedLine line : judged) {
            line.measured().ifPresent(figure -> measured.put(line.line().id(), figure));
        }
        return warmerK(judged.stream().map(JudgedLine::line).toList(), measured);
    }

    private static SheetLine inRoom(SheetLine line, double warmerK) {
        boolean follows = line.unit() == LineUnit.CELSIUS && !line.id().equals(SheetIds.ROOM_C);
        return follows ? line.movedBy(warmerK) : line;
    }

    private static Verdict verdict(SheetLine line, OptionalDouble measured) {
        if (measured.isEmpty()) {
            return Verdict.OPEN;
        }
        double figure = measured.getAsDouble();
        if (line.promise().isPresent()) {
            Promised promise = line.promise().get();
            if (promise.must() && !promise.keptBy(figure)) {
                return Verdict.FAIL;
            }
        }
        return line.range().map(range -> verdict(range, figure)).orElse(Verdict.PASS);
    }

    private static Verdict verdict(Expected range, double figure) {
        long had = Math.round(figure * HUNDREDTHS);
        boolean below = had < Math.round(range.low() * HUNDREDTHS);
        boolean above = had > Math.round(range.high() * HUNDREDTHS);
        boolean suspect =
                below && range.suspect() != Suspect.ABOVE
                        || above && range.suspect() != Suspect.BELOW;
        return suspect ? Verdict.SUSPECT : Verdict.PASS;
    }
}
