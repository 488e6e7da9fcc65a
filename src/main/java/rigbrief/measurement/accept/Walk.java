package rigbrief.measurement.accept;

import java.util.ArrayList;
import java.util.List;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.FrameRate.Scene;

/**
 * How long to stay in each scene of a title while its frames are logged, so that the log has the
 * title's own mix.
 *
 * <p>Common practice: ten minutes in all, and more where the rarest scene would get less than half
 * a minute.
 *
 * @param legs scenes with their time, in the title's order
 */
public record Walk(List<Leg> legs) {
    private static final double USUAL_S = 600;
    private static final double LEAST_LEG_S = 30;
    private static final int STEP_S = 5;

    public Walk {
        legs = List.copyOf(legs);
    }

    /**
     * A stay in a scene.
     *
     * @param scene the scene
     * @param seconds how long, in s
     */
    public record Leg(String scene, int seconds) {}

    static Walk of(FrameRate title) {
        double least = title.scenes().stream().mapToDouble(Scene::share).min().orElse(1);
        double totalS = Math.max(USUAL_S, LEAST_LEG_S / Math.max(least, 0.01));
        List<Leg> legs = new ArrayList<>();
        for (Scene scene : title.scenes()) {
            int steps = Math.max(1, (int) Math.round(scene.share() * totalS / STEP_S));
            legs.add(new Leg(scene.name(), steps * STEP_S));
        }
        return new Walk(legs);
    }

    /** The whole walk in s. */
    public int seconds() {
        return legs.stream().mapToInt(Leg::seconds).sum();
    }
}
