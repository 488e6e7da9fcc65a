package rigbrief.measurement.tune;

import java.util.Optional;
import rigbrief.assess.FrameModel.SceneTime;
import rigbrief.assess.Sureness;
import rigbrief.measurement.tune.SceneLine.Pace;

/** What a choice of settings does to a scene. */
final class SceneLines {
    private SceneLines() {}

    static SceneLine of(SceneTime it, Sureness sureness, Optional<FrameCap> cap, CapFinder caps) {
        double fps = it.rateFps();
        return new SceneLine(
                it.scene().name(),
                it.scene().share(),
                fps,
                sureness.low(fps),
                sureness.high(fps),
                sureness.atLeast(fps),
                it.processorBound(),
                cap.map(known -> pace(Wanted.hundredths(sureness.atLeast(fps)), known, caps))
                        .orElse(Pace.UNCAPPED));
    }

    private static Pace pace(long sure, FrameCap cap, CapFinder caps) {
        if (sure >= cap.hundredthsFps()) {
            return Pace.STEADY;
        }
        return caps.isHeld(cap, sure) ? Pace.HIDDEN_DIP : Pace.DIP;
    }
}
