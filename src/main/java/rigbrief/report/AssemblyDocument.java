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
        AssemblyPlan plan = AssemblyPlan.of(subject.bench());
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("plate", BenchWords.plate(subject, words));
        model.put("deferral", AssemblyText.DEFERRAL);
        model.put("plan", plan);
        model.put("tight", plan.tight().stream().map(BenchWords::tight).toList());
        model.put("tightMm", Integer.toString(TightSpot.UNDER_MM));
        model.put("fans", fans(plan));
        model.put("balance", FanWords.balance(plan.fans()));
        model.put("free", FanWords.free(plan.fans()));
        model.put("alternative", FanWords.alternative(plan.fans()));
        model.put("drawing", FanDrawing.of(plan.build(), plan.fans()));
        model.put("connections", connections(plan));
        return Page.still("assembly.ftlh", "Assembly plan", model);
    }

    @Override
    public String text(DocumentSubject subject, Words words) {
        return new AssemblyText().write(subject, Style.PLAIN);
    }

    @Override
    public boolean wholeMachine() {
        return true;
    }

    private static List<List<String>> fans(AssemblyPlan plan) {
        List<List<String>> rows = new ArrayList<>();
        for (PlacedFan group : plan.fans().fans()) {
            rows.add(
                    List.of(
                            FanDrawingText.letter(plan.fans(), group),
                            group.place().word(),
                            group.count() + " x " + group.sizeMm() + " mm",
                            FanWords.origin(group),
                            FanWords.direction(group),
                            FanWords.flow(group)));
        }
        return rows;
    }

    private static List<List<String>> connections(AssemblyPlan plan) {
        List<List<String>> rows = new ArrayList<>();
        for (Connection connection : plan.connections()) {
            rows.add(
                    List.of(
                            connection.lead().title(),
                            BenchWords.count(connection),
                            connection.from(),
                            connection.to(),
                            connection.remark()));
        }
        return rows;
    }
}
