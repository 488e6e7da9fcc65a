package rigbrief.measurement.tune;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigbrief.assess.FrameModel;
import rigbrief.assess.MachineRates;
import rigbrief.assess.Sureness;
import rigbrief.brief.Brief;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.FrameRate;
import rigbrief.measurement.tune.TunedTitle.Outcome;
import rigbrief.measurement.tune.TunedTitle.Rates;
import rigbrief.model.speed.SceneMix;

/**
 * Tunes one title: the settings with the least visible loss that hold the target, then the cap.
 *
 * <p>Where the target can't be held at the brief's own settings, those are given up; where it can't
 * be held at all, the next lower of the usual rates that can is.
 */
final class TitleTuner {
    /** What is aimed at when neither brief nor builder says. Common practice. */
    static final double USUAL_FPS = 60;

    private final Brief brief;
    private final WorkloadNeed need;
    private final FrameRate title;
    private final TuneTerms terms;
    private final ScreenPace screen;
    private final Sureness sureness;
    private final Menu menu;
    private final double capFps;

    TitleTuner(
            Brief brief, WorkloadNeed need, FrameRate title, TuneTerms terms, ScreenPace screen) {
        this.brief = brief;
        this.need = need;
        this.title = title;
        this.terms = terms;
        this.screen = screen;
        this.sureness = new Sureness(title.fitted().sigma(), brief.confidencePercent());
        this.menu = new Menu(title);
        this.capFps = title.engineCapFps().orElse(Double.POSITIVE_INFINITY);
    }

    /** A choice and how it came about. */
    private record Decision(Choice choice, double tunedForFps, Outcome outcome) {}

    TunedTitle tune(MachineRates machine) {
        SettingsSearch search =
                new SettingsSearch(
                        menu,
                        machine,
                        FrameModel.shownMegapixels(brief),
                        sureness.atLeast(1),
                        terms.heldIn());
        Decision decision = decide(search);
        CapFinder caps = new CapFinder(screen, capFps);
        return result(machine, decision, caps, search.holds(decision.choice(), musts()));
    }

    private Decision decide(SettingsSearch search) {
        Wanted wanted = wanted();
        Floor floor = Floor.of(menu, need.settings());
        Optional<Choice> asAsked = search.best(wanted, floor);
        if (asAsked.isPresent()) {
            return new Decision(asAsked.get(), wanted.heldFps(), Outcome.HELD);
        }
        Optional<Choice> below = search.best(wanted, floor.givenUp());
        if (below.isPresent()) {
            return new Decision(below.get(), wanted.heldFps(), Outcome.BELOW_BRIEF);
        }
        for (int i = CapFinder.USUAL.size() - 1; i >= 0; i--) {
            double lower = CapFinder.USUAL.get(i);
            Optional<Choice> choice =
                    lower < wanted.heldFps()
                            ? search.best(Wanted.held(lower), floor.givenUp())
                            : Optional.empty();
            if (choice.isPresent()) {
                return new Decision(choice.get(), lower, Outcome.LOWER_TARGET);
            }
        }
        return new Decision(search.fastest(), 0, Outcome.NOT_HELD);
    }

    private Wanted wanted() {
        if (terms.targetFps().isPresent()) {
            return Wanted.held(Math.min(capFps, terms.targetFps().getAsInt()));
        }
        double target =
                need.must()
                        .flatMap(TitleTuner::rate)
                        .or(() -> need.wish().flatMap(TitleTuner::rate))
                        .orElse(USUAL_FPS);
        Wanted musts = musts();
        return new Wanted(Math.min(capFps, target), musts.averageFps(), musts.lowFps());
    }

    /** The brief's own figures. */
    private Wanted musts() {
        return new Wanted(
                0,
                need.must().map(Target::averageFps).orElse(OptionalDouble.empty()),
                need.must().map(Target::lowFps).orElse(OptionalDouble.empty()));
    }

    private static Optional<Double> rate(Target target) {
        OptionalDouble rate =
                target.averageFps().isPresent() ? target.averageFps() : target.lowFps();
        return rate.isPresent() ? Optional.of(rate.getAsDouble()) : Optional.empty();
    }

    private TunedTitle result(
            MachineRates machine, Decision decision, CapFinder caps, boolean mustsHold) {
        Choice choice = decision.choice();
        Optional<FrameCap> cap = caps.highest(choice.heldFps(), decision.tunedForFps());
        Optional<FrameCap> fixed =
                screen.variableFromHz().isPresent()
                        ? Optional.empty()
                        : caps.highestFixed(choice.heldFps());
        return new TunedTitle(
                title,
                wanted().heldFps(),
                decision.tunedForFps(),
                decision.outcome(),
                mustsHold,
                new MenuLines(menu, need.settings(), machine).of(choice),
                sceneLines(choice, cap, caps),
                choice.heldFps() / 100.0,
                cap,
                fixed.filter(other -> cap.isEmpty() || !sameRate(other, cap.get())),
                menu.load(choice.frame(), choice.mix(), FrameModel.shownMegapixels(brief)).vramGb(),
                machine.picture().vramGb(),
                rates(choice, capFps),
                rates(choice, Math.min(capFps, cap.map(FrameCap::fps).orElse(capFps))));
    }

    private static boolean sameRate(FrameCap one, FrameCap other) {
        return one.hundredthsFps() == other.hundredthsFps();
    }

    private List<SceneLine> sceneLines(Choice choice, Optional<FrameCap> cap, CapFinder caps) {
        return choice.scenes().stream()
                .map(scene -> SceneLines.of(scene, sureness, cap, caps))
                .toList();
    }

    private Rates rates(Choice choice, double capFps) {
        SceneMix.Rates rates = FrameModel.rates(choice.scenes(), capFps, title.shape().spread());
        return new Rates(rates.averagePerS(), rates.lowPerS());
    }
}
