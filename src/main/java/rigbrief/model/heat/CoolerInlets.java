package rigbrief.model.heat;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;
import rigbrief.model.air.AirRise;
import rigbrief.model.noise.FanNoise;
import rigbrief.model.noise.SoundDistance;
import rigbrief.model.noise.SoundSum;

/**
 * The air that a case with one of several choices of fans leaves to a cooler, and the sound of all
 * but the cooler, for every case fan speed: what {@link FanSpeedSolver} reckons, shared by all
 * coolers that could stand there.
 *
 * <p>Formula: that of {@link FanSpeedSolver}; of the choices in which no part gets too hot at
 * sustained power the quietest counts.
 *
 * <p>Source: those of the models that {@link FanSpeedSolver} joins.
 *
 * <p>Remembers what was reckoned, and which fans were quietest last; no answer depends on that.
 */
public final class CoolerInlets {
    private static final int SPEEDS = FanSpeedSolver.STEPS - FanSpeedSolver.LEAST_STEP + 1;

    private static final double SLOWEST = FanNoise.energyFactor(CoolerResistance.LEAST_SPEED_SHARE);

    private static final double[] SHARE = new double[SPEEDS];

    private static final double[] FACTOR = new double[SPEEDS];

    static {
        for (int i = 0; i < SPEEDS; i++) {
            SHARE[i] = (double) (FanSpeedSolver.LEAST_STEP + i) / FanSpeedSolver.STEPS;
            FACTOR[i] = FanNoise.energyFactor(SHARE[i]);
        }
    }

    private final State atWork;
    private final State sustained;
    private final CoolingCase.Seat seat;
    private final double marginK;
    private final DoublePredicate tooHot;
    private final double loadEnergy;
    private final double idleEnergy;
    private final double leastRatio;
    private final boolean[] cardTooHot;
    private final double[] fullInletC;
    private final double[] fansEnergy;
    private final double[] cardLeast;
    private int quietest;
    private final double[][] inletC;
    private final double[][] cardEnergy;

    /**
     * A build in one state, but for its processor.
     *
     * @param airs the room and the case with each choice of fans
     * @param card the graphics card, or {@link CoolingCase.Card#NONE}
     */
    public record State(List<CoolingCase.Air> airs, CoolingCase.Card card) {
        /** Keeps a copy of the airs. */
        public State {
            airs = List.copyOf(airs);
        }
    }

    /**
     * What is left to coolers.
     *
     * @param atWork at work
     * @param sustained at sustained power, with the same choices of fans
     * @param marginK how far below their limits the parts are to stay, K
     * @param tooHot which excess, in K over limit less margin, is too hot
     */
    public CoolerInlets(
            State atWork,
            State sustained,
            CoolingCase.Seat seat,
            double marginK,
            DoublePredicate tooHot) {
        this.atWork = atWork;
        this.sustained = sustained;
        this.seat = seat;
        this.marginK = marginK;
        this.tooHot = tooHot;
        CoolingCase.Card card = atWork.card();
        this.loadEnergy = SoundSum.energy(card.loadDba());
        this.idleEnergy = SoundSum.energy(card.idleDba());
        this.leastRatio = CardCooling.leastRatio(card.loadDba(), card.idleDba());
        int choices = atWork.airs().size();
        this.cardTooHot = new boolean[choices];
        this.fullInletC = new double[choices];
        this.fansEnergy = new double[choices];
        this.cardLeast = new double[choices];
        this.inletC = new double[choices][];
        this.cardEnergy = new double[choices][];
        for (int choice = 0; choice < choices; choice++) {
            fullInletC[choice] = inletC(sustained.airs().get(choice), 1);
            cardTooHot[choice] = tooHot.test(cardExcessK(fullInletC[choice]));
            fansEnergy[choice] = SoundSum.energy(atWork.airs().get(choice).fansFullDba());
        }
    }

    private double cardEnergy(double ratio) {
        return Math.max(idleEnergy, loadEnergy * FanNoise.energyFactor(ratio));
    }

    /** Reckons a case fan speed once; most coolers are done before the fast ones. */
    private void reckon(int choice, int i) {
        CoolingCase.Card card = atWork.card();
        double inlet = inletC(atWork.airs().get(choice), SHARE[i]);
        double keptC = card.limitC() - marginK;
        double needed = CardCooling.ratioFor(card.referenceKw(), keptC, inlet, card.powerW());
        double ratio = Math.max(leastRatio, needed);
        inletC[choice][i] = inlet;
        cardEnergy[choice][i] =
                ratio <= CardCooling.MOST_RATIO ? cardEnergy(ratio) : Double.POSITIVE_INFINITY;
    }

    private static double inletC(CoolingCase.Air air, double caseShare) {
        return air.roomC()
                + AirRise.kelvin(air.heatW(), caseShare * air.fullFlowM3h(), air.densityKgM3());
    }

    private double cardExcessK(double inlet) {
        CoolingCase.Card card = sustained.card();
        double cardKw = CoolerResistance.atSpeed(card.referenceKw(), CardCooling.MOST_RATIO);
        return ThermalLadder.partC(inlet, card.powerW(), cardKw) + marginK - card.limitC();
    }

    /**
     * The least level at the seat with a cooler.
     *
     * @param working the processor under the cooler, at work
     * @param full the same at sustained power
     * @return dB(A); plus infinity when some part gets too hot at sustained power however fast its
     *     fans turn
     */
    public double leastLevelDba(CoolingCase.Processor working, CoolingCase.Processor full) {
        return levelDba(leastEnergy(working, full, Double.POSITIVE_INFINITY));
    }

    /**
     * The level at the seat of so much sound energy in the case, in dB(A).
     *
     * @param energy in units of a level of 0 dB; plus infinity stays so
     */
    public double levelDba(double energy) {
        if (energy == Double.POSITIVE_INFINITY) {
            return energy;
        }
        double outsideDba = SoundSum.levelDba(energy) - seat.dampingDb();
        return SoundSum.dba(SoundDistance.atSeatDba(outsideDba, seat.distanceM()), seat.floorDba());
    }

    /**
     * The least sound energy in the case with a cooler, in units of a level of 0 dB; no more is
     * reckoned than it takes to see that it is not less than what is known already.
     *
     * @param knownEnergy what there is already; plus infinity for nothing
     * @return at most what is known; plus infinity when there is nothing and some part gets too hot
     */
    public double leastEnergy(
            CoolingCase.Processor working, CoolingCase.Processor full, double knownEnergy) {
        double coolerEnergy = SoundSum.energy(working.coolerFullDba());
        double slowest = coolerEnergy * SLOWEST;
        double heatK = full.powerW() * CoolerResistance.atSpeed(full.coolerFullKw(), 1);
        double least = knownEnergy;
        // What was quietest for the last cooler first: it is likely to leave little to the others.
        int first = quietest;
        for (int i = 0; i < cardTooHot.length; i++) {
            int choice = i == 0 ? first : i <= first ? i - 1 : i;
            double atLeast = fansEnergy[choice] * FACTOR[0] + cardLeast[choice] + slowest;
            if (atLeast < least
                    && !cardTooHot[choice]
                    && !tooHot.test(fullInletC[choice] + heatK + marginK - full.limitC())) {
                double with = leastEnergy(choice, working, coolerEnergy, least);
                quietest = with < least ? choice : quietest;
                least = with;
            }
        }
        return least;
    }

    private double leastEnergy(
            int choice, CoolingCase.Processor working, double full, double known) {
        if (inletC[choice] == null) {
            inletC[choice] = new double[SPEEDS];
            cardEnergy[choice] = new double[SPEEDS];
            Arrays.fill(inletC[choice], Double.NaN);
            reckon(choice, SPEEDS - 1);
            // In the coolest air the card is as quiet as it gets, and so is the cooler.
            cardLeast[choice] =
                    Math.min(cardEnergy[choice][SPEEDS - 1], cardEnergy(CardCooling.MOST_RATIO));
        }
        double coolerLeast = coolerEnergy(choice, SPEEDS - 1, working, full);
        double others = cardLeast[choice] + coolerLeast;
        if (!(cardEnergy[choice][SPEEDS - 1] + coolerLeast < Double.POSITIVE_INFINITY)) {
            // Cool enough but for rounding, so everything runs flat out.
            double flatOut = fansEnergy[choice] + full + cardEnergy(CardCooling.MOST_RATIO);
            return Math.min(known, flatOut);
        }
        // Where no heat goes through the case, faster case fans only add sound.
        int speeds = atWork.airs().get(choice).heatW() == 0 ? 1 : SPEEDS;
        double least = known;
        for (int i = 0; i < speeds && fansEnergy[choice] * FACTOR[i] + others < least; i++) {
            double cooler = coolerEnergy(choice, i, working, full);
            double fans = fansEnergy[choice] * FACTOR[i];
            least = Math.min(least, fans + cardEnergy[choice][i] + cooler);
        }
        return least;
    }

    /** Sound energy of a cooler at a case fan speed; plus infinity where it can't turn as fast. */
    private double coolerEnergy(int choice, int i, CoolingCase.Processor working, double full) {
        if (Double.isNaN(inletC[choice][i])) {
            reckon(choice, i);
        }
        double spareK = working.limitC() - marginK - inletC[choice][i];
        if (!(spareK > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        // As CoolerResistance has it, without a call: this is asked most of all.
        double ratio = working.coolerFullKw() * working.powerW() / spareK;
        double speed = ratio * ratio;
        if (!(speed <= 1)) {
            return Double.POSITIVE_INFINITY;
        }
        return speed <= CoolerResistance.LEAST_SPEED_SHARE
                ? full * SLOWEST
                : full * FanNoise.energyFactor(speed);
    }
}
