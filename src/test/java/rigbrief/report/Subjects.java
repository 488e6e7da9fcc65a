package rigbrief.report;

import java.util.List;
import rigbrief.assembly.ScenarioBuilds;
import rigbrief.assembly.ScenarioBuilds.Filed;
import rigbrief.audit.Auditor;
import rigbrief.report.page.DocumentSubject;

/** Proposals as documents are made of them. */
final class Subjects {
    private Subjects() {}

    /** All of them. */
    static List<DocumentSubject> all() {
        return ScenarioBuilds.all().stream().map(Subjects::of).toList();
    }

    /** Two of them, unlike each other: one machine with a liquid cooler or none, and forty. */
    static List<DocumentSubject> some() {
        return ScenarioBuilds.all().stream()
                .filter(
                        filed ->
                                filed.name().equals("potter, full")
                                        || filed.name().equals("forty-desks, lean"))
                .map(Subjects::of)
                .toList();
    }

    private static DocumentSubject of(Filed filed) {
        return new DocumentSubject(
                filed.name(),
                filed.record(),
                filed.brief(),
                filed.catalogue(),
                new Auditor(filed.brief(), filed.catalogue()).audit(filed.record()));
    }

    /** No line of a text is wider than the narrowest page. */
    static boolean narrow(String text) {
        return text.lines().allMatch(line -> TextPage.length(line) <= TextPage.WIDTH);
    }

    /** A text on one line, as it is read. */
    static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
