package rigbrief.search;

import java.util.HashMap;
import java.util.Map;
import rigbrief.part.PcCase;
import rigbrief.part.Slot;

/**
 * Whether coolers and fans will do in a case where only money counts: none is worth more for being
 * quieter than that. Mutable: begun anew whenever what it depends on is decided anew.
 */
final class QuietEnough {
    private final SoundOutlook sound;
    private final SlotTable coolers;
    private final SlotTable fans;
    private final Map<Double, Double> tooLoudEnergy = new HashMap<>();
    private Unfinished it;
    private double supplyDba;

    QuietEnough(SoundOutlook sound, SlotTable coolers, SlotTable fans) {
        this.sound = sound;
        this.coolers = coolers;
        this.fans = fans;
    }

    /**
     * Beside what is decided from now on.
     *
     * @param quietestDba the quietest supply that is left, at its own place
     */
    void begin(Unfinished unfinished, double quietestDba) {
        it = unfinished;
        supplyDba = quietestDba;
        tooLoudEnergy.clear();
    }

    /** Whether a cooler will do in the best case there could be. */
    boolean inTheOpen(int cooler) {
        return sound.does(it, sound.openLevelDba(it, coolers.candidate(cooler)), supplyDba);
    }

    /** Whether any cooler will do in the case that is decided. */
    boolean some() {
        return sound.someCoolerDoes(it, supplyDba, tooLoudEnergy());
    }

    /** Whether a cooler will do in the case that is decided with the best fans. */
    boolean atBest(int cooler) {
        return sound.does(it, coolers.candidate(cooler), false, supplyDba, tooLoudEnergy());
    }

    /** Whether a cooler will do in the case that is decided without any fans added. */
    boolean bare(int cooler) {
        return sound.does(it, coolers.candidate(cooler), true, supplyDba, tooLoudEnergy());
    }

    /** Whether a cooler will do in the case that is decided with some fans added. */
    boolean with(int cooler, int some) {
        return sound.fansDo(
                it, coolers.candidate(cooler), fans.candidate(some), supplyDba, tooLoudEnergy());
    }

    /** As {@link SoundOutlook#tooLoudEnergy} has it. */
    double tooLoudEnergy() {
        return tooLoudEnergy.computeIfAbsent(
                ((PcCase) it.part(Slot.CASE)).dampingDb(),
                any -> sound.tooLoudEnergy(it, supplyDba));
    }
}
