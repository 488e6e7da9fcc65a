package rigbrief.search;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.presolve.Candidate;
import rigbrief.rule.Reads;

/**
 * Takes out of the open slots what is too loud beside what is decided, where only money counts and
 * the brief limits noise: a bound on money alone takes the cheapest case, cooler, fans and supply,
 * which are seldom quiet enough together.
 *
 * <p>Everything that is still open is taken at its quietest, so that nothing is taken out that goes
 * into a sound build.
 */
final class SoundNarrowing {
    /** What may still be open when a supply is heard out in full: it only adds heat and sound. */
    private static final Set<Slot> ONLY_ADDING = EnumSet.of(Slot.SECOND_DRIVE, Slot.WIRELESS);

    private final OpenSlots slots;
    private final SoundOutlook sound;
    private final boolean active;
    private final int supply;
    private final int cooler;
    private final int fans;

    SoundNarrowing(Problem problem, Objective objective, List<Slot> order, OpenSlots slots) {
        this.slots = slots;
        this.sound = problem.tables().outlook(problem).sound();
        this.active =
                objective.perPoint() == 0
                        && problem.assessor().brief().noise().mustDba().isPresent();
        this.supply = order.indexOf(Slot.SUPPLY);
        this.cooler = order.indexOf(Slot.COOLER);
        this.fans = order.indexOf(Slot.FANS);
    }

    /** Looks at what a level's slot leaves of the others; false when that is nothing. */
    boolean narrow(int level, Unfinished it) {
        if (!active || level >= supply) {
            return true;
        }
        double quietest =
                sound.quietestSupplyDba(it, slots.table(supply), slots.domain(level + 1, supply));
        return keepShelter(level, it, quietest)
                && keepSupplies(level, it)
                && (!allHeard(it) || keepInFull(level, it));
    }

    private boolean keepShelter(int level, Unfinished it, double supplyDba) {
        if (!it.has(Slot.CASE)) {
            return true; // LeastHousing knows what cases there are.
        }
        if (!it.has(Slot.COOLER)) {
            SlotTable coolers = slots.table(cooler);
            double tooLoud = sound.tooLoudEnergy(it, supplyDba);
            return slots.keep(
                    level + 1,
                    cooler,
                    i -> sound.does(it, coolers.candidate(i), false, supplyDba, tooLoud));
        }
        if (it.has(Slot.FANS)) {
            return true;
        }
        SlotTable all = slots.table(fans);
        Candidate chosen = it.choices()[Slot.COOLER.ordinal()];
        double tooLoud = sound.tooLoudEnergy(it, supplyDba);
        return slots.keep(
                level + 1,
                fans,
                i -> sound.fansDo(it, chosen, all.candidate(i), supplyDba, tooLoud));
    }

    private boolean keepSupplies(int level, Unfinished it) {
        double fansDba = sound.leastOfFans(it);
        SlotTable table = slots.table(supply);
        return slots.keep(
                level + 1,
                supply,
                i ->
                        !sound.tooLoud(
                                sound.atSeat(
                                        it,
                                        fansDba,
                                        sound.supplyDba(it.pair(), supply(table, i)))));
    }

    private static boolean allHeard(Unfinished it) {
        for (Slot slot : Reads.ELECTRICAL) {
            if (slot != Slot.SUPPLY && !it.has(slot) && !ONLY_ADDING.contains(slot)) {
                return false;
            }
        }
        return true;
    }

    /** More heat makes no supply quieter but one that is louder with less load. */
    private boolean keepInFull(int level, Unfinished it) {
        SlotTable table = slots.table(supply);
        return slots.keep(
                level + 1,
                supply,
                i -> {
                    if (!louderWithLoad(supply(table, i))) {
                        return true;
                    }
                    it.decide(table.candidate(i));
                    boolean quiet = !sound.tooLoud(it.assessment().load().levelDba());
                    it.undo(Slot.SUPPLY);
                    return quiet;
                });
    }

    private static boolean louderWithLoad(Supply supply) {
        return supply.dba20() <= supply.dba50() && supply.dba50() <= supply.dba100();
    }

    private static Supply supply(SlotTable table, int index) {
        return (Supply) table.candidate(index).partOrNull();
    }
}
