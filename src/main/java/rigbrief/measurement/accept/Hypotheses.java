package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.MachineRates;
import rigbrief.assess.MachineRates.Picture;
import rigbrief.build.Build;
import rigbrief.model.pcie.PcieLink;
import rigbrief.part.MemoryType;
import rigbrief.part.Slot;

/**
 * Everything that may be wrong with a build, each at several strengths.
 *
 * <p>Common practice: the default rates of memory; that a heat or power limit slows work on all
 * threads three times as much as work on one; that other programs take more from the slowest frames
 * than from the rest.
 */
final class Hypotheses {
    /** What is left of a rate, in percent. */
    private static final List<Integer> LEFT_PERCENT = List.of(95, 90, 85, 80, 75, 70, 60, 50, 40);

    /** What other programs take of all threads, in percent. */
    private static final List<Integer> TAKEN_PERCENT = List.of(10, 20, 30, 40, 50, 60, 70);

    private static final List<Integer> DEFAULTS_DDR4 = List.of(2_133, 2_400, 2_666);
    private static final List<Integer> DEFAULTS_DDR5 = List.of(4_000, 4_400, 4_800, 5_200);

    private static final double PERCENT = 100;
    private static final double ONE_THREAD_SHARE = 1.0 / 3;

    /** What other programs take from the slowest frames, over what they take of all threads. */
    private static final double LOW_SHARE = 0.25;

    /** A card that draws no picture sits this much over the room, in kelvin. */
    private static final double IDLE_CARD_K = 15;

    private final Assessment it;
    private final double roomC;
    private final double warmerK;
    private final Build build;
    private final MachineRates planned;
    private final List<Hypothesis> all = new ArrayList<>();

    private Hypotheses(Assessment it, double warmerK) {
        this.it = it;
        this.roomC = it.brief().place().roomC() + warmerK;
        this.warmerK = warmerK;
        this.build = it.build();
        this.planned = MachineRates.of(it);
    }

    /**
     * All that apply to a build, chance among them.
     *
     * @param warmerK by how much the room is warmer than planned, in kelvin
     */
    static List<Hypothesis> of(Assessment it, double warmerK) {
        Hypotheses made = new Hypotheses(it, warmerK);
        made.memory();
        made.link();
        made.processor();
        made.card();
        made.output();
        made.background();
        made.add(Cause.CHANCE, "", made.planned, 1, Map.of());
        return List.copyOf(made.all);
    }

    private void add(
            Cause cause,
            String strength,
            MachineRates machine,
            double lowFactor,
            Map<String, Double> shows) {
        all.add(new Hypothesis(cause, strength, machine, lowFactor, shows));
    }

    private void memory() {
        boolean ddr4 = build.memory().type() == MemoryType.DDR4;
        for (int rate : ddr4 ? DEFAULTS_DDR4 : DEFAULTS_DDR5) {
            if (rate < it.memoryMts()) {
                MachineRates slow =
                        memory(planned.mts() * rate / it.memoryMts(), planned.memoryGb());
                add(
                        Cause.MEMORY_AT_DEFAULT_RATE,
                        rate + " MT/s",
                        slow,
                        1,
                        Map.of(SheetIds.MEMORY_RATE, (double) rate));
            }
        }
        if (build.memoryModules() > 1) {
            oneChannel();
        }
    }

    private void oneChannel() {
        double half = planned.mts() / 2;
        double seen = build.memoryModules() - 1.0;
        double gb = planned.memoryGb() * seen / build.memoryModules();
        add(
                Cause.ONE_MODULE,
                "all modules on one channel",
                memory(half, planned.memoryGb()),
                1,
                Map.of(SheetIds.MEMORY_CHANNELS, 1.0));
        add(
                Cause.ONE_MODULE,
                "one module not seen",
                memory(seen >= 2 ? planned.mts() : half, gb),
                1,
                Map.of(
                        SheetIds.MEMORY_CHANNELS,
                        seen >= 2 ? 2.0 : 1.0,
                        SheetIds.MEMORY_SIZE,
                        gb,
                        SheetIds.MEMORY_MODULES,
                        seen));
    }

    /** Graphics without memory of its own slows down with the machine's. */
    private MachineRates memory(double mts, double gb) {
        MachineRates machine = planned.withMemory(mts, gb);
        Picture picture = planned.picture();
        return build.has(Slot.GRAPHICS)
                ? machine
                : machine.with(picture.withBandwidth(picture.bandwidthGbs() * mts / planned.mts()));
    }

    private void link() {
        Optional<PcieLink> full = CardLink.planned(build);
        for (PcieLink link : CardLink.narrower(build)) {
            Picture behind =
                    planned.picture()
                            .behind(
                                    CardLink.addedS(full.get(), link),
                                    CardLink.times(full.get(), link));
            add(
                    Cause.NARROW_SLOT,
                    "x%d of generation %d".formatted(link.lanes(), link.generation()),
                    planned.with(behind),
                    1,
                    Map.of(SheetIds.CARD_LANES, (double) link.lanes()));
        }
    }

    private void processor() {
        double expectedC = it.load().processorC() + warmerK;
        for (int left : LEFT_PERCENT) {
            double all = left / PERCENT;
            MachineRates slow = planned.paced(1 - (1 - all) * ONE_THREAD_SHARE, all);
            add(
                    Cause.PROCESSOR_HEAT_LIMIT,
                    left + " % of its rate on all threads",
                    slow,
                    1,
                    Map.of(SheetIds.PROCESSOR_C, (double) build.processor().limitC()));
            add(
                    Cause.PROCESSOR_POWER_LIMIT,
                    left + " % of its rate on all threads",
                    slow,
                    1,
                    Map.of(SheetIds.PROCESSOR_C, cooler(expectedC, all)));
        }
    }

    private void card() {
        if (!build.has(Slot.GRAPHICS)) {
            return;
        }
        double expectedC = it.load().graphicsC() + warmerK;
        for (int left : LEFT_PERCENT) {
            double pace = left / PERCENT;
            MachineRates slow = planned.with(planned.picture().paced(pace));
            String strength = left + " % of its rate";
            add(
                    Cause.CARD_HEAT_LIMIT,
                    strength,
                    slow,
                    1,
                    Map.of(SheetIds.CARD_C, it.catalogue().reference().cardLimitC()));
            add(
                    Cause.CARD_POWER_LIMIT,
                    strength,
                    slow,
                    1,
                    Map.of(SheetIds.CARD_C, cooler(expectedC, pace)));
        }
    }

    /** Rate goes at most with power, so the rise over the room falls at least as much. */
    private double cooler(double expectedC, double pace) {
        return roomC + (expectedC - roomC) * pace;
    }

    private void output() {
        if (build.has(Slot.GRAPHICS) && build.processor().integratedGraphics()) {
            add(
                    Cause.WRONG_OUTPUT,
                    "the processor draws the picture",
                    MachineRates.withoutCard(it),
                    1,
                    Map.of(SheetIds.ON_CARD, 0.0, SheetIds.CARD_C, roomC + IDLE_CARD_K));
        }
    }

    private void background() {
        for (int taken : TAKEN_PERCENT) {
            double share = taken / PERCENT;
            add(
                    Cause.BACKGROUND_LOAD,
                    taken + " % of all threads taken",
                    planned.paced(1 - share * ONE_THREAD_SHARE, 1 - share),
                    1 - share * LOW_SHARE,
                    Map.of(SheetIds.IDLE_USE, (double) taken));
        }
    }
}
