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
    static String machines(DocumentSubject subject) {
        int machines = subject.brief().quantity();
        String each = machines == 1 ? "" : ", each of %d machines".formatted(machines);
        return subject.brief().client() + each;
    }

    /** The title plate that the sheets for bench and counter share. */
    static List<List<String>> plate(DocumentSubject subject, Words words) {
        List<List<String>> plate = new ArrayList<>();
        plate.add(List.of("For", subject.brief().client()));
        plate.add(List.of("Machines", Integer.toString(subject.brief().quantity())));
        subject.filed().tier().ifPresent(tier -> plate.add(List.of("Tier", tier)));
        plate.add(List.of("Prices and stock of", words.date(subject.catalogue().asOf())));
        return plate;
    }

    /** How tight a spot is. */
    static String tight(TightSpot spot) {
        String spare =
                spot.spareMm() < 0
                        ? "%d mm too little".formatted(-spot.spareMm())
                        : "%d mm to spare".formatted(spot.spareMm());
        return "%s: room %d mm, needed %d mm, %s. Measure before you unpack."
                .formatted(spot.title(), spot.haveMm(), spot.needMm(), spare);
    }

    /** How many plugs; a dash where there is nowhere to plug it, or nobody says. */
    static String count(Connection connection) {
        return connection.count() == 0 ? "-" : Integer.toString(connection.count());
    }
}
