package rigbrief.model.memory;

import rigbrief.model.Expect;

/**
 * The rate at which memory really runs.
 *
 * <p>Formula: the least of what the kit is sold for, what the board takes with that many modules,
 * and what the processor's memory controller is specified for.
 *
 * <p>Common practice: a rate above the processor's specification is a private venture and not
 * planned with.
 */
public final class EffectiveRate {
    private EffectiveRate() {}

    /**
     * Gives the rate.
     *
     * @param kitMts rate of the kit, MT/s
     * @param boardMtsForModules greatest rate of the board with that many modules, MT/s
     * @param processorMts greatest rate of the processor, MT/s
     * @return MT/s
     * @throws IllegalArgumentException for a rate below 1
     */
    public static int mts(int kitMts, int boardMtsForModules, int processorMts) {
        int board = Expect.atLeastOne(boardMtsForModules, "boardMtsForModules");
        int processor = Expect.atLeastOne(processorMts, "processorMts");
        return Math.min(Expect.atLeastOne(kitMts, "kitMts"), Math.min(board, processor));
    }
}
