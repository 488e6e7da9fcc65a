package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.MainsShare;
import rigbrief.build.Build;
import rigbrief.model.power.StoredCharge;
import rigbrief.part.Part;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.quantity.Mass;
import rigbrief.wording.Measured;

/**
 * Something that hurts people or parts.
 *
 * @param head what it is about, in a word or two
 * @param text what to do or leave
 * @param basis where that comes from
 */
public record Caution(String head, String text, String basis) {
    /** From this mass on two people lift, in g. Common practice. */
    static final int TWO_PEOPLE_G = 15_000;

    // What a supply holds behind its mains side. Common practice, from memory.
    private static final double CAPACITOR_UF = 470;
    private static final double CHARGED_V = 390;
    private static final double BLEEDER_OHM = 200_000;
    private static final double HARMLESS_V = 60;

    private static final double MICRO = 1_000_000;
    private static final double MINUTE_S = 60;

    /** The cautions for a build. */
    static List<Caution> of(Bench bench) {
        List<Caution> cautions = new ArrayList<>();
        String practice = bench.say("caution.practice");
        cautions.add(
                new Caution(
                        bench.say("caution.mains"),
                        bench.say("caution.mains.text") + bench.say("caution.deferral"),
                        bench.say("caution.practice")));
        cautions.add(
                new Caution(
                        bench.say("caution.charge"),
                        chargeWords(bench),
                        bench.say("caution.charge.basis")));
        cautions.add(
                new Caution(
                        bench.say("caution.static"),
                        bench.say("caution.static.text"),
                        bench.say("caution.static.basis")));
        cautions.add(
                new Caution(
                        bench.say("caution.edges"),
                        bench.say("caution.edges.text"),
                        bench.say("caution.practice")));
        glass(bench, cautions);
        weight(bench, cautions);
        circuit(bench, cautions);
        return List.copyOf(cautions);
    }

    private static String chargeWords(Bench bench) {
        double energyJ = StoredCharge.energyJ(CAPACITOR_UF / MICRO, CHARGED_V);
        double seconds =
                StoredCharge.dischargeS(CAPACITOR_UF / MICRO, BLEEDER_OHM, CHARGED_V, HARMLESS_V);
        return bench.say(
                "caution.charge.text",
                CHARGED_V,
                CAPACITOR_UF,
                energyJ,
                Math.ceil(seconds / MINUTE_S),
                HARMLESS_V);
    }

    private static void glass(Bench bench, List<Caution> cautions) {
        Build build = bench.build();
        if (build.pcCase().side() != SidePanel.SOLID) {
            cautions.add(
                    new Caution(
                            bench.say("caution.side"),
                            bench.say("caution.side.text"),
                            bench.say("caution.practice")));
        }
    }

    private static void weight(Bench bench, List<Caution> cautions) {
        Build build = bench.build();
        long massG = massG(build);
        if (massG > TWO_PEOPLE_G) {
            cautions.add(
                    new Caution(
                            bench.say("caution.weight"),
                            bench.say(
                                    "caution.weight.text",
                                    Measured.rounded(1, massG / 1_000.0, "")),
                            bench.say("caution.practice")));
        }
    }

    /** What the parts weigh that go into the machine, as far as stated, in g. */
    static long massG(Build build) {
        long massG = 0;
        for (var filled : build.filled().entrySet()) {
            Slot slot = filled.getKey();
            if (slot != Slot.DISPLAY && slot != Slot.SYSTEM) {
                Part part = filled.getValue();
                massG += (long) part.listing().mass().or(Mass.g(0)).grams() * build.pieces(slot);
            }
        }
        return massG;
    }

    private static void circuit(Bench bench, List<Caution> cautions) {
        int machines = bench.brief().quantity();
        if (machines > 1) {
            MainsShare share = MainsShare.of(bench.it());
            cautions.add(
                    new Caution(
                            bench.say("caution.circuit"),
                            bench.say(
                                            "caution.circuit.text",
                                            machines,
                                            share.wattsOfAll(),
                                            share.amperesOfAll(),
                                            bench.brief().place().mainsV())
                                    + bench.say(
                                            "caution.circuit.bears",
                                            share.breakerA(),
                                            share.limitW(),
                                            share.machinesOnOne())
                                    + bench.say("caution.circuit.ask")
                                    + bench.say("caution.deferral"),
                            bench.say("caution.circuit.basis")));
        }
    }
}
