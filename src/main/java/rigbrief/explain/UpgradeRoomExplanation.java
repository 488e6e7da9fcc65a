package rigbrief.explain;

import java.math.BigDecimal;
import rigbrief.assess.Assessment;
import rigbrief.build.Build;
import rigbrief.goal.UpgradeRoomGoal;
import rigbrief.goal.UpgradeRoomGoal.Room;
import rigbrief.part.Slot;

/** How the room to grow was counted. */
final class UpgradeRoomExplanation {
    private static final String SHARE = "max(0, min(1, {} / {}))";

    private UpgradeRoomExplanation() {}

    static Explanation of(Derivation how, Assessment it, BigDecimal utility) {
        Build build = it.build();
        Room room = UpgradeRoomGoal.room(it);
        String board = build.board().id();
        how.given("memory slots", build.board().memorySlots(), "", board + ", memory_slots");
        how.given("modules", build.memoryModules(), "", build.memory().id() + ", modules x packs");
        how.given(
                "free M.2 drive places", room.freeM2(), "", board + ", m2, less the drives there");
        how.given("rating", build.supply().watts(), "W", build.supply().id() + ", watts");
        double loadW = it.power().sustainedW();
        how.given("sustained load", loadW, "W", "number power.sustained-w, before rounding");
        int planned = it.brief().headroom().supplySharePercent();
        how.given("planned share of the rating", planned, "%", "brief, headroom");
        how.given(
                "another processor family",
                room.otherFamily() ? 1 : 0,
                "",
                board + ", families; 1 for yes");
        how.step(
                "free memory slots",
                room.freeMemorySlots(),
                "",
                "{} - {}",
                build.board().memorySlots(),
                build.memoryModules());
        double memory =
                how.step(
                        "memory",
                        clip(room.freeMemorySlots() / UpgradeRoomGoal.MODULES),
                        "",
                        "max(0, min(1, ({} - {}) / {}))",
                        build.board().memorySlots(),
                        build.memoryModules(),
                        UpgradeRoomGoal.MODULES);
        double drives =
                how.step(
                        "drives",
                        clip(room.freeM2() / UpgradeRoomGoal.DRIVES),
                        "",
                        SHARE,
                        room.freeM2(),
                        UpgradeRoomGoal.DRIVES);
        double spareW =
                how.step(
                        "spare watts",
                        room.spareW(),
                        "W",
                        "{} - {} / ({} / 100)",
                        build.supply().watts(),
                        loadW,
                        planned);
        double watts =
                how.step(
                        "watts",
                        clip(spareW / UpgradeRoomGoal.SPARE_W),
                        "",
                        SHARE,
                        spareW,
                        UpgradeRoomGoal.SPARE_W);
        int next = nextCard(how, it, room, loadW, planned);
        return how.gives(
                utility,
                "",
                "({} + {} + {} + {} + {}) / 5",
                memory,
                drives,
                watts,
                room.otherFamily() ? 1 : 0,
                next);
    }

    private static int nextCard(
            Derivation how, Assessment it, Room room, double loadW, int planned) {
        Build build = it.build();
        boolean card = build.has(Slot.GRAPHICS);
        how.given(
                "length for a card",
                room.cardRoomMm(),
                "mm",
                build.pcCase().id() + ", graphics_length_mm, less what stands in its way");
        how.given(
                "length of the card",
                room.cardMm(),
                "mm",
                card
                        ? build.graphics().id() + ", length_mm"
                        : "a step below an ordinary card, common practice");
        how.step(
                "length left by the next card",
                room.cardRoomMm() - room.cardMm() - UpgradeRoomGoal.LONGER_MM,
                "mm",
                "{} - {} - {}",
                room.cardRoomMm(),
                room.cardMm(),
                UpgradeRoomGoal.LONGER_MM);
        how.step(
                "watts left by the next card",
                room.spareStrongerW(),
                "W",
                "{} - ({} + {}) / ({} / 100)",
                build.supply().watts(),
                loadW,
                UpgradeRoomGoal.STRONGER_W,
                planned);
        how.remark(
                room.nextCard()
                        ? "neither length nor watts fall below 0: the next card class counts 1"
                        : "length or watts fall below 0: the next card class counts 0");
        return room.nextCard() ? 1 : 0;
    }

    private static double clip(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
