package rigbrief.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rigbrief.brief.Brief;
import rigbrief.proposal.Clash;
import rigbrief.proposal.clash.Change;
import rigbrief.proposal.clash.WayOut;

/** Why no build meets a brief's musts, for the template {@code impossible.ftlh}. */
final class Clashes {
    private Clashes() {}

    /** Puts what clashes, what was found, and the ways out into a model. */
    static void put(Map<String, Object> model, Clash clash, Brief brief, Words words) {
        model.put("sets", clash.sets().stream().map(words::say).toList());
        model.put("minimal", clash.minimal());
        // The page says it above already, beside the lists.
        model.put(
                "explanation",
                words.say(
                        clash.explanation().stream()
                                .filter(line -> !line.key().equals("clash.minimal"))
                                .toList()));
        List<List<String>> ways = new ArrayList<>();
        for (WayOut way : clash.waysOut()) {
            String total = words.money(way.totalMinor(), brief.currency());
            for (Change change : way.changes()) {
                ways.add(
                        List.of(
                                words.say(change.need()),
                                words.say(change.from()),
                                words.say(change.to()),
                                total));
                total = "";
            }
        }
        model.put("ways", ways);
    }
}
