package rigbrief.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assembly.handover.Handover;
import rigbrief.assembly.handover.PartPassport;
import rigbrief.report.page.Document;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Page;
import rigbrief.report.page.Words;

/** The handover sheet as a document, for the owner of the machine. */
public final class HandoverDocument implements Document {
    @Override
    public String word() {
        return "handover";
    }

    @Override
    public Page page(DocumentSubject subject, Words words) {
        Handover handover = Handover.of(subject.filed(), subject.bench());
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("plate", BenchWords.plate(subject, words));
        model.put("parts", parts(handover, subject));
        model.put("guarantee", HandoverWords.GUARANTEE);
        model.put("needs", needs(subject));
        model.put("range", HandoverWords.range(subject));
        model.put("figures", HandoverWords.figures(handover.bench()));
        model.put("settings", handover.settings());
        model.put("care", handover.care());
        model.put("pathWords", HandoverWords.path(handover.path(), subject));
        model.put("upgrades", handover.path().upgrades());
        model.put("heads", handover.path().upgrades().stream().map(HandoverWords::head).toList());
        model.put("nothing", HandoverWords.nothing(handover.path()));
        model.put("keep", HandoverWords.KEEP);
        return Page.still("handover.ftlh", "Handover sheet", model);
    }

    @Override
    public String text(DocumentSubject subject, Words words) {
        return new HandoverText().write(subject, Style.PLAIN);
    }

    @Override
    public boolean wholeMachine() {
        return true;
    }

    private static List<List<String>> parts(Handover handover, DocumentSubject subject) {
        List<List<String>> rows = new ArrayList<>();
        for (PartPassport part : handover.parts()) {
            rows.add(
                    List.of(
                            part.slot().word(),
                            HandoverWords.name(part),
                            HandoverWords.guarantee(part, subject)));
        }
        return rows;
    }

    private static List<List<String>> needs(DocumentSubject subject) {
        List<List<String>> rows = new ArrayList<>();
        for (NeedLine need : NeedLine.of(subject.brief(), subject.audit())) {
            rows.add(
                    List.of(
                            need.title(),
                            HandoverWords.asked(need),
                            HandoverWords.promised(need),
                            HandoverWords.range(need)));
        }
        return rows;
    }
}
