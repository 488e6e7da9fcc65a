package rigbrief.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.assess.Workings;
import rigbrief.build.Build;
import rigbrief.model.heat.CardCooling;
import rigbrief.model.power.TypicalDraw;
import rigbrief.part.CoolerType;
import rigbrief.part.Drive;
import rigbrief.part.Processor;
import rigbrief.part.Slot;

/** The steps that explanations of power, heat and noise share: what each part draws. */
final class Draws {
    private static final String PRACTICE = "common practice";

    private Draws() {}

    /**
     * Power of the two parts that matter.
     *
     * @param processorW the processor's, in W
     * @param cardW the card's, in W; 0 without one
     */
    record Two(double processorW, double cardW) {}

    static double processorW(Derivation how, Assessment it) {
        Processor processor = it.build().processor();
        return how.given(
                "processor, sustained",
                (double) processor.sustainedPowerW(),
                "W",
                processor.id() + ", sustained_power_w");
    }

    static double cardW(Derivation how, Assessment it) {
        if (!it.build().has(Slot.GRAPHICS)) {
            return how.given("card", 0.0, "W", "no graphics card");
        }
        int watts = it.build().graphics().boardPowerW();
        how.remark(CardCooling.CARD_W.remark(watts));
        return how.given(
                "card, board power",
                (double) watts,
                "W",
                it.build().graphics().id() + ", board_power_w");
    }

    /** Processor and card at rest, with the steps. */
    static Two resting(Derivation how, Assessment it) {
        return resting(how, processorW(how, it), cardW(how, it));
    }

    private static Two resting(Derivation how, double sustainedW, double boardW) {
        double processorW =
                how.step(
                        "processor at rest",
                        TypicalDraw.processorIdleW(sustainedW),
                        "W",
                        "min({}, 6 + 0.08 x {})",
                        sustainedW,
                        sustainedW);
        double cardW =
                how.step(
                        "card at rest",
                        boardW == 0 ? 0 : TypicalDraw.cardIdleW(boardW),
                        "W",
                        "min({}, 5 + 0.05 x {})",
                        boardW,
                        boardW);
        return new Two(processorW, cardW);
    }

    /** Processor and card under the heaviest workload, with the steps. */
    static Two working(Derivation how, Assessment it) {
        double sustainedW = processorW(how, it);
        double boardW = cardW(how, it);
        Optional<Prediction> heaviest = Workings.heaviest(it);
        String office = "no workload in the brief: office work, " + PRACTICE;
        double processorUse =
                how.given(
                        "processor busy, share of the time",
                        heaviest.map(Prediction::processorUse)
                                .orElse(Workings.OFFICE_PROCESSOR_USE),
                        "",
                        heaviest.map(one -> use(one, "processor")).orElse(office));
        double cardUse =
                how.given(
                        "card busy, share of the time",
                        heaviest.map(Prediction::graphicsUse).orElse(Workings.OFFICE_GRAPHICS_USE),
                        "",
                        heaviest.map(one -> use(one, "card")).orElse(office));
        Two rest = resting(how, sustainedW, boardW);
        return new Two(
                busy(how, "processor at work", rest.processorW(), sustainedW, processorUse),
                busy(how, "card at work", rest.cardW(), boardW, cardUse));
    }

    private static String use(Prediction heaviest, String part) {
        return "number workload.%s.%s-use, before rounding"
                .formatted(heaviest.workload().id(), part);
    }

    private static double busy(
            Derivation how, String name, double idleW, double fullW, double use) {
        return how.step(
                name,
                idleW + (fullW - idleW) * use,
                "W",
                "{} + ({} - {}) x {}",
                idleW,
                fullW,
                idleW,
                use);
    }

    /** Everything but processor, card and supply, item by item. */
    static double othersW(Derivation how, Build build, boolean working) {
        Sum sum = new Sum(how);
        double boardW = working ? TypicalDraw.BOARD_LOAD_W : TypicalDraw.BOARD_IDLE_W;
        sum.add("board", 1, boardW, build.board().id());
        double moduleW = working ? TypicalDraw.MODULE_LOAD_W : TypicalDraw.MODULE_IDLE_W;
        sum.add("memory module", build.memoryModules(), moduleW, build.memory().id());
        for (Drive drive : build.drives()) {
            sum.add("drive", 1, driveW(drive, working), drive.id());
        }
        double fanW = working ? TypicalDraw.FAN_FULL_W : TypicalDraw.FAN_FULL_W / 4;
        int included = 0;
        for (var fans : build.pcCase().includedFans()) {
            included += fans.fans().count();
        }
        sum.add("fan of the case", included, fanW, build.pcCase().id());
        if (build.has(Slot.FANS)) {
            sum.add("added fan", build.fanCount(), fanW, build.fan().id());
        }
        if (build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID) {
            sum.add("pump", 1, TypicalDraw.PUMP_W, build.cooler().id());
        }
        if (build.has(Slot.WIRELESS)) {
            sum.add("wireless", 1, TypicalDraw.WIRELESS_W, build.wireless().id());
        }
        if (working) {
            sum.add("attached devices", 1, TypicalDraw.ATTACHED_W, "front ports");
        }
        return sum.total(working ? "everything else at work" : "everything else at rest");
    }

    private static double driveW(Drive drive, boolean working) {
        if (drive.form().m2()) {
            return working ? TypicalDraw.M2_DRIVE_LOAD_W : TypicalDraw.M2_DRIVE_IDLE_W;
        }
        if (drive.dba() > 0) {
            return working ? TypicalDraw.DISK_LOAD_W : TypicalDraw.DISK_IDLE_W;
        }
        return working ? TypicalDraw.SATA_DRIVE_LOAD_W : TypicalDraw.SATA_DRIVE_IDLE_W;
    }

    private static final class Sum {
        private final Derivation how;
        private final StringBuilder template = new StringBuilder();
        private final List<Object> values = new ArrayList<>();
        private double totalW;

        Sum(Derivation how) {
            this.how = how;
        }

        void add(String name, int count, double eachW, String part) {
            if (count > 0) {
                how.given(name + ", each of " + count, eachW, "W", PRACTICE + " (" + part + ")");
                template.append(template.isEmpty() ? "" : " + ").append("{} x {}");
                values.add(count);
                values.add(eachW);
                totalW += count * eachW;
            }
        }

        double total(String name) {
            return how.step(name, totalW, "W", template.toString(), values.toArray());
        }
    }
}
