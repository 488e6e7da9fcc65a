package rigbrief.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assembly.AssemblyPlan;
import rigbrief.assembly.Connection;
import rigbrief.assembly.FanPlan.PlacedFan;
import rigbrief.assembly.TightSpot;
import rigbrief.report.page.Document;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Page;
import rigbrief.report.page.Words;

/** The assembly plan as a document: one sheet for the bench, to be ticked off. */
public final class AssemblyDocument implements Document {
    @Override
    public String word() {
        return "assembly";
    }

    @Override
    public Page page(DocumentSubject subject, Words words) {
        AssemblyPlan plan = AssemblyPlan.of(subject.bench(words.texts()));
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("plate", BenchWords.plate(subject, words));
        model.put("deferral", words.text("plan.deferral"));
        model.put("plan", plan);
        model.put(
                "lookAt",
                plan.lookAt().stream()
                        .map(
                                finding ->
                                        words.title(finding.rule(), finding.title())
                                                + ": "
                                                + words.say(finding.phrase()))
                        .toList());
        model.put(
                "tight", plan.tight().stream().map(spot -> BenchWords.tight(spot, words)).toList());
        model.put("tightMm", TightSpot.UNDER_MM);
        model.put("fans", fans(plan, words));
        model.put("balance", FanWords.balance(plan.fans(), words));
        model.put("free", FanWords.free(plan.fans(), words));
        model.put("alternative", FanWords.alternative(plan.fans(), words));
        model.put("drawing", FanDrawing.of(plan.build(), plan.fans(), words));
        model.put("connections", connections(plan, words));
        return Page.still("assembly.ftlh", words.text("plan.title"), model);
    }

    @Override
    public String text(DocumentSubject subject, Words words) {
        return new AssemblyText().write(subject, Style.PLAIN, words);
    }

    @Override
    public boolean wholeMachine() {
        return true;
    }

    private static List<List<String>> fans(AssemblyPlan plan, Words words) {
        List<List<String>> rows = new ArrayList<>();
        for (PlacedFan group : plan.fans().fans()) {
            rows.add(
                    List.of(
                            FanDrawingText.letter(plan.fans(), group),
                            words.text("place." + group.place().word()),
                            group.count() + " x " + group.sizeMm() + " mm",
                            FanWords.origin(group, words),
                            FanWords.direction(group, words),
                            FanWords.flow(group, words)));
        }
        return rows;
    }

    private static List<List<String>> connections(AssemblyPlan plan, Words words) {
        List<List<String>> rows = new ArrayList<>();
        for (Connection connection : plan.connections()) {
            rows.add(
                    List.of(
                            connection.lead().title(words.texts()),
                            BenchWords.count(connection),
                            connection.from(),
                            connection.to(),
                            connection.remark()));
        }
        return rows;
    }
}
