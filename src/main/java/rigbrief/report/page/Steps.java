package rigbrief.report.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.audit.Audit;
import rigbrief.proposal.FrontPoint;
import rigbrief.report.page.NeedView.Bar;

/** What the slider walks through. */
final class Steps {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final SheetSet set;
    private final List<Audit> audits;
    private final Words words;
    private final BuildViews builds;
    private final NeedBook needs;

    /**
     * Steps.
     *
     * @param audits one per point of the set's front
     */
    Steps(SheetSet set, List<Audit> audits, Words words, BuildViews builds, NeedBook needs) {
        this.set = set;
        this.audits = audits;
        this.words = words;
        this.builds = builds;
        this.needs = needs;
    }

    List<StepView> views(List<String> places) {
        List<StepView> views = new ArrayList<>();
        for (int i = 0; i < audits.size(); i++) {
            views.add(view(i, places.get(2 * i), places.get(2 * i + 1)));
        }
        return views;
    }

    private StepView view(int index, String x, String y) {
        Audit audit = audits.get(index);
        Optional<Audit> before = index == 0 ? Optional.empty() : Optional.of(audits.get(index - 1));
        Trades trades = new Trades(words);
        String total = money(set.front().get(index).totalMinor());
        return new StepView(
                index + 1,
                total,
                before.map(each -> money(more(index))).orElse(""),
                before.map(each -> than(index)).orElse(words.text("slider.more.first")),
                words.text("slider.shown", total),
                words.text(
                        "slider.value",
                        total,
                        words.number(0, index + 1),
                        words.number(0, audits.size())),
                tier(set.front().get(index)),
                needs.views(audit),
                builds.parts(audit, List.of(), before),
                new FigureWords(set.brief(), words).of(audit),
                before.map(each -> buys(trades, audit, each)).orElse(List.of()),
                before.map(each -> trades.worse(audit, each)).orElse(List.of()),
                before.map(each -> trades.changes(audit.build(), each.build())).orElse(List.of()),
                x,
                y);
    }

    /** The front only rises: where nothing is noticed by itself, it is a little of many things. */
    private List<String> buys(Trades trades, Audit audit, Audit before) {
        List<String> better = trades.better(audit, before);
        return better.isEmpty() ? List.of(words.text("slider.little")) : better;
    }

    private String than(int index) {
        long leastMinor = set.front().get(0).totalMinor();
        return words.text(
                "slider.more.than",
                money(more(index)),
                money(set.front().get(index).totalMinor() - leastMinor));
    }

    private long more(int index) {
        return set.front().get(index).totalMinor() - set.front().get(index - 1).totalMinor();
    }

    private String tier(FrontPoint point) {
        return set.sheets().stream()
                .filter(sheet -> sheet.audit().build().equals(point.build()))
                .map(sheet -> words.text("slider.same", builds.tierName(sheet)))
                .findFirst()
                .orElse("");
    }

    private String money(long minor) {
        return words.money(minor, set.brief().currency());
    }

    /**
     * The steps for the page's script: JSON that is safe inside a script element, since no
     * character in it can end one.
     */
    static String json(List<StepView> steps) {
        ArrayNode all = JSON.createArrayNode();
        steps.forEach(step -> fill(all.addObject(), step));
        try {
            return JSON.writeValueAsString(all)
                    .replace("&", "\\u0026")
                    .replace("<", "\\u003c")
                    .replace(">", "\\u003e")
                    .replace("\u2028", "\\u2028")
                    .replace("\u2029", "\\u2029");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts that can't be written as JSON", e);
        }
    }

    private static void fill(ObjectNode json, StepView step) {
        json.put("total", step.total())
                .put("more", step.than())
                .put("shown", step.shown())
                .put("value", step.value())
                .put("tier", step.tier())
                .put("x", step.x())
                .put("y", step.y());
        step.needs().forEach(need -> fill(json.withArray("needs").addObject(), need));
        step.parts().forEach(part -> fill(json.withArray("parts").addObject(), part));
        step.figures()
                .forEach(
                        figure ->
                                json.withArray("figures")
                                        .addObject()
                                        .put("words", figure.words())
                                        .put("numbers", figure.numbers()));
        texts(json, "buys", step.buys());
        texts(json, "gives", step.gives());
        texts(json, "changes", step.changes());
    }

    private static void fill(ObjectNode json, NeedView need) {
        Bar bar = need.bar();
        json.put("promised", need.promised())
                .put("range", need.range())
                .put("verdict", need.verdict())
                .put("from", bar.from())
                .put("to", bar.to())
                .put("at", bar.at())
                .put("words", bar.words());
    }

    private static void fill(ObjectNode json, PartLine part) {
        json.put("place", part.place())
                .put("name", part.name())
                .put("what", part.what())
                .put("supplier", part.supplier())
                .put("price", part.price())
                .put("changed", part.changed());
    }

    private static void texts(ObjectNode json, String name, List<String> texts) {
        ArrayNode array = json.putArray(name);
        texts.forEach(array::add);
    }
}
