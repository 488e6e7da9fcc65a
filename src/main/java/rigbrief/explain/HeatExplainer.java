package rigbrief.explain;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.Climate;
import rigbrief.assess.Workings;
import rigbrief.assess.Workings.State;
import rigbrief.catalogue.Reference;
import rigbrief.model.heat.CoolingCase;
import rigbrief.model.heat.ThermalLadder;
import rigbrief.part.Slot;

/** Explains temperatures under the heaviest workload and with everything at full power. */
final class HeatExplainer implements Explainer {
    private static final String LADDER =
            "thermal resistances in a row (notes with worked numbers); cooler resistance with the"
                    + " square root of fan speed, and 0.10 K/W inside the processor, are common"
                    + " practice";
    private static final String BALANCE =
            "heat balance of air, 1005 J/(kg K); even mixing and 10 m³/h without fans are common"
                    + " practice";

    @Override
    public List<Topic> topics(Assessment it) {
        List<Topic> topics = new ArrayList<>();
        for (State state : List.of(State.LOAD, State.FULL)) {
            String lead = state == State.FULL ? "heat.full-" : "heat.";
            String when = state == State.FULL ? " at full power" : " under the heaviest workload";
            String processor = "Processor" + when;
            topics.add(
                    new Topic(
                            lead + "processor-c",
                            processor,
                            () -> processor(it, state, lead + "processor-c", processor)));
            if (it.build().has(Slot.GRAPHICS)) {
                String card = "Card" + when;
                topics.add(
                        new Topic(
                                lead + "graphics-c",
                                card,
                                () -> card(it, state, lead + "graphics-c", card)));
            }
            String rise = "Case air over the room" + when;
            topics.add(
                    new Topic(
                            lead + "case-rise-k",
                            rise,
                            () -> rise(it, state, lead + "case-rise-k", rise)));
        }
        return topics;
    }

    private static Climate climate(Assessment it, State state) {
        return state == State.FULL ? it.full() : it.load();
    }

    private static Explanation rise(Assessment it, State state, String number, String title) {
        Derivation how =
                new Derivation(
                        number, title, "heat x 3600 / (density x heat capacity x flow)", BALANCE);
        Object[] rise = new Cooling(how, it, state).rise();
        return how.gives(climate(it, state).caseRiseK(), 1, "K", Cooling.RISE, rise);
    }

    private static Explanation processor(Assessment it, State state, String number, String title) {
        Derivation how =
                new Derivation(
                        number,
                        title,
                        "room + case air over the room + power x (cooler at its speed + inside)",
                        LADDER);
        Cooling air = new Cooling(how, it, state);
        CoolingCase.Processor processor = air.cooling().processor();
        double fullKw =
                how.given(
                        "cooler at full speed",
                        processor.coolerFullKw(),
                        "K/W",
                        it.build().has(Slot.COOLER)
                                ? it.build().cooler().id() + ", resistance_kw"
                                : it.build().processor().id() + ", boxed_cooler_w at 60 K");
        double inside = how.given("from die to lid", Workings.INSIDE_KW, "K/W", "common practice");
        double share = air.coolerShare();
        double inletC = air.inletC();
        double powerW = air.draw().processorW();
        how.remark(ThermalLadder.POWER_W.remark(powerW));
        double coolerKw =
                how.step(
                        "cooler at its speed",
                        fullKw / Math.sqrt(share),
                        "K/W",
                        "{} / sqrt({})",
                        fullKw,
                        share);
        return how.gives(
                climate(it, state).processorC(),
                1,
                "°C",
                "{} + {} x ({} + {})",
                inletC,
                powerW,
                coolerKw,
                inside);
    }

    private static Explanation card(Assessment it, State state, String number, String title) {
        Derivation how =
                new Derivation(
                        number,
                        title,
                        "room + case air over the room + power x reference resistance /"
                                + " sqrt(fan speed over reference speed)",
                        LADDER);
        Cooling air = new Cooling(how, it, state);
        Reference reference = it.catalogue().reference();
        double boardW = it.build().graphics().boardPowerW();
        String from = "catalogue, reference conditions";
        double cardC = how.given("card at the reference", reference.cardC(), "°C", from);
        double inlet = how.given("its inlet at the reference", reference.inletC(), "°C", from);
        double ratio = air.cardRatio();
        double inletC = air.inletC();
        double powerW = air.draw().cardW();
        double referenceKw =
                how.step(
                        "resistance at the reference",
                        air.cooling().card().referenceKw(),
                        "K/W",
                        "({} - {}) / {}",
                        cardC,
                        inlet,
                        boardW);
        return how.gives(
                climate(it, state).graphicsC(),
                1,
                "°C",
                "{} + {} x {} / sqrt({})",
                inletC,
                powerW,
                referenceKw,
                ratio);
    }
}
