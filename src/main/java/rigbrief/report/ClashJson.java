package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.proposal.Clash;
import rigbrief.proposal.clash.Change;
import rigbrief.proposal.clash.WayOut;
import rigbrief.quantity.Money;

/** Why no build meets the musts, and the ways out, as fields of a JSON object. */
final class ClashJson {
    private static final String AND = " and ";

    private ClashJson() {}

    static void fields(JsonPage json, Clash clash, Brief brief) {
        json.texts("clash", clash.needs())
                .field("minimal", clash.minimal())
                .list("clashes", clash.sets(), set -> json.texts("needs", set))
                .field("all-clashes", clash.allSets())
                .texts("explanation", clash.explanation())
                .list("ways-out", clash.waysOut(), way -> way(json, way, brief));
    }

    private static void way(JsonPage json, WayOut way, Brief brief) {
        List<Change> changes = way.changes();
        json.field(
                        "change",
                        String.join(AND, changes.stream().map(it -> it.need().toString()).toList()))
                .field(
                        "from",
                        String.join(AND, changes.stream().map(it -> it.from().toString()).toList()))
                .field(
                        "to",
                        String.join(AND, changes.stream().map(it -> it.to().toString()).toList()))
                .field("total", Money.ofMinor(way.totalMinor(), brief.currency()).plain())
                .field("proven", way.proven())
                .list("changes", changes, change -> change(json, change))
                .texts("parts", parts(way.build()));
    }

    private static void change(JsonPage json, Change change) {
        json.field("need", change.need().toString())
                .field("from", change.from().toString())
                .field("to", change.to().toString());
    }

    /** Ids of a build's parts, in slot order. */
    static List<String> parts(Build build) {
        List<String> parts = new ArrayList<>();
        build.filled().forEach((slot, part) -> parts.add(part.id()));
        return parts;
    }
}
