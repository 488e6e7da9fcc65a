package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.part.CoolerType;
import rigbrief.part.Place;
import rigbrief.part.Slot;

/** The steps for the processor's cooler, wherever they come in the order of work. */
final class CoolerSteps {
    private static final String PASTE =
            "Paste: use the layer that is on the cooler if it has one; else a dot as large as a pea in the"
                    + " middle of the processor. Peel the film off the cooler's base.";
    private static final String EVENLY =
            "Tighten the screws crosswise, a few turns each, until they stop.";

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
                            "Fit the boxed cooler",
                            List.of(
                                    "Now, since " + mounting.why(build) + ".",
                                    "Its base carries paste from the factory: do not touch it, and set it down once.",
                                    "Fasten it as its leaflet shows, and plug its fan into the processor fan header.")));
        }
        if (mounting == CoolerMounting.BEFORE_THE_BOARD) {
            return List.of(cooler());
        }
        return List.of(
                new Step(
                        "brackets",
                        "Fit the cooler's brackets",
                        List.of(
                                "Back plate and brackets for socket %s only; the cooler follows after the board, since %s."
                                        .formatted(build.board().socket(), mounting.why(build)))));
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
            actions.add("Now, since " + mounting.why(build) + ".");
        }
        actions.add(PASTE);
        actions.add("Set %s on. %s".formatted(build.cooler().name(), EVENLY));
        if (build.cooler().fans() > 0) {
            actions.add(
                    (CoolerMounting.low(build)
                                    ? ""
                                    : "Its fan blows through the fins towards the rear of the case. ")
                            + "Plug its fan into the processor fan header.");
        }
        bench.finding("memory-under-cooler")
                .ifPresent(finding -> actions.add("Mind: " + finding.text() + "."));
        return new Step("cooler", "Fit the cooler", actions);
    }

    /** The radiator with its fans. */
    Step radiator() {
        Place place = bench.it().layout().radiator().orElse(Place.TOP);
        boolean in = FanPlan.Direction.at(place) == FanPlan.Direction.IN;
        List<String> actions = new ArrayList<>();
        actions.add("At the %s, now, since %s.".formatted(place.word(), mounting.why(build)));
        build.pcCase().includedFans().stream()
                .filter(own -> own.place() == place)
                .forEach(
                        own ->
                                actions.add(
                                        "Take the case's own %s out there first: the radiator brings its own."
                                                .formatted(
                                                        Wording.counted(
                                                                own.fans().count(), "fan"))));
        actions.addAll(
                List.of(
                        "Screw the %s onto the %d mm radiator so that %s blow%s %s; then the radiator into the case, tubes where they reach the processor without a kink."
                                .formatted(
                                        build.cooler().fans() == 1 ? "fan" : "fans",
                                        build.cooler().radiatorMm(),
                                        build.cooler().fans() == 1 ? "it" : "they",
                                        build.cooler().fans() == 1 ? "s" : "",
                                        in ? "in" : "out"),
                        "Screws that are too long pierce the radiator: use those that came with it."));
        return new Step("radiator", "Fit the radiator", actions);
    }

    private Step block() {
        return new Step(
                "cooler",
                "Fit the block on the processor",
                List.of(
                        PASTE,
                        "Set the block of %s on. %s".formatted(build.cooler().name(), EVENLY),
                        "Keep one end of the radiator above the pump, or air gathers in it and it rattles."));
    }
}
