package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.model.power.CircuitLoad;
import rigbrief.part.Part;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.quantity.Mass;

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

    private static final String PRACTICE = "usual practice";

    /** The cautions for a build. */
    static List<Caution> of(Bench bench) {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(
                new Caution(
                        "Mains",
                        "Pull the mains lead out before you open the case or touch a part, not only the"
                                + " switch. Do not defeat the earth contact. "
                                + CircuitLoad.DEFERRAL,
                        PRACTICE));
        cautions.add(
                new Caution(
                        "Stored charge",
                        "Never open the supply: it holds about 390 V for minutes after the lead is out."
                                + " With the lead out, press the power button once and wait ten seconds.",
                        PRACTICE));
        cautions.add(
                new Caution(
                        "Static",
                        "Wear a wrist strap, or touch bare metal of the case each time before you touch"
                                + " a part; hold boards and modules by their edges, and leave them in"
                                + " their bags until they are fitted.",
                        "usual practice; ANSI/ESD S20.20 takes electronic parts as sensitive to 100 V"));
        cautions.add(
                new Caution(
                        "Edges",
                        "Sheet metal, fins and card brackets are sharp. Keep hair, sleeves and leads away"
                                + " from fans that turn.",
                        PRACTICE));
        glass(bench.build(), cautions);
        weight(bench.build(), cautions);
        circuit(bench, cautions);
        return List.copyOf(cautions);
    }

    private static void glass(Build build, List<Caution> cautions) {
        if (build.pcCase().side() != SidePanel.SOLID) {
            cautions.add(
                    new Caution(
                            "Side panel",
                            "Take the see-through panel off first and lay it flat on cloth, away from"
                                    + " the edge: glass that is set down on a corner or on tiles bursts.",
                            PRACTICE));
        }
    }

    private static void weight(Build build, List<Caution> cautions) {
        long massG = massG(build);
        if (massG > TWO_PEOPLE_G) {
            cautions.add(
                    new Caution(
                            "Weight",
                            "The finished machine weighs about %s kg: two people lift it."
                                    .formatted(Wording.number(1, massG / 1_000.0)),
                            PRACTICE));
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
            long watts = Math.round(machines * bench.it().power().wallW());
            cautions.add(
                    new Caution(
                            "Circuits",
                            "All %d machines at work together draw about %d W, screens not counted;"
                                            .formatted(machines, watts)
                                    + " have a licensed electrician say how many go on one circuit. "
                                    + CircuitLoad.DEFERRAL,
                            "computed from the parts' data sheets"));
        }
    }
}
