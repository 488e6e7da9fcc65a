package rigbrief.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import rigbrief.measurement.accept.LineUnit;
import rigbrief.measurement.accept.Sheet.Run;
import rigbrief.measurement.accept.SheetLine;
import rigbrief.measurement.accept.SheetLine.Expected;
import rigbrief.measurement.accept.Walk;

/** How lines of an acceptance sheet are spelt. */
final class SheetWords {
    /** What to mind before and while a machine is tested. */
    static final List<String> CAUTIONS =
            List.of(
                    "Mains: switch the supply off and pull the lead out before you touch anything"
                            + " inside.",
                    "Stored charge: never open the supply; it holds hundreds of volts for minutes"
                            + " after the lead is out. With the lead out, press the power button"
                            + " once and wait ten seconds.",
                    "Hot surfaces: after a run let coolers, card and drives cool for ten minutes"
                            + " before you touch them.",
                    "The manuals of the parts' makers go before this sheet wherever they say"
                            + " otherwise.");

    private static final int MINUTE_S = 60;

    private SheetWords() {}

    static String station(SheetLine.Station station) {
        return station.name().toLowerCase(Locale.ROOT);
    }

    /** A figure with its unit. */
    static String figure(LineUnit unit, double figure) {
        if (unit == LineUnit.CHECK) {
            return figure > 0 ? "pass" : "fail";
        }
        String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
        return number(unit, figure) + symbol;
    }

    static String number(LineUnit unit, double figure) {
        return Rounded.print(unit.decimals(), figure, "");
    }

    /** What is expected: a range, or one figure where it has no width. */
    static String expected(SheetLine line) {
        if (line.range().isEmpty()) {
            return "pass";
        }
        Expected range = line.range().get();
        String symbol = line.unit().symbol().isEmpty() ? "" : " " + line.unit().symbol();
        String low = number(line.unit(), range.low());
        String high = number(line.unit(), range.high());
        return (low.equals(high) ? low : low + " to " + high) + symbol;
    }

    /** What was promised, empty where nothing was. */
    static String promised(SheetLine line) {
        if (line.promise().isEmpty() || saidAlready(line)) {
            return "";
        }
        boolean atMost = line.promise().get().atMost();
        String asked = Rounded.asAsked(line.promise().get().figure()).toPlainString();
        String words = (atMost ? "at most " : "at least ") + asked;
        return line.promise().get().must() ? words : words + " (wish)";
    }

    /** A figure that has to be met exactly is not said twice. */
    private static boolean saidAlready(SheetLine line) {
        return line.range().map(range -> range.low() == range.high()).orElse(true);
    }

    static String run(Run run) {
        String settings = run.settings().isEmpty() ? "" : " at " + run.settings();
        Optional<Walk> walk = run.walk();
        if (walk.isEmpty()) {
            return "%s: %s; once to warm up, then by the clock.".formatted(run.title(), run.job());
        }
        String legs =
                walk.get().legs().stream()
                        .map(leg -> leg.scene() + " " + time(leg.seconds()))
                        .collect(Collectors.joining(", "));
        return "%s%s: %s; %s minutes in all. Warm up for ten minutes first, cap and frame sync off; three"
                        .formatted(run.title(), settings, legs, time(walk.get().seconds()))
                + " walks, enter the middle one.";
    }

    private static String time(int seconds) {
        return "%d:%02d".formatted(seconds / MINUTE_S, seconds % MINUTE_S);
    }
}
