package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.wording.Phrase;
import rigbrief.wording.Texts;

/** How an M.2 drive goes onto the board. */
final class M2Work {
    /** About metal covers and heat spreaders. Common practice. */
    static String heatSpreader(Texts texts) {
        return texts.text("m2.spreader");
    }

    private M2Work() {}

    static String action(DriveHome home, Texts texts) {
        String action =
                texts.text(
                        "m2.into",
                        home.drive().name(),
                        home.m2().orElseThrow(),
                        home.drive().form().lengthMm());
        String lost = lost(home, texts);
        return lost.isEmpty() ? action : action + " " + texts.text("m2.with", lost);
    }

    /** What stops working because of it; empty when nothing does. */
    static String lost(DriveHome home, Texts texts) {
        List<String> lost = new ArrayList<>();
        if (!home.lostSataPorts().isEmpty()) {
            lost.add(
                    texts.text(
                            "m2.sata",
                            home.lostSataPorts().size(),
                            Phrase.list(home.lostSataPorts())));
        }
        if (!home.lostPositions().isEmpty()) {
            lost.add(
                    texts.text(
                            "m2.slots",
                            home.lostPositions().size(),
                            Phrase.list(home.lostPositions())));
        }
        int count = home.lostSataPorts().size() + home.lostPositions().size();
        return lost.isEmpty() ? "" : texts.text("m2.stops", Phrase.list(lost), count);
    }
}
