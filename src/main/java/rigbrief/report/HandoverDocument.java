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
        Handover handover = Handover.of(subject.filed(), subject.bench(words.texts()));
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("plate", BenchWords.plate(subject, words));
        model.put("parts", parts(handover, subject, words));
        model.put("guarantee", HandoverWords.guarantee(words));
        model.put("needs", needs(subject, words));
        model.put("range", HandoverWords.range(subject, words));
        model.put("figures", HandoverWords.figures(handover.bench(), words));
        model.put("settings", handover.settings());
        model.put("care", handover.care());
        model.put("pathWords", HandoverWords.path(subject, words));
        model.put("upgrades", handover.path().upgrades());
        model.put(
                "heads",
                handover.path().upgrades().stream()
                        .map(step -> HandoverWords.head(step, words))
                        .toList());
        model.put("nothing", HandoverWords.nothing(handover.path(), words));
        model.put("keep", HandoverWords.keep(words));
        return Page.still("handover.ftlh", words.text("hand.title"), model);
    }

    @Override
    public String text(DocumentSubject subject, Words words) {
        return new HandoverText().write(subject, Style.PLAIN, words);
    }

    @Override
    public boolean wholeMachine() {
        return true;
    }

    private static List<List<String>> parts(
            Handover handover, DocumentSubject subject, Words words) {
        List<List<String>> rows = new ArrayList<>();
        for (PartPassport part : handover.parts()) {
            rows.add(
                    List.of(
                            words.text("slot." + part.slot().word()),
                            HandoverWords.name(part),
                            HandoverWords.guarantee(part, subject, words)));
        }
        return rows;
    }

    private static List<List<String>> needs(DocumentSubject subject, Words words) {
        List<List<String>> rows = new ArrayList<>();
        for (NeedLine need : NeedLine.of(subject.brief(), subject.audit())) {
            rows.add(
                    List.of(
                            HandoverWords.title(need, words),
                            HandoverWords.asked(need, words),
                            HandoverWords.promised(need, words),
                            HandoverWords.range(need, words)));
        }
        return rows;
    }
}
