package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assembly.Connection;
import rigbrief.assembly.TightSpot;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Words;

/** Words that the sheets for the bench share. */
final class BenchWords {
    private BenchWords() {}

    /** Whose machine it is, and how many there are. */
    static String machines(DocumentSubject subject, Words words) {
        int machines = subject.brief().quantity();
        String each = machines == 1 ? "" : words.text("bench.each", machines);
        return subject.brief().client() + each;
    }

    /** The title plate that the sheets for bench and counter share. */
    static List<List<String>> plate(DocumentSubject subject, Words words) {
        List<List<String>> plate = new ArrayList<>();
        plate.add(List.of(words.text("bench.for"), subject.brief().client()));
        plate.add(
                List.of(
                        words.text("bench.machines"),
                        Integer.toString(subject.brief().quantity())));
        subject.filed()
                .tier()
                .ifPresent(
                        tier ->
                                plate.add(
                                        List.of(
                                                words.text("bench.tier"),
                                                words.has("tier." + tier)
                                                        ? words.text("tier." + tier)
                                                        : tier)));
        plate.add(List.of(words.text("bench.prices"), words.date(subject.catalogue().asOf())));
        return plate;
    }

    /** How tight a spot is. */
    static String tight(TightSpot spot, Words words) {
        String spare =
                spot.spareMm() < 0
                        ? words.text("bench.little", -spot.spareMm())
                        : words.text("bench.spare", spot.spareMm());
        return words.text(
                "bench.tight",
                words.title(spot.rule(), spot.title()),
                spot.haveMm(),
                spot.needMm(),
                spare);
    }

    /** How many plugs; a dash where there is nowhere to plug it, or nobody says. */
    static String count(Connection connection) {
        return connection.count() == 0 ? "-" : Integer.toString(connection.count());
    }
}
