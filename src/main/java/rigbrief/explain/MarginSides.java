package rigbrief.explain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Layout;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.assess.Promise.Measure;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.model.speed.NormalDistribution;
import rigbrief.part.Drive;
import rigbrief.part.Part;
import rigbrief.part.Plug;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.Tally;
import rigbrief.quantity.Length;
import rigbrief.rule.Owned;
import rigbrief.rule.fit.SupplyLoadRule;
import rigbrief.rule.fit.SupplyPeakRule;
import rigbrief.rule.fit.SupplySizes;
import rigbrief.rule.need.GraphicsMemoryRule;
import rigbrief.rule.need.PromiseRule;

/**
 * How what there is and what is needed of a rule came about.
 *
 * <p>A side is either an input, copied from a part's sheet or the brief, or the value of a step.
 */
final class MarginSides {
    /** Names of the two sides among inputs and steps. */
    static final String THERE_IS = "there is";

    static final String NEEDED = "needed";

    private final Derivation how;
    private final Assessment it;
    private final Build build;
    private final Brief brief;
    private final BigDecimal have;
    private final BigDecimal need;
    private final String symbol;

    MarginSides(Derivation how, Assessment it, BigDecimal have, BigDecimal need, String symbol) {
        this.how = how;
        this.it = it;
        this.build = it.build();
        this.brief = it.brief();
        this.have = have;
        this.need = need;
        this.symbol = symbol;
    }

    /** Whether the margin of a rule is known here. */
    boolean of(String rule) {
        switch (rule) {
            case "memory-slots" -> memorySlots();
            case "card-length" -> cardLength();
            case "card-height" -> {
                copied(THERE_IS, have, column(Slot.CASE, "graphics_height_mm"));
                copied(NEEDED, need, column(Slot.GRAPHICS, "height_mm"));
            }
            case "card-slots" -> cardSlots();
            case "cooler-height" -> coolerHeight();
            case "memory-under-cooler" -> memoryUnderCooler();
            case "supply-length" -> {
                boolean bare =
                        build.pcCase().supplyLength().or(Length.mm(0)).millimetres() == haveInt();
                copied(
                        THERE_IS,
                        have,
                        column(
                                Slot.CASE,
                                bare ? "supply_length_mm" : "supply_length_with_cage_mm"));
                copied(NEEDED, need, column(Slot.SUPPLY, "length_mm"));
            }
            case "supply-load" -> supplyLoad();
            case "supply-peak" -> supplyPeak();
            case "board-power" -> {
                copied(THERE_IS, have, column(Slot.BOARD, "processor_power_w"));
                copied(NEEDED, need, column(Slot.PROCESSOR, "sustained_power_w"));
            }
            case "picture" -> picture();
            case "display-link" -> displayLink();
            case "ceiling" -> ceiling();
            case "promise" -> promise();
            case "graphics-memory" -> graphicsMemory();
            case "memory-enough" -> memoryEnough();
            case "storage-enough" -> storageEnough();
            case "noise" -> noise();
            case "mass" -> mass();
            case "size" -> {
                copied(THERE_IS, have, "brief, size");
                volume();
            }
            case "suppliers" -> {
                copied(THERE_IS, have, "brief, buying, at-most-suppliers");
                copied(NEEDED, need, "number cost.suppliers");
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private int haveInt() {
        return have.intValue();
    }

    private void copied(String side, BigDecimal value, String from) {
        how.fact(side, value, symbol, from);
    }

    private void step(String side, BigDecimal value, String template, Object... values) {
        how.exact(side, value, symbol, template, values);
    }

    private String column(Slot slot, String column) {
        return build.part(slot).id() + ", " + column;
    }

    private void memorySlots() {
        copied(THERE_IS, have, column(Slot.BOARD, "memory_slots"));
        int packs = build.pieces(Slot.MEMORY);
        how.fact("modules in a pack", build.memory().modules(), "", column(Slot.MEMORY, "modules"));
        how.fact("packs", packs, "", "the build");
        step(NEEDED, need, "{} x {}", build.memory().modules(), packs);
    }

    private void cardLength() {
        Layout layout = it.layout();
        int taken = layout.cardLengthTakenMm();
        if (taken == 0) {
            copied(THERE_IS, have, column(Slot.CASE, "graphics_length_mm"));
        } else {
            int whole = build.pcCase().graphicsLength().or(Length.mm(0)).millimetres();
            int thick = taken - Layout.FAN_THICKNESS_MM;
            boolean stated = build.cooler().thickness().stated();
            how.fact("room", whole, "mm", column(Slot.CASE, "graphics_length_mm"));
            how.fact(
                    "radiator in front",
                    thick,
                    "mm",
                    stated ? column(Slot.COOLER, "thickness_mm") : "common practice");
            how.fact("its fans", Layout.FAN_THICKNESS_MM, "mm", "common practice");
            step(THERE_IS, have, "max(0, {} - ({} + {}))", whole, thick, Layout.FAN_THICKNESS_MM);
        }
        copied(NEEDED, need, column(Slot.GRAPHICS, "length_mm"));
    }

    private void cardSlots() {
        copied(THERE_IS, have, column(Slot.CASE, "expansion_slots"));
        how.fact(
                "first position of the card",
                it.layout().cardFirst(),
                "",
                column(Slot.BOARD, "slots") + ": the first slot of 16 lanes");
        how.given(
                "width of the card", build.graphics().slots(), "", column(Slot.GRAPHICS, "slots"));
        step(NEEDED, need, "{} + ceil({}) - 1", it.layout().cardFirst(), build.graphics().slots());
    }

    private void coolerHeight() {
        copied(THERE_IS, have, column(Slot.CASE, "cooler_height_mm"));
        int height = build.cooler().height().or(Length.mm(0)).millimetres();
        how.fact("height of the cooler", height, "mm", column(Slot.COOLER, "height_mm"));
        how.fact(
                "its fan is raised over the memory by",
                need.intValue() - height,
                "mm",
                build.memory().id() + ", height_mm, over the cooler's memory_clearance_mm");
        step(NEEDED, need, "{} + {}", height, need.intValue() - height);
    }

    private void memoryUnderCooler() {
        int room = build.cooler().memoryClearance().or(Length.mm(0)).millimetres();
        how.fact("room below the fan", room, "mm", column(Slot.COOLER, "memory_clearance_mm"));
        how.fact(
                "the fan can be raised by",
                haveInt() - room,
                "mm",
                column(Slot.COOLER, "fan_raise_mm") + ", at most what the case leaves over");
        step(THERE_IS, have, "{} + {}", room, haveInt() - room);
        copied(NEEDED, need, column(Slot.MEMORY, "height_mm"));
    }

    private void supplyLoad() {
        copied(THERE_IS, have, column(Slot.SUPPLY, "watts"));
        int planned = brief.headroom().supplySharePercent();
        how.given(
                "sustained load",
                it.sustainedW(),
                "W",
                "number power.sustained-w, before rounding");
        how.given("planned share", planned, "%", "brief, headroom");
        double least = Math.ceil(it.sustainedW() * 100 / planned - 1e-6);
        if (Owned.in(it, Slot.SUPPLY)) {
            how.remark("the supply is the client's own: it keeps the share, not the sizes up");
            step(NEEDED, need, "ceil({} x 100 / {})", it.sustainedW(), planned);
            return;
        }
        how.step("least rating", least, "W", "ceil({} x 100 / {})", it.sustainedW(), planned);
        how.fact("usual sizes", SupplySizes.words(), "W", "common practice");
        how.fact("sizes further up", brief.headroom().supplySizesUp(), "", "brief, headroom");
        how.fact(
                "the first usual size not below the least rating, so many sizes up",
                SupplyLoadRule.plannedW(it.sustainedW(), brief),
                "W",
                "usual sizes");
        step(NEEDED, need, "{}", SupplyLoadRule.plannedW(it.sustainedW(), brief));
    }

    private void supplyPeak() {
        Supply supply = build.supply();
        boolean plug = supply.plugs().or(Tally.none()).of(Plug.PCIE16) > 0;
        double factor = SupplyPeakRule.factor(supply, plug);
        how.given("rating", supply.watts(), "W", column(Slot.SUPPLY, "watts"));
        how.given(
                "allowed for 1 ms, times the rating",
                factor,
                "",
                "design guide "
                        + supply.guide().word()
                        + ", table 3-3; "
                        + (plug ? "with" : "without")
                        + " the 16-contact connector");
        step(THERE_IS, have, "floor({} x {})", supply.watts(), factor);
        how.given("peak", it.peakW(), "W", "number power.peak-w, before rounding");
        step(NEEDED, need, "ceil({})", it.peakW());
    }

    private void picture() {
        boolean card = build.has(Slot.GRAPHICS);
        List<Object> counts = new ArrayList<>();
        (card ? build.graphics().outputs() : build.board().outputs())
                .forEach(port -> counts.add(port.count()));
        if (have.signum() == 0) {
            copied(THERE_IS, have, "no card, and a processor that draws nothing");
        } else {
            String from = column(card ? Slot.GRAPHICS : Slot.BOARD, "outputs");
            counts.forEach(count -> how.fact("outputs of one sort", count, "", from));
            step(THERE_IS, have, sum(counts.size()), counts.toArray());
        }
        copied(
                NEEDED,
                need,
                build.has(Slot.DISPLAY) ? "the build, screens" : "brief, display, count; else one");
    }

    private void displayLink() {
        copied(THERE_IS, have, "number link.available-mbit");
        copied(NEEDED, need, "number link.needed-mbit; rounded up where it is lacking");
        how.remark("both of the last screen");
    }

    private void ceiling() {
        BigDecimal ceiling = brief.ceiling().amount();
        if (have.compareTo(ceiling) == 0) {
            copied(THERE_IS, have, "brief, ceiling");
        } else {
            BigDecimal percent = BigDecimal.valueOf(brief.overrunBasisPoints(), 2);
            how.fact("ceiling", ceiling, symbol, "brief, ceiling");
            how.fact("overrun", percent, "%", "brief, overrun");
            step(THERE_IS, have, "{} + {} x {} / 100", ceiling, ceiling, percent);
            how.remark("an overrun is rounded down to the smallest coin");
        }
        copied(NEEDED, need, "number cost.total");
    }

    private void promise() {
        Promise tightest = PromiseRule.tightest(it).orElseThrow();
        boolean time = tightest.measure() == Measure.FINISH;
        Prediction prediction =
                it.predictions().stream()
                        .filter(any -> any.promises().contains(tightest))
                        .findFirst()
                        .orElseThrow();
        double middle = Math.max(tightest.promised(), PromiseExplainer.NEXT_TO_NOTHING);
        double sigma = prediction.workload().fitted().sigma();
        double share = brief.confidencePercent() / 100.0;
        double z = NormalDistribution.quantile(share);
        how.given(
                "predicted",
                middle,
                symbol,
                "number " + PromiseExplainer.name(tightest) + ", before rounding");
        how.given("spread", sigma, "", "catalogue, workload " + tightest.use() + ", fitted");
        how.given("confidence", brief.confidencePercent(), "%", "brief, confidence");
        how.given("z", z, "", "any table of the normal distribution");
        how.step("share of the normal distribution up to z", share, "", "normal({})", z);
        copied(time ? THERE_IS : NEEDED, time ? have : need, "brief, workloads, " + tightest.use());
        step(
                time ? NEEDED : THERE_IS,
                time ? need : have,
                time ? "{} x exp({} x {})" : "{} / exp({} x {})",
                middle,
                sigma,
                z);
        how.remark("the tightest of all musts counts");
    }

    private void graphicsMemory() {
        if (build.has(Slot.GRAPHICS)) {
            copied(THERE_IS, have, column(Slot.GRAPHICS, "vram_gb"));
        } else {
            copied(
                    THERE_IS,
                    have,
                    "what a processor's own graphics borrow, common practice: "
                            + GraphicsMemoryRule.SHARED_GB
                            + " GB");
        }
        double gb = DemandExplainer.graphicsGb(it);
        how.given("the work needs", gb, "GB", "number demand.graphics-gb, before rounding");
        step(NEEDED, need, "ceil({})", gb);
    }

    private void memoryEnough() {
        int packs = build.pieces(Slot.MEMORY);
        how.fact("modules in a pack", build.memory().modules(), "", column(Slot.MEMORY, "modules"));
        how.fact("packs", packs, "", "the build");
        how.fact("each", build.memory().moduleGb(), "GB", column(Slot.MEMORY, "module_gb"));
        step(
                THERE_IS,
                have,
                "{} x {} x {}",
                build.memory().modules(),
                packs,
                build.memory().moduleGb());
        double gb = it.demand().memoryGb();
        how.given("the work needs", gb, "GB", "number demand.memory-gb, before rounding");
        how.fact("asked", brief.memory().atLeastGb(), "GB", "brief, memory, at-least");
        step(NEEDED, need, "max(ceil({}), {})", gb, brief.memory().atLeastGb());
    }

    private void storageEnough() {
        List<Object> each = new ArrayList<>();
        for (Slot slot : List.of(Slot.DRIVE, Slot.SECOND_DRIVE)) {
            if (build.has(slot)) {
                int gb = ((Drive) build.part(slot)).capacityGb();
                how.fact(slot.word(), gb, "GB", column(slot, "capacity_gb"));
                each.add(gb);
                each.add(build.pieces(slot));
            }
        }
        String template = each.size() > 2 ? "{} x {} + {} x {}" : "{} x {}";
        step(THERE_IS, have, each.isEmpty() ? "0" : template, each.toArray());
        double gb = it.demand().storageGb();
        how.given("planned", gb, "GB", "number demand.storage-gb, before rounding");
        step(NEEDED, need, "ceil({})", gb);
    }

    private void noise() {
        copied(THERE_IS, have, "brief, noise, must");
        how.given(
                "level at the seat",
                it.load().levelDba(),
                "dB(A)",
                "number noise.load-dba, before rounding");
        step(NEEDED, need, "{}", it.load().levelDba());
    }

    private void mass() {
        copied(THERE_IS, have, "brief, size, mass");
        List<Object> each = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) -> {
                            if (slot != Slot.DISPLAY && slot != Slot.SYSTEM) {
                                add(each, slot, part);
                            }
                        });
        step(
                NEEDED,
                need,
                each.isEmpty() ? "0" : sum(each.size() / 2).replace("{}", "{} x {}"),
                each.toArray());
    }

    private void add(List<Object> each, Slot slot, Part part) {
        int grams = part.listing().mass().map(mass -> mass.grams()).or(0);
        how.fact(slot.word(), grams, "g", part.id() + ", mass_g");
        each.add(grams);
        each.add(build.pieces(slot));
    }

    private void volume() {
        int width = build.pcCase().widthMm();
        int height = build.pcCase().heightMm();
        int depth = build.pcCase().depthMm();
        how.fact("width", width, "mm", column(Slot.CASE, "width_mm"));
        how.fact("height", height, "mm", column(Slot.CASE, "height_mm"));
        how.fact("depth", depth, "mm", column(Slot.CASE, "depth_mm"));
        step(NEEDED, need, "{} x {} x {} / 1000000", width, height, depth);
    }

    private static String sum(int count) {
        return String.join(" + ", Collections.nCopies(count, "{}"));
    }
}
