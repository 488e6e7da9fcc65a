package rigbrief.model.heat;

import rigbrief.model.air.AirRise;
import rigbrief.model.noise.FanNoise;
import rigbrief.model.noise.SoundDistance;
import rigbrief.model.noise.SoundSum;

/**
 * Finds the quietest fan speeds that keep processor and graphics card cool enough.
 *
 * <p>Formula: for each case fan speed from 20 % to 100 % in steps of 5 %, the case air follows from
 * {@link AirRise}, and the least speeds of cooler and card from {@link CoolerResistance} and {@link
 * CardCooling}; of the sets that keep both parts at or below limit less margin, the one with the
 * least sound energy is taken, the slower case fans among equals. If none does, everything runs at
 * full speed and the excess is stated.
 *
 * <p>Common practice: the grid, the least speeds and the even mixing of the case air. Levels by
 * {@link FanNoise}, {@link SoundSum} and {@link SoundDistance}.
 */
public final class FanSpeedSolver {
    static final int STEPS = 20;
    static final int LEAST_STEP = 4;

    /** Below a ten-thousandth of a kelvin is rounding, not heat. */
    private static final double ROUNDING_K = 1e-4;

    private FanSpeedSolver() {}

    /**
     * Gives the quietest cool set of speeds.
     *
     * @param it the build in one state
     * @return the speeds, with what comes of them
     */
    public static Speeds quietest(CoolingCase it) {
        double caseEnergy = SoundSum.energy(it.air().fansFullDba());
        double coolerEnergy = SoundSum.energy(it.processor().coolerFullDba());
        double cardEnergy = SoundSum.energy(it.card().loadDba());
        double leastCardRatio = CardCooling.leastRatio(it.card().loadDba(), it.card().idleDba());
        int bestStep = 0;
        double bestEnergy = Double.POSITIVE_INFINITY;
        // Where no heat goes through the case, faster case fans only add sound.
        int most = it.air().heatW() == 0 ? LEAST_STEP : STEPS;
        for (int step = LEAST_STEP; step <= most; step++) {
            double caseShare = (double) step / STEPS;
            double fansEnergy = caseEnergy * FanNoise.energyFactor(caseShare);
            if (fansEnergy >= bestEnergy) {
                break;
            }
            double inletC = inletC(it, caseShare);
            double coolerShare = coolerShare(it, inletC);
            double cardRatio = Math.max(leastCardRatio, cardRatio(it, inletC));
            if (coolerShare <= 1 && cardRatio <= CardCooling.MOST_RATIO) {
                double energy =
                        fansEnergy
                                + coolerEnergy * FanNoise.energyFactor(coolerShare)
                                + cardEnergy * FanNoise.energyFactor(cardRatio);
                if (energy < bestEnergy) {
                    bestEnergy = energy;
                    bestStep = step;
                }
            }
        }
        return bestStep == 0 ? flatOut(it) : atCaseStep(it, bestStep, leastCardRatio);
    }

    private static Speeds atCaseStep(CoolingCase it, int step, double leastCardRatio) {
        double caseShare = (double) step / STEPS;
        double inletC = inletC(it, caseShare);
        double cardRatio = Math.max(leastCardRatio, cardRatio(it, inletC));
        return at(it, caseShare, coolerShare(it, inletC), cardRatio);
    }

    private static double inletC(CoolingCase it, double caseShare) {
        CoolingCase.Air air = it.air();
        return air.roomC()
                + AirRise.kelvin(air.heatW(), caseShare * air.fullFlowM3h(), air.densityKgM3());
    }

    private static double coolerShare(CoolingCase it, double inletC) {
        CoolingCase.Processor processor = it.processor();
        double spareK = processor.limitC() - it.marginK() - inletC;
        double needed =
                CoolerResistance.speedFor(processor.coolerFullKw(), spareK / processor.powerW());
        return Math.max(CoolerResistance.LEAST_SPEED_SHARE, needed);
    }

    private static double cardRatio(CoolingCase it, double inletC) {
        CoolingCase.Card card = it.card();
        double keptC = card.limitC() - it.marginK();
        return CardCooling.ratioFor(card.referenceKw(), keptC, inletC, card.powerW());
    }

    /**
     * Gives what comes of every fan at its greatest speed.
     *
     * @param it the build in one state
     * @return full speeds, with what comes of them
     */
    public static Speeds flatOut(CoolingCase it) {
        return at(it, 1, 1, CardCooling.MOST_RATIO);
    }

    /**
     * Gives by how much the hottest part is too hot with every fan at its greatest speed.
     *
     * @param it the build in one state
     * @return K over limit less margin, as {@link #flatOut} has it; 0 when all is cool enough
     */
    public static double flatOutExcessK(CoolingCase it) {
        double inletC = inletC(it, 1);
        return excessK(it, processorC(it, inletC, 1), cardC(it, inletC, CardCooling.MOST_RATIO));
    }

    private static double processorC(CoolingCase it, double inletC, double coolerShare) {
        double coolerKw = CoolerResistance.atSpeed(it.processor().coolerFullKw(), coolerShare);
        return ThermalLadder.partC(inletC, it.processor().powerW(), coolerKw);
    }

    private static double cardC(CoolingCase it, double inletC, double cardRatio) {
        double cardKw = CoolerResistance.atSpeed(it.card().referenceKw(), cardRatio);
        return ThermalLadder.partC(inletC, it.card().powerW(), cardKw);
    }

    /**
     * Gives what comes of a set of speeds.
     *
     * @param it the build in one state
     * @param caseShare case fans, share of full speed, 0 to 1
     * @param coolerShare cooler's fans, share of full speed, above 0
     * @param cardRatio card's fans, ratio to their reference speed, above 0
     * @return the same speeds with temperatures, level and excess
     * @throws IllegalArgumentException for a speed that is not above 0
     */
    public static Speeds at(
            CoolingCase it, double caseShare, double coolerShare, double cardRatio) {
        double inletC = inletC(it, caseShare);
        double processorC = processorC(it, inletC, coolerShare);
        double cardC = cardC(it, inletC, cardRatio);
        return new Speeds(
                caseShare,
                coolerShare,
                cardRatio,
                processorC,
                cardC,
                inletC - it.air().roomC(),
                levelDba(it, caseShare, coolerShare, cardRatio),
                excessK(it, processorC, cardC));
    }

    private static double excessK(CoolingCase it, double processorC, double cardC) {
        double processorK = processorC + it.marginK() - it.processor().limitC();
        double cardK = cardC + it.marginK() - it.card().limitC();
        double worstK = Math.max(processorK, cardK);
        return worstK > ROUNDING_K ? worstK : 0;
    }

    private static double levelDba(
            CoolingCase it, double caseShare, double coolerShare, double cardRatio) {
        CoolingCase.Card card = it.card();
        double insideEnergy =
                SoundSum.energy(FanNoise.atSpeedDba(it.air().fansFullDba(), caseShare))
                        + SoundSum.energy(
                                FanNoise.atSpeedDba(it.processor().coolerFullDba(), coolerShare))
                        + SoundSum.energy(
                                CardCooling.levelDba(card.loadDba(), card.idleDba(), cardRatio))
                        + SoundSum.energy(it.constantDba());
        double outsideDba = SoundSum.levelDba(insideEnergy) - it.seat().dampingDb();
        double seatDba = SoundDistance.atSeatDba(outsideDba, it.seat().distanceM());
        return SoundSum.dba(seatDba, it.seat().floorDba());
    }
}
