package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.part.Slot;

/**
 * What replacing parts means at the bench, in the order of work.
 *
 * <p>Common practice; the makers' manuals go before it. Only what was fitted has to be taken out.
 */
final class BenchWork {
    private final BuildRecord filed;
    private final Build after;
    private final Set<Slot> changed = EnumSet.noneOf(Slot.class);
    private final Set<Slot> fitted = EnumSet.noneOf(Slot.class);
    private final List<String> steps = new ArrayList<>();

    private BenchWork(BuildRecord filed, Build after, List<Change> changes) {
        this.filed = filed;
        this.after = after;
        changes.forEach(change -> this.changed.add(change.slot()));
        for (BuildLine line : filed.lines()) {
            boolean any =
                    line.units(filed.machines()).stream()
                            .anyMatch(
                                    units ->
                                            units.state() == PartState.FITTED
                                                    || units.state() == PartState.FAULTY);
            if (any) {
                fitted.add(line.slot());
            }
        }
    }

    /** The steps; one that says so when nothing has to be taken out. */
    static List<String> of(BuildRecord filed, Build after, List<Change> changes) {
        BenchWork work = new BenchWork(filed, after, changes);
        if (changes.isEmpty()) {
            return List.of();
        }
        if (!work.takesOut()) {
            return List.of(
                    "Nothing that changes is in the machine yet: assemble it as planned, with the"
                            + " new parts.");
        }
        work.takeOut();
        work.fit();
        work.test();
        return List.copyOf(work.steps);
    }

    /** Minutes that the exchange of fitted parts takes, all machines together. */
    static int minutes(BuildRecord filed, List<Change> changes) {
        int minutes = 0;
        for (Change change : changes) {
            int units =
                    filed.line(change.slot()).stream()
                            .flatMap(line -> line.units(filed.machines()).stream())
                            .filter(
                                    group ->
                                            group.state() == PartState.FAULTY
                                                    || group.state() == PartState.FITTED
                                                            && !change.sameAgain())
                            .mapToInt(group -> group.count())
                            .sum();
            minutes += units * Disturbance.refitMinutes(change.slot());
        }
        return minutes;
    }

    private boolean takesOut() {
        return changed.stream().anyMatch(fitted::contains);
    }

    private boolean rebuilds() {
        return replaces(Slot.BOARD) || replaces(Slot.CASE);
    }

    private boolean replaces(Slot slot) {
        return changed.contains(slot) && fitted.contains(slot);
    }

    private void takeOut() {
        if (replaces(Slot.DRIVE) || replaces(Slot.SECOND_DRIVE)) {
            steps.add("Save what is on the drive that comes out, if it still answers.");
        }
        steps.add(
                "Shut down, switch the supply off, pull the mains plug, press the power button"
                        + " once, and touch bare metal of the case before every grip inside.");
        if (rebuilds()) {
            steps.add("Photograph every lead and its header: the machine comes apart as a whole.");
        }
        boolean board = rebuilds();
        lift(Slot.BRACE, board || replaces(Slot.GRAPHICS), "Undo the brace.");
        lift(
                Slot.GRAPHICS,
                board,
                "Unplug the graphics card, undo its bracket, open the slot's latch, lift it out.");
        lift(Slot.WIRELESS, board, "Take the wireless card and its aerials off.");
        if (board) {
            steps.add("Unplug every lead from the board: power, fans, front panel, drives.");
        }
        boolean cooler = replaces(Slot.BOARD) || replaces(Slot.PROCESSOR);
        lift(
                Slot.COOLER,
                cooler,
                "Let the machine cool down, turn the cooler gently, lift it off, and wipe the old"
                        + " paste from both faces.");
        if (cooler && !fitted.contains(Slot.COOLER) && fitted.contains(Slot.PROCESSOR)) {
            steps.add("Let the processor's own cooler cool down, and take it off.");
        }
        lift(
                Slot.MEMORY,
                replaces(Slot.BOARD),
                "Take the memory out and mark which module was where.");
        if (replaces(Slot.BOARD) && after.has(Slot.DRIVE)) {
            steps.add("Take M.2 drives off the board, with their screws and heat spreaders.");
        }
        lift(
                Slot.PROCESSOR,
                replaces(Slot.BOARD),
                "Open the socket's lever, lift the processor straight up, and lay it in its tray;"
                        + " put the cover on the bare socket.");
        lift(Slot.SUPPLY, replaces(Slot.CASE), "Take the supply out, its leads with it.");
        for (Slot slot : List.of(Slot.FANS, Slot.DRIVE, Slot.SECOND_DRIVE, Slot.CABLES)) {
            lift(slot, replaces(Slot.CASE) && slot != Slot.CABLES, name(slot));
        }
        if (replaces(Slot.BOARD) || replaces(Slot.CASE)) {
            steps.add("Undo the board's screws and lift it out of the case.");
        }
    }

    private static String name(Slot slot) {
        return "Take the " + slot.word().replace('-', ' ') + " out.";
    }

    /** A part that is in the machine comes out because it changes, or stands in the way. */
    private void lift(Slot slot, boolean inTheWay, String words) {
        if (fitted.contains(slot) && (inTheWay || replaces(slot))) {
            steps.add(words);
        }
    }

    private void fit() {
        if (replaces(Slot.BOARD)) {
            steps.add(
                    "Set the new board up on its box first: processor, memory, cooler with fresh"
                            + " paste, then one start with nothing else; look which firmware it"
                            + " has and whether that knows the processor.");
        } else if (replaces(Slot.PROCESSOR) || replaces(Slot.COOLER)) {
            steps.add("Spread fresh paste, set the cooler, tighten its screws crosswise.");
        }
        steps.add(
                "Put in what is new and put back what came out, in the reverse order; every plug"
                        + " until it clicks.");
    }

    private void test() {
        boolean memory = replaces(Slot.BOARD) || replaces(Slot.MEMORY) || replaces(Slot.PROCESSOR);
        if (memory) {
            memoryTest();
        }
        if (replaces(Slot.BOARD)) {
            steps.add(
                    "Set memory rate, fan curves and the clock anew in the firmware; a new board"
                            + " may ask for the licence and for keys of encrypted drives.");
        }
        if (replaces(Slot.DRIVE)) {
            steps.add("Install the system again, or play the copy back.");
        }
        if (replaces(Slot.SUPPLY) || replaces(Slot.GRAPHICS)) {
            steps.add("Run card and processor at full load together for half an hour.");
        }
        steps.add("Go through the acceptance sheet again from the top.");
    }

    private void memoryTest() {
        int modules = after.memoryModules();
        if (modules < 2) {
            steps.add("Run one full pass of a memory test.");
            return;
        }
        steps.add(
                "One module at a time: the first alone in the slot that the board's manual names"
                        + " for one module, one full pass of a memory test; then %s alone in that slot; then one good module in each of the other slots; then %s together."
                                .formatted(
                                        modules == 2
                                                ? "the other"
                                                : "each of the other " + (modules - 1),
                                        modules == 2 ? "both" : "all " + modules));
        steps.add(
                "What follows a module is the module's fault, what stays with a slot is the"
                        + " board's or the processor's.");
    }
}
