package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigbrief.assembly.AirBalance;
import rigbrief.assembly.FanPlan;
import rigbrief.assembly.FanPlan.Direction;
import rigbrief.assembly.FanPlan.FreePosition;
import rigbrief.assembly.FanPlan.PlacedFan;

/** What a fan plan says in words: the list beside its drawing, and what stands in for it. */
final class FanWords {
    private static final int WHOLE = 100;

    private FanWords() {}

    /** A group of fans: which, where, which way, how much. */
    static String group(PlacedFan group) {
        return "%s: %d x %d mm, %s, %s, %s"
                .formatted(
                        group.place().word(),
                        group.count(),
                        group.sizeMm(),
                        origin(group),
                        direction(group),
                        flow(group));
    }

    /** Where the fans of a group come from. */
    static String origin(PlacedFan group) {
        return switch (group.origin()) {
            case CASE -> "came with the case";
            case ADDED -> "bought";
            case RADIATOR -> "on the radiator";
        };
    }

    /** Which way they blow. */
    static String direction(PlacedFan group) {
        return group.direction() == Direction.IN ? "blowing in" : "blowing out";
    }

    /** What they move under load. */
    static String flow(PlacedFan group) {
        return group.origin() == FanPlan.Origin.RADIATOR
                ? "flow not stated"
                : Rounded.print(0, group.flowM3h(), " m³/h");
    }

    /** The balance in one sentence. */
    static String balance(FanPlan plan) {
        AirBalance balance = plan.balance();
        if (balance.lean() == AirBalance.Lean.STILL) {
            return sentence(balance.words());
        }
        return "Under load, at %s of full speed, %s are blown in and %s out: %s."
                .formatted(
                        Rounded.print(0, WHOLE * plan.speedShare(), " %"),
                        Rounded.print(0, balance.inM3h(), " m³/h"),
                        Rounded.print(0, balance.outM3h(), " m³/h"),
                        balance.words());
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    /** Places left empty, in one sentence; empty when there are none. */
    static String free(FanPlan plan) {
        List<String> places = new ArrayList<>();
        for (FreePosition free : plan.free()) {
            places.add(
                    "%s (%d x %d mm)"
                            .formatted(
                                    free.place().word(),
                                    free.room().count(),
                                    free.room().sizeMm()));
        }
        return places.isEmpty() ? "" : "Left empty: " + String.join(", ", places) + ".";
    }

    /** What the drawing shows, for those who can't see it. */
    static String alternative(FanPlan plan) {
        List<String> words = new ArrayList<>();
        words.add("Side view of the case, rear at the left, front at the right.");
        for (PlacedFan group : plan.fans()) {
            words.add(sentence(group(group)));
        }
        if (plan.fans().isEmpty()) {
            words.add("No fan at any side.");
        }
        return String.join(" ", words);
    }
}
