package rigbrief.assess;

import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.model.air.AirDensity;
import rigbrief.model.heat.CoolerInlets;
import rigbrief.model.heat.CoolingCase;
import rigbrief.model.noise.SoundSum;
import rigbrief.part.Cooler;
import rigbrief.part.Graphics;
import rigbrief.part.PcCase;
import rigbrief.part.Processor;

/**
 * Least levels of coolers of one kind in one case beside a processor and a card: what fans and card
 * make of the air there is reckoned once for all of them.
 */
public final class CoolersInCase {
    private final Processor processor;
    private final double processorW;
    private final CoolerInlets inlets;

    /**
     * What is common to coolers that leave the same places to fans.
     *
     * @param graphics the card; null for none
     * @param breaths what the fans may be
     */
    CoolersInCase(
            Assessor assessor,
            Foresight.Pair pair,
            Processor processor,
            Graphics graphics,
            PcCase pcCase,
            CaseAirs airs,
            List<ClimateModel.Breath> breaths) {
        this.processor = processor;
        this.processorW = pair.processorW();
        Brief brief = assessor.brief();
        double cardFullW = graphics == null ? 0 : graphics.boardPowerW();
        this.inlets =
                new CoolerInlets(
                        state(assessor, processorW, pair.cardW(), graphics, airs, breaths),
                        state(
                                assessor,
                                processor.sustainedPowerW(),
                                cardFullW,
                                graphics,
                                airs,
                                breaths),
                        new CoolingCase.Seat(
                                pcCase.dampingDb(),
                                brief.noise().seatDistanceM(),
                                ClimateModel.ROOM_FLOOR_DBA),
                        brief.headroom().thermalMarginK(),
                        excessK -> Climate.decikelvin(excessK) > 0);
    }

    private static CoolerInlets.State state(
            Assessor assessor,
            double processorW,
            double cardW,
            Graphics graphics,
            CaseAirs airs,
            List<ClimateModel.Breath> breaths) {
        Brief.Place place = assessor.brief().place();
        double densityKgM3 = AirDensity.kgM3(place.roomC(), place.altitudeM());
        double heatW = airs.heatW(processorW, cardW);
        return new CoolerInlets.State(
                breaths.stream()
                        .map(
                                breath ->
                                        new CoolingCase.Air(
                                                place.roomC(),
                                                densityKgM3,
                                                heatW,
                                                breath.flowM3h(),
                                                breath.levelDba()))
                        .toList(),
                graphics == null
                        ? CoolingCase.Card.NONE
                        : ClimateModel.card(graphics, cardW, assessor.catalogue().reference()));
    }

    /**
     * The least level at the seat with one of the coolers, in dB(A), as {@link Foresight} has it;
     * plus infinity when even so some part gets too hot at sustained power.
     *
     * @param coolerOrNull null for the boxed one
     */
    public double leastLevelDba(Cooler coolerOrNull) {
        return inlets.leastLevelDba(
                ClimateModel.processor(processor, coolerOrNull, processorW),
                ClimateModel.processor(processor, coolerOrNull, processor.sustainedPowerW()));
    }

    /**
     * The least sound energy with one of the coolers where it is less than what is known already,
     * else what is known; plus infinity as above.
     *
     * @param coolerOrNull null for the boxed one
     */
    public double leastEnergy(Cooler coolerOrNull, double known) {
        return inlets.leastEnergy(
                ClimateModel.processor(processor, coolerOrNull, processorW),
                ClimateModel.processor(processor, coolerOrNull, processor.sustainedPowerW()),
                known);
    }

    /** The sound energy of a level inside the case, in dB(A). */
    public double energy(double insideDba) {
        return SoundSum.energy(insideDba);
    }

    /** The level at the seat of so much sound energy, in dB(A). */
    public double levelDba(double energy) {
        return inlets.levelDba(energy);
    }
}
