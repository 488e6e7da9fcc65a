package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;

/** How an M.2 drive goes onto the board. */
final class M2Work {
    /** Common practice. */
    static final String HEAT_SPREADER =
            "If the board has a metal cover over that slot, take it off first and peel the film from its"
                    + " pad when you put it back. If the drive brings a heat spreader of its own, leave the"
                    + " board's off: never both.";

    private M2Work() {}

    static String action(DriveHome home) {
        String action =
                "%s: into M.2 slot %d by the board's numbers, at a slant until it sits, then down and held by its screw, stand-off at %d mm."
                        .formatted(
                                home.drive().name(),
                                home.m2().orElseThrow(),
                                home.drive().form().lengthMm());
        String lost = lost(home);
        return lost.isEmpty() ? action : action + " With it, " + lost + ".";
    }

    /** What stops working because of it; empty when nothing does. */
    static String lost(DriveHome home) {
        List<String> lost = new ArrayList<>();
        if (!home.lostSataPorts().isEmpty()) {
            lost.add(
                    (home.lostSataPorts().size() == 1 ? "SATA port " : "SATA ports ")
                            + Wording.list(home.lostSataPorts()));
        }
        if (!home.lostPositions().isEmpty()) {
            lost.add(
                    (home.lostPositions().size() == 1
                                    ? "the slot at opening "
                                    : "the slots at openings ")
                            + Wording.list(home.lostPositions()));
        }
        int count = home.lostSataPorts().size() + home.lostPositions().size();
        return lost.isEmpty()
                ? ""
                : Wording.list(lost) + (count == 1 ? " stops working" : " stop working");
    }
}
