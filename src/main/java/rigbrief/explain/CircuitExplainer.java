package rigbrief.explain;

import java.util.List;
import rigbrief.assess.Assessment;
import rigbrief.assess.MainsShare;

/** Explains what the machines of an order take of the mains; nothing for one machine alone. */
final class CircuitExplainer implements Explainer {
    private static final String SOURCE =
            "NEC (NFPA 70) 210.19(A)(1), 80 % for a load of three hours or more, in its own country;"
                    + " power factor and rating of a circuit are common practice. Local electrical"
                    + " codes, the equipment's instructions and licensed practice decide";

    @Override
    public List<Topic> topics(Assessment it) {
        return it.brief().quantity() == 1
                ? List.of()
                : List.of(
                        new Topic(
                                "mains.amperes",
                                "Current of all machines at work",
                                () -> amperes(it)),
                        new Topic(
                                "mains.machines-on-one-circuit",
                                "Machines that one usual circuit bears",
                                () -> machines(it)));
    }

    private static Explanation amperes(Assessment it) {
        Derivation how =
                new Derivation(
                        "mains.amperes",
                        "Current of all machines at work",
                        "machines x power at the wall / (mains x power factor)",
                        SOURCE);
        int machines = it.brief().quantity();
        double wallW = wall(how, it);
        how.given("machines", machines, "", "brief, quantity");
        how.given("mains", it.brief().place().mainsV(), "V", "brief, place, mains");
        how.given("power factor", MainsShare.POWER_FACTOR, "", "common practice");
        return how.gives(
                MainsShare.of(it).amperesOfAll(),
                1,
                "A",
                "{} x {} / ({} x {})",
                machines,
                wallW,
                it.brief().place().mainsV(),
                MainsShare.POWER_FACTOR);
    }

    private static Explanation machines(Assessment it) {
        Derivation how =
                new Derivation(
                        "mains.machines-on-one-circuit",
                        "Machines that one usual circuit bears",
                        "floor(rating x mains x share / power at the wall)",
                        SOURCE);
        MainsShare share = MainsShare.of(it);
        double wallW = wall(how, it);
        how.given("rating", share.breakerA(), "A", "common practice");
        how.given("mains", it.brief().place().mainsV(), "V", "brief, place, mains");
        how.given("share for hours", share.share(), "", "see the source");
        double limitW =
                how.step(
                        "circuit",
                        share.limitW(),
                        "W",
                        "{} x {} x {}",
                        share.breakerA(),
                        it.brief().place().mainsV(),
                        share.share());
        return how.gives(share.machinesOnOne(), 0, "", "floor({} / {})", limitW, wallW);
    }

    private static double wall(Derivation how, Assessment it) {
        return how.given("at the wall", it.power().wallW(), "W", "number power.wall-w");
    }
}
