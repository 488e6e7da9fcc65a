package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigbrief.assembly.AirBalance;
import rigbrief.assembly.FanPlan;
import rigbrief.assembly.FanPlan.Direction;
import rigbrief.assembly.FanPlan.FreePosition;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.report.page.Words;

/** What a fan plan says in words: the list beside its drawing, and what stands in for it. */
final class FanWords {
    private static final int WHOLE = 100;

    private FanWords() {}

    /** A group of fans: which, where, which way, how much. */
    static String group(PlacedFan group, Words words) {
        return "%s: %d x %d mm, %s, %s, %s"
                .formatted(
                        words.text("place." + group.place().word()),
                        group.count(),
                        group.sizeMm(),
                        origin(group, words),
                        direction(group, words),
                        flow(group, words));
    }

    /** Where the fans of a group come from. */
    static String origin(PlacedFan group, Words words) {
        return switch (group.origin()) {
            case CASE -> words.text("fan.case");
            case ADDED -> words.text("fan.bought");
            case RADIATOR -> words.text("fan.radiator");
        };
    }

    /** Which way they blow. */
    static String direction(PlacedFan group, Words words) {
        return group.direction() == Direction.IN ? words.text("fan.in") : words.text("fan.out");
    }

    /** What they move under load. */
    static String flow(PlacedFan group, Words words) {
        return group.origin() == FanPlan.Origin.RADIATOR
                ? words.text("fan.unstated")
                : Rounded.print(0, group.flowM3h(), " m³/h");
    }

    /** The balance in one sentence. */
    static String balance(FanPlan plan, Words words) {
        AirBalance balance = plan.balance();
        if (balance.lean() == AirBalance.Lean.STILL) {
            return sentence(balance.words(words.texts()));
        }
        return words.text(
                        "fan.balance",
                        Rounded.print(0, WHOLE * plan.speedShare(), " %"),
                        Rounded.print(0, balance.inM3h(), " m³/h"),
                        Rounded.print(0, balance.outM3h(), " m³/h"),
                        balance.words(words.texts()))
                + words.text(
                        "fan.needed",
                        Rounded.print(0, plan.heatW(), " W"),
                        Rounded.print(0, plan.neededM3h(), " m³/h"),
                        FanPlan.USUAL_RISE_K);
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    /** Places left empty, in one sentence; empty when there are none. */
    static String free(FanPlan plan, Words words) {
        List<String> places = new ArrayList<>();
        for (FreePosition free : plan.free()) {
            places.add(
                    "%s (%d x %d mm)"
                            .formatted(
                                    words.text("place." + free.place().word()),
                                    free.room().count(),
                                    free.room().sizeMm()));
        }
        return places.isEmpty() ? "" : words.text("fan.free") + String.join(", ", places) + ".";
    }

    /** What the drawing shows, for those who can't see it. */
    static String alternative(FanPlan plan, Words words) {
        List<String> told = new ArrayList<>();
        told.add(words.text("fan.side-view"));
        for (PlacedFan group : plan.fans()) {
            told.add(sentence(group(group, words)));
        }
        if (plan.fans().isEmpty()) {
            told.add(words.text("fan.none"));
        }
        return String.join(" ", told);
    }
}
