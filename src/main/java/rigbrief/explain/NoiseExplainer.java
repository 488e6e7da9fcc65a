package rigbrief.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import rigbrief.assess.Assessment;
import rigbrief.assess.Climate;
import rigbrief.assess.Workings.State;
import rigbrief.model.heat.CoolingCase;
import rigbrief.model.noise.SoundDistance;
import rigbrief.model.noise.SoundSum;
import rigbrief.part.Slot;

/** Explains the level at the seat in the three states of use. */
final class NoiseExplainer implements Explainer {
    private static final String SOURCE =
            "sum of unlike sources and inverse-square law (published); fans 50 dB per tenfold"
                    + " speed (published basic fan laws); room floor common practice";

    @Override
    public List<Topic> topics(Assessment it) {
        return List.of(
                topic(it, State.IDLE, "noise.idle-dba", "Noise at the seat at idle"),
                topic(
                        it,
                        State.LOAD,
                        "noise.load-dba",
                        "Noise at the seat under the heaviest workload"),
                topic(it, State.FULL, "noise.full-dba", "Noise at the seat at full power"));
    }

    private static Topic topic(Assessment it, State state, String number, String title) {
        return new Topic(number, title, () -> explained(it, state, number, title));
    }

    private static Climate climate(Assessment it, State state) {
        return switch (state) {
            case IDLE -> it.idle();
            case LOAD -> it.load();
            case FULL -> it.full();
        };
    }

    private static Explanation explained(Assessment it, State state, String number, String title) {
        Derivation how =
                new Derivation(
                        number,
                        title,
                        "10 log10 of the summed energies of case fans, cooler, card, supply and"
                                + " drives; - damping of the case - 20 log10(distance); + the room",
                        SOURCE);
        Cooling air = new Cooling(how, it, state);
        CoolingCase cooling = air.cooling();
        List<Object> levels = new ArrayList<>();
        fan(
                how,
                "case fans",
                cooling.air().fansFullDba(),
                "fans of the case and added fans, summed",
                air::caseShare,
                levels);
        fan(
                how,
                "cooler",
                cooling.processor().coolerFullDba(),
                it.build().has(Slot.COOLER)
                        ? it.build().cooler().id() + ", max_dba"
                        : it.build().processor().id() + ", boxed cooler",
                air::coolerShare,
                levels);
        card(how, it, air, levels);
        double constant = cooling.constantDba();
        if (Double.isFinite(constant)) {
            how.given(
                    "supply and drives",
                    constant,
                    "dB(A)",
                    it.build().supply().id() + ", levels at 20, 50 and 100 %; drives, dba");
            levels.add(constant);
        }
        return atSeat(how, it, cooling.seat(), levels, climate(it, state).levelDba());
    }

    private static void fan(
            Derivation how,
            String name,
            double fullDba,
            String from,
            DoubleSupplier share,
            List<Object> levels) {
        if (Double.isFinite(fullDba)) {
            how.given(name + " at full speed", fullDba, "dB(A)", from);
            double at = share.getAsDouble();
            levels.add(
                    how.step(
                            name,
                            fullDba + 50 * Math.log10(at),
                            "dB(A)",
                            "{} + 50 x log10({})",
                            fullDba,
                            at));
        }
    }

    private static void card(Derivation how, Assessment it, Cooling air, List<Object> levels) {
        CoolingCase.Card card = air.cooling().card();
        if (!Double.isFinite(card.loadDba())) {
            return;
        }
        String id = it.build().graphics().id();
        double ratio = air.cardRatio();
        how.given("card at the reference", card.loadDba(), "dB(A)", id + ", load_dba");
        double turning = card.loadDba() + 50 * Math.log10(ratio);
        if (Double.isFinite(card.idleDba())) {
            how.given("card at rest", card.idleDba(), "dB(A)", id + ", idle_dba");
            levels.add(
                    how.step(
                            "card",
                            Math.max(card.idleDba(), turning),
                            "dB(A)",
                            "max({}, {} + 50 x log10({}))",
                            card.idleDba(),
                            card.loadDba(),
                            ratio));
        } else {
            levels.add(
                    how.step(
                            "card",
                            turning,
                            "dB(A)",
                            "{} + 50 x log10({})",
                            card.loadDba(),
                            ratio));
        }
    }

    private static Explanation atSeat(
            Derivation how,
            Assessment it,
            CoolingCase.Seat seat,
            List<Object> levels,
            double levelDba) {
        String caseId = it.build().pcCase().id();
        double damping = how.given("damping", seat.dampingDb(), "dB", caseId + ", damping_db");
        double distance =
                how.given("distance to the seat", seat.distanceM(), "m", "brief, noise, distance");
        double floor = how.given("quiet room", seat.floorDba(), "dB(A)", "common practice");
        how.remark(SoundDistance.DISTANCE_M.remark(distance));
        double energy = 0;
        for (Object level : levels) {
            energy += SoundSum.energy((Double) level);
        }
        double inside =
                how.step(
                        "all sources at 1 m",
                        SoundSum.levelDba(energy),
                        "dB(A)",
                        "10 x log10("
                                + String.join(
                                        " + ", levels.stream().map(any -> "10^({}/10)").toList())
                                + ")",
                        levels.toArray());
        double outside =
                how.step(
                        "at the seat without the room",
                        inside - damping - 20 * Math.log10(distance),
                        "dB(A)",
                        "{} - {} - 20 x log10({})",
                        inside,
                        damping,
                        distance);
        return how.gives(
                levelDba, 1, "dB(A)", "10 x log10(10^({}/10) + 10^({}/10))", outside, floor);
    }
}
