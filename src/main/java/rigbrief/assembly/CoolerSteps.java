package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.part.CoolerType;
import rigbrief.part.Place;
import rigbrief.part.Slot;

/** The steps for the processor's cooler, wherever they come in the order of work. */
final class CoolerSteps {

    private final Bench bench;
    private final Build build;
    private final CoolerMounting mounting;

    CoolerSteps(Bench bench, CoolerMounting mounting) {
        this.bench = bench;
        this.build = bench.build();
        this.mounting = mounting;
    }

    /** What is done before the board goes into the case. */
    List<Step> onTheBench() {
        if (!build.has(Slot.COOLER)) {
            return List.of(
                    new Step(
                            "cooler",
                            bench.say("cool.boxed"),
                            List.of(
                                    bench.say("cool.now")
                                            + mounting.why(build, bench.texts())
                                            + ".",
                                    bench.say("cool.boxed.paste"),
                                    bench.say("cool.boxed.fasten"))));
        }
        if (mounting == CoolerMounting.BEFORE_THE_BOARD) {
            return List.of(cooler());
        }
        return List.of(
                new Step(
                        "brackets",
                        bench.say("cool.brackets"),
                        List.of(
                                bench.say(
                                        "cool.brackets.text",
                                        build.board().socket(),
                                        mounting.why(build, bench.texts())))));
    }

    /** What is done once the board sits in the case. */
    List<Step> afterTheBoard() {
        boolean block = build.has(Slot.COOLER) && build.cooler().type() == CoolerType.LIQUID;
        if (block) {
            return List.of(block());
        }
        return mounting == CoolerMounting.AFTER_THE_BOARD ? List.of(cooler()) : List.of();
    }

    private Step cooler() {
        List<String> actions = new ArrayList<>();
        if (mounting == CoolerMounting.BEFORE_THE_BOARD) {
            actions.add(bench.say("cool.now") + mounting.why(build, bench.texts()) + ".");
        }
        actions.add(bench.say("cool.paste"));
        actions.add(bench.say("cool.set", build.cooler().name(), bench.say("cool.evenly")));
        if (build.cooler().fans() > 0) {
            actions.add(
                    (CoolerMounting.low(build) ? "" : bench.say("cool.blows"))
                            + bench.say("cool.plug"));
        }
        bench.finding("memory-under-cooler")
                .ifPresent(
                        finding ->
                                actions.add(
                                        bench.say("cool.mind")
                                                + bench.texts().say(finding.phrase())
                                                + "."));
        return new Step("cooler", bench.say("cool.fit"), actions);
    }

    /** The radiator with its fans. */
    Step radiator() {
        Place place = bench.it().layout().radiator().orElse(Place.TOP);
        boolean in = FanPlan.Direction.at(place) == FanPlan.Direction.IN;
        List<String> actions = new ArrayList<>();
        actions.add(
                bench.say(
                        "cool.at",
                        bench.say("place.at." + place.word()),
                        mounting.why(build, bench.texts())));
        build.pcCase().includedFans().stream()
                .filter(own -> own.place() == place)
                .forEach(own -> actions.add(bench.say("cool.own", own.fans().count())));
        actions.addAll(
                List.of(
                        bench.say(
                                in ? "cool.screw.in" : "cool.screw.out",
                                build.cooler().fans(),
                                build.cooler().radiatorMm()),
                        bench.say("cool.screws")));
        return new Step("radiator", bench.say("cool.radiator"), actions);
    }

    private Step block() {
        return new Step(
                "cooler",
                bench.say("cool.block"),
                List.of(
                        bench.say("cool.paste"),
                        bench.say(
                                "cool.block.set", build.cooler().name(), bench.say("cool.evenly")),
                        bench.say("cool.block.pump")));
    }
}
